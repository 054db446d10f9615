package dev.poleward.domain.programme;

import dev.poleward.domain.event.ProgrammeEvent.ProgrammeAssigned;
import dev.poleward.domain.event.ProgrammeEvent.ProgrammePublished;
import dev.poleward.domain.record.Fact;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a dog follows at a time. */
public sealed interface ProgrammeInForce {

  /** None was assigned yet: the default one is followed. */
  record Unassigned() implements ProgrammeInForce {

    /** What is followed. */
    public Programme programme() {
      return DefaultProgramme.programme();
    }
  }

  /**
   * The one assigned.
   *
   * @param assigned the assignment in force
   * @param published the version in force; null for the programme that ships
   */
  record Assigned(
      Fact<ProgrammeAssigned> assigned,
      @Nullable Fact<ProgrammePublished> published,
      Programme programme)
      implements ProgrammeInForce {

    /** Where the dog was said to start; empty when nothing was said that this version knows. */
    public Optional<Stage> startStage() {
      return Optional.ofNullable(assigned.event().startStage()).flatMap(programme::stage);
    }
  }

  /**
   * The one assigned has a document with faults, recorded when less was asked of documents.
   *
   * @param faults never empty
   */
  record Unreadable(
      Fact<ProgrammeAssigned> assigned,
      Fact<ProgrammePublished> published,
      List<DocumentFault> faults)
      implements ProgrammeInForce {

    /** Keeps the faults from changing. */
    public Unreadable {
      faults = List.copyOf(faults);
    }
  }
}
