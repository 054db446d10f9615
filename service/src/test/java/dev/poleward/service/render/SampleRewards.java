package dev.poleward.service.render;

import dev.poleward.domain.event.Help;
import dev.poleward.domain.event.Outcome;
import dev.poleward.domain.event.RepDetails;
import dev.poleward.domain.event.Reward;
import dev.poleward.domain.event.RewardKind;
import dev.poleward.domain.event.RewardPlace;
import dev.poleward.domain.judgement.Ran;
import dev.poleward.domain.judgement.StageRewards;
import dev.poleward.domain.judgement.StandingReading;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.programme.Drill;
import dev.poleward.domain.programme.Programme;
import dev.poleward.domain.programme.RewardLadder;
import dev.poleward.domain.programme.RewardStep;
import dev.poleward.domain.programme.Stage;
import dev.poleward.domain.programme.StageTerms;
import dev.poleward.domain.record.PlacedRep;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Rewards of invented dogs. */
final class SampleRewards {

  static final LocalDate DAY = LocalDate.parse("2026-05-18");
  private static final Programme PROGRAMME = DefaultProgramme.programme();
  private static final ZoneId ZONE = ZoneOffset.UTC;

  private final List<PlacedRep> reps = new ArrayList<>();

  private SampleRewards() {}

  /** A dog that went down the ladder in two stages; one month nothing was run. */
  static DogRewards usual(String callName) {
    SampleRewards told = new SampleRewards();
    told.run("three-bare", "2026-01-10T17:00:00Z", 18, 4, food(3), food(1));
    told.run("three-bare", "2026-02-10T17:00:00Z", 20, 10, food(3), food(1));
    told.run("three-bare", "2026-02-20T17:00:00Z", 20, 10, food(1), toy());
    told.run("three-bare", "2026-04-08T17:00:00Z", 24, 24, toy());
    told.run("four-bare", "2026-04-10T17:00:00Z", 30, 5, food(3), food(1));
    told.run("four-bare", "2026-05-10T17:00:00Z", 20, 7, food(1), toy());
    return told.of(callName);
  }

  /** A dog of whose rewards nobody said anything. */
  static DogRewards nothingTold() {
    return new SampleRewards().of("Bracken");
  }

  /** A rep in each of forty months, the last ones without a reward. */
  static DogRewards overYears() {
    SampleRewards told = new SampleRewards();
    Instant first = Instant.parse("2023-01-15T17:00:00Z");
    for (int month = 0; month < 40; month++) {
      String at = first.plus(Duration.ofDays(30L * month)).toString();
      told.run("four-bare", at, 1, 2, month < 30 ? new Reward[] {food(50)} : new Reward[0]);
    }
    return told.of("Zorro");
  }

  /** A ladder of twenty steps, several of which earn as much. */
  static DogRewards ofALongLadder() {
    SampleRewards told = new SampleRewards();
    told.run("four-bare", "2026-04-10T17:00:00Z", 3, 9, food(2));
    StageRewards usual = told.of("Aske").stages().getFirst();
    Stage stage = usual.stage();
    List<RewardStep> steps =
        IntStream.rangeClosed(1, 20)
            .mapToObj(step -> new RewardStep("W".repeat(200), List.of(food(11 - step / 2))))
            .toList();
    StageTerms terms = stage.terms();
    Stage steep =
        new Stage(
            stage.id(),
            "ジュニパー・フォン・デア・ホーエン・ヴィーゼ".repeat(5),
            stage.ground(),
            stage.entries(),
            stage.handlings(),
            stage.backChainSteps(),
            stage.prerequisites(),
            new StageTerms(
                terms.kind(),
                terms.order(),
                terms.toleranceDegrees(),
                terms.rule(),
                new RewardLadder(steps)));
    StageRewards rewards =
        new StageRewards(steep, usual.reps(), usual.rewarded(), usual.fade(), usual.shared());
    return new DogRewards(new DogInPicture("aske", "Aske", DAY), PROGRAMME, ZONE, List.of(rewards));
  }

  /** So many reps, a day's worth, every so manieth a miss. */
  private void run(String stage, String from, int count, int missEvery, Reward... rewards) {
    List<Drill> drills = PROGRAMME.stage(stage).orElseThrow().drills();
    Instant at = Instant.parse(from);
    for (int i = 1; i <= count; i++) {
      Outcome outcome = i % missEvery == 0 ? Outcome.MISSED_ENTRY : Outcome.CLEAN;
      reps.add(
          rewarded(
              Ran.of(drills.get(i % drills.size()), outcome, Help.NONE, at.plusSeconds(60L * i)),
              List.of(rewards)));
    }
  }

  private static PlacedRep rewarded(PlacedRep rep, List<Reward> rewards) {
    RepDetails said = rep.details();
    return new PlacedRep(
        rep.moment(),
        rep.rep(),
        rep.session(),
        rep.dog(),
        rep.manoeuvre(),
        rep.outcome(),
        new RepDetails(
            said.dogSide(),
            said.backChainStep(),
            said.jumpTurn(),
            null,
            null,
            null,
            said.approach(),
            null,
            null,
            null,
            rewards,
            said.help(),
            null,
            null,
            null,
            null),
        rep.angle(),
        rep.setup(),
        null,
        null,
        List.of(),
        List.of());
  }

  private static Reward food(int count) {
    return new Reward(RewardKind.FOOD, RewardPlace.GAP, count, null);
  }

  private static Reward toy() {
    return new Reward(RewardKind.TOY, RewardPlace.EXIT, 1, null);
  }

  private DogRewards of(String callName) {
    List<StageRewards> stages =
        StageRewards.of(StandingReading.begun(PROGRAMME, null), reps).stream()
            .filter(stage -> !stage.rewarded().isEmpty())
            .toList();
    return new DogRewards(new DogInPicture("juniper", callName, DAY), PROGRAMME, ZONE, stages);
  }
}
