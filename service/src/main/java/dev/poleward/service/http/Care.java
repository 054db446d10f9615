package dev.poleward.service.http;

import dev.poleward.domain.care.CareLimits;
import dev.poleward.domain.care.CarePermit;
import dev.poleward.domain.care.CareQuestion;
import dev.poleward.domain.care.CareReview;
import dev.poleward.domain.care.Conditions;
import dev.poleward.domain.care.Trained;
import dev.poleward.domain.judgement.ClubRetention;
import dev.poleward.domain.judgement.DogStanding;
import dev.poleward.domain.record.ClubRecord;
import dev.poleward.domain.record.Registry;
import dev.poleward.service.http.DogReads.Seen;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;

/** What a club's settings and calendar have to do with care. */
final class Care {

  private Care() {}

  /** What a dog that is read may be asked for. */
  static CarePermit review(Seen dog, CareQuestion question) {
    // Neither what slips nor which stages are open depends on how dogs of the club forget.
    DogStanding standing =
        dog.history(dog.view().asOf()).reading().standing(question.end(), ClubRetention.UNKNOWN);
    return CareReview.of(
            dog.known(),
            Trained.of(dog.dog(), dog.reps(), dog.placement(), standing.slips(), question.end()),
            question)
        .unplanned(standing.mayCrowd());
  }

  /** Of the club's day of an instant. */
  static CareQuestion question(Registry registry, Conditions conditions, Instant at) {
    ZoneId zone = LocalDays.zone(registry);
    return question(registry, conditions, new LocalDay(at.atZone(zone).toLocalDate(), zone));
  }

  static CareQuestion question(Registry registry, Conditions conditions, LocalDay day) {
    return new CareQuestion(limits(registry), conditions, day.date(), day.zone());
  }

  /** What a club holds to. */
  static CareLimits limits(Registry registry) {
    Map<String, Object> said = registry.club().map(ClubRecord::careLimits).orElse(null);
    return said == null ? CareLimits.USUAL : CareLimits.of(said);
  }
}
