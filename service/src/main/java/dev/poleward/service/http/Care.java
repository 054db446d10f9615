package dev.poleward.service.http;

import dev.poleward.domain.care.CareLimits;
import dev.poleward.domain.care.CareQuestion;
import dev.poleward.domain.care.Conditions;
import dev.poleward.domain.record.ClubRecord;
import dev.poleward.domain.record.Registry;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;

/** What a club's settings and calendar have to do with care. */
final class Care {

  private Care() {}

  static CareQuestion question(Registry registry, Conditions conditions, Instant at) {
    Optional<ClubRecord> club = registry.club();
    Map<String, Object> said = club.map(ClubRecord::careLimits).orElse(null);
    ZoneId zone = club.map(LocalDays::zone).orElse(ZoneOffset.UTC);
    return new CareQuestion(
        said == null ? CareLimits.USUAL : CareLimits.of(said), conditions, at, zone);
  }
}
