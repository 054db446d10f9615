package dev.poleward.service.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.domain.event.ClubEvent.PersonForgotten;
import dev.poleward.domain.event.DogEvent.DogAmended;
import dev.poleward.domain.event.DogEvent.DogRegistered;
import dev.poleward.domain.event.DogTraits;
import dev.poleward.domain.event.Manoeuvre;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RegistryEvent.HandlerRegistered;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.event.RepEvent.RepLogged;
import dev.poleward.service.journal.JournalException;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ForgottenPeopleTest {

  private static final String CLUB = "saltmarsh";

  private final RecordedClubs clubs = new RecordedClubs();
  private final ForgottenPeople people = new ForgottenPeople(clubs, Duration.ofSeconds(1));

  private void givenHandlers(String... handlers) {
    for (String handler : handlers) {
      clubs.given(CLUB, new HandlerRegistered(handler));
    }
  }

  private void givenDog(String dog, String... handlers) {
    clubs.given(CLUB, new DogRegistered(dog, dog, handledBy(handlers)));
  }

  private static DogTraits handledBy(String... handlers) {
    return new DogTraits(null, null, null, handlers.length == 0 ? null : List.of(handlers), null);
  }

  private void givenRep(String rep, String dog, @Nullable String handler) {
    RepDetails details =
        new RepDetails(
            null, null, null, null, null, null, null, null, null, null, null, null, handler, null,
            null, null);
    clubs.given(CLUB, new RepLogged(rep, "s-1", dog, Manoeuvre.ALONGSIDE, Outcome.CLEAN, details));
  }

  private void forget(String handler) {
    clubs.given(CLUB, new PersonForgotten(handler));
  }

  private boolean forgotten(String person) {
    return people.isForgotten(CLUB, person);
  }

  @Test
  void aHandlerIsForgottenWhenTheRecordSaysSo() {
    givenHandlers("ines", "rui");
    forget("ines");
    forget("never-registered");

    assertThat(forgotten("ines")).isTrue();
    assertThat(forgotten("never-registered")).isTrue();
    assertThat(forgotten("rui")).isFalse();
    assertThat(people.isForgotten("dunes", "ines")).isFalse();
  }

  @Test
  void aDogIsForgottenWithTheLastOfItsHandlers() {
    givenHandlers("ines", "rui");
    givenDog("juniper", "ines", "rui");
    givenDog("stray");
    forget("ines");
    assertThat(forgotten("dog:juniper")).isFalse();

    forget("rui");
    assertThat(forgotten("dog:juniper")).isTrue();
    assertThat(forgotten("dog:stray")).isFalse();
    assertThat(forgotten("dog:unheard-of")).isFalse();
  }

  @Test
  void aDogThatFoundANewHandlerIsNotForgotten() {
    givenHandlers("ines", "rui");
    givenDog("juniper", "ines");
    forget("ines");
    clubs.given(CLUB, new DogAmended("juniper", null, handledBy("rui"), Set.of()));

    assertThat(forgotten("dog:juniper")).isFalse();
  }

  @Test
  void aRepIsForgottenWithThePersonItWasLoggedFor() {
    givenHandlers("ines", "rui");
    givenDog("juniper", "rui");
    givenRep("r-1", "juniper", "ines");
    givenRep("r-2", "juniper", null);
    forget("ines");

    assertThat(forgotten("rep:r-1")).isTrue();
    assertThat(forgotten("rep:r-2")).isFalse();
    assertThat(forgotten("rep:unheard-of")).isFalse();

    forget("rui");
    assertThat(forgotten("rep:r-2")).isTrue();
  }

  @Test
  void looksAtAllThatIsRecordedOrDoesNotAnswer() {
    clubs.givenElsewhere(CLUB, new PersonForgotten("ines"));
    clubs.canCatchUp(false);
    assertThatThrownBy(() -> forgotten("ines")).isInstanceOf(JournalException.class);

    clubs.canCatchUp(true);
    assertThat(forgotten("ines")).isTrue();
  }
}
