package dev.poleward.domain.programme;

import static dev.poleward.domain.programme.Written.ALONGSIDE;
import static dev.poleward.domain.programme.Written.STRAIGHT;
import static dev.poleward.domain.programme.Written.after;
import static dev.poleward.domain.programme.Written.document;
import static dev.poleward.domain.programme.Written.faults;
import static dev.poleward.domain.programme.Written.onlyStage;
import static dev.poleward.domain.programme.Written.programmeOf;
import static dev.poleward.domain.programme.Written.sound;
import static dev.poleward.domain.programme.Written.stage;
import static dev.poleward.domain.programme.Written.stageWith;
import static org.assertj.core.api.Assertions.assertThat;

import dev.poleward.domain.programme.MovingOnRule.KOfN;
import dev.poleward.domain.programme.MovingOnRule.Run;
import dev.poleward.domain.programme.MovingOnRule.Sequential;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Documents in order and not. */
class ProgrammeDocumentTest {

  @Test
  void whatIsLeftOutTakesTheStatedValues() {
    Programme programme = sound(programmeOf("", stage("a"), stage("b", "'probe':true")));

    assertThat(programme.version()).isEqualTo(1);
    assertThat(programme.cleanTarget()).isEqualTo(0.9);
    assertThat(programme.cleanFloor()).isEqualTo(0.8);
    Stage stage = programme.stages().getFirst();
    assertThat(stage.ground().line().spacing()).isEqualTo(0.6);
    assertThat(stage.terms())
        .isEqualTo(
            new StageTerms(
                StageKind.REGULAR,
                StageOrder.MEASURED,
                5,
                new Sequential(0.9, 0.7, 0.1, 0.1, 3, 0.05),
                RewardLadder.USUAL));
    assertThat(programme.stages().getLast().terms().rule()).isEqualTo(new KOfN(2, 3, 3, 0.05));
  }

  @Test
  void aStageTakesFromItsProgrammeWhatItDoesNotSayItself() {
    String programme =
        "'spacing':0.55,'toleranceDegrees':3,'rule':{'method':'run','length':4},"
            + "'rewardLadder':[{'rewards':[]}]";
    String own =
        "'spacing':0.7,'toleranceDegrees':1,'rule':{'method':'k-of-n','k':3,'n':4,"
            + "'stepBackAfter':2,'wrongMisfit':0.1},"
            + "'rewardLadder':[{'rewards':[{'kind':'toy','at':'exit'}]},{'rewards':[]}]";

    Programme read = sound(programmeOf(programme, stage("takes"), stage("says", own)));

    Stage takes = read.stages().getFirst();
    assertThat(takes.ground().line().spacing()).isEqualTo(0.55);
    assertThat(takes.terms().toleranceDegrees()).isEqualTo(3);
    assertThat(takes.terms().rule()).isEqualTo(new Run(4, 3, 0.05));
    assertThat(takes.terms().rewardLadder().steps()).hasSize(1);
    Stage says = read.stages().getLast();
    assertThat(says.ground().line().spacing()).isEqualTo(0.7);
    assertThat(says.terms().toleranceDegrees()).isEqualTo(1);
    assertThat(says.terms().rule()).isEqualTo(new KOfN(3, 4, 2, 0.1));
    assertThat(says.terms().rewardLadder().steps()).hasSize(2);
  }

  @Test
  void theUsualLadderFadesToOneToyAtTheEnd() {
    assertThat(RewardLadder.USUAL.steps())
        .extracting(RewardStep::rewardsEach)
        .containsExactly(4, 2, 1);
  }

  @Test
  void stagesComeAfterTheirPrerequisitesAndOtherwiseAsWritten() {
    Programme programme =
        sound(
            programmeOf(
                "",
                stage("last", after("first", "second")),
                stage("second", after("first")),
                stage("free"),
                stage("first")));

    assertThat(programme.inOrder())
        .extracting(Stage::id)
        .containsExactly("free", "first", "second", "last");
  }

  @Test
  void membersOfTomorrowArePassedOver() {
    assertThat(faults(programmeOf("'weather':'fine'", stage("a", "'mood':1")))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "'cleanFloor':0.9                                 | /cleanFloor       | must be below cleanTarget",
        "'cleanTarget':1                                  | /cleanTarget      | must be a number above 0 and below 1",
        "'toleranceDegrees':0                             | /toleranceDegrees | must be a number from 0.5 to 15",
        "'version':0                                      | /version          | must be a whole number from 1 to 100000",
        "'rule':{'method':'guess'}                        | /rule/method      | is not one of the words that are known there",
        "'rule':{}                                        | /rule/method      | is required",
        "'rule':{'method':'k-of-n','k':11}                | /rule/k           | must not be above n",
        "'rule':{'method':'k-of-n','n':7}                 | /rule/k           | must not be above n",
        "'rule':{'method':'run','n':7}                    | /rule/n           | does not belong to the method run",
        "'rule':{'method':'sequential','mastered':0.6}    | /rule/notYet      | must be below mastered",
        "'rule':{'method':'sequential','notYet':0.9}      | /rule/notYet      | must be below mastered",
        "'rule':{'method':'sequential','wrongHold':0.5}   | /rule/wrongHold   | must be a number above 0 and below 0.5",
        "'rule':{'method':'sequential','wrongMoveOn':0}   | /rule/wrongMoveOn | must be a number above 0 and below 0.5",
        "'rule':{'method':'run','stepBackAfter':0}        | /rule/stepBackAfter | must be a whole number from 1 to 20",
        "'rule':{'method':'run','wrongMisfit':0.5}        | /rule/wrongMisfit | must be a number above 0 and below 0.5",
        "'rewardLadder':[]                                | /rewardLadder     | must have 1 to 20 items",
        "'rewardLadder':[{}]                              | /rewardLadder/0/rewards | is required",
        "'rewardLadder':[{'rewards':[{'kind':'hug','at':'exit'}]}] | /rewardLadder/0/rewards/0/kind | is not one of the words that are known there",
      })
  void programmesThatAreNotInOrder(String members, String pointer, String detail) {
    assertThat(faults(programmeOf(members, stage("a"))))
        .containsExactly(new DocumentFault(pointer, detail));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{}                                             |                   | must have clocks or rungs, one of the two",
        "{'clocks':['12:00'],'rungs':{'end':9,'stepDegrees':3}} |           | must have clocks or rungs, one of the two",
        "{'clocks':[]}                                  | /clocks           | must have 1 to 23 items",
        "{'clocks':['6:00']}                            | /clocks/0         | must be a clock position, whole or half hours, and not 6:00",
        "{'clocks':['1:00','1:00']}                     | /clocks           | must not name anything twice",
        "{'rungs':{'stepDegrees':3}}                    | /rungs/end        | is required",
        "{'rungs':{'end':180,'stepDegrees':3}}          | /rungs/end        | must be a number from 0 to below 180",
        "{'rungs':{'end':9}}                            | /rungs/stepDegrees | is required, or stepChord in its place",
        "{'rungs':{'end':9,'stepDegrees':3,'stepChord':1}} | /rungs/stepChord | must not be given beside stepDegrees",
        "{'rungs':{'start':10,'end':9,'stepDegrees':3}} | /rungs/end        | must not be below start",
        "{'rungs':{'end':9,'stepDegrees':0}}            | /rungs/stepDegrees | must be a number from 0.5 to 90",
        "{'rungs':{'end':90,'stepChord':3.7}}           | /rungs/stepChord  | is more than the last pole can move: the rungs lead nowhere",
        "{'rungs':{'end':179,'stepChord':0.01}}         | /rungs/stepChord  | is so short that a side has more than 360 rungs",
        "{'rungs':{'end':9,'stepDegrees':3,'sides':'left'}} | /rungs/sides  | is not one of the words that are known there",
      })
  void entriesThatAreNotInOrder(String entries, String pointer, String detail) {
    assertThat(faults(programmeOf("", stageWith("a", "none", entries, ALONGSIDE))))
        .containsExactly(
            new DocumentFault("/stages/0/entries" + (pointer == null ? "" : pointer), detail));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "[]                                                             | | must have 1 to 32 items",
        "[{'dogSide':'left'}]                                           | /0/manoeuvre  | is required",
        "[{'manoeuvre':'recall','dogSide':'left'}]                      | /0/dogSide    | does not go with a recall",
        "[{'manoeuvre':'send'},{'manoeuvre':'send'}]                    | /1 | is listed before, with the same dog side or with any",
        "[{'manoeuvre':'send','dogSide':'left'},{'manoeuvre':'send'}]   | /1 | is listed before, with the same dog side or with any",
        "[{'manoeuvre':'send','untilAngle':180}]                        | /0/untilAngle | must be a number from 0 to below 180",
        "[{'manoeuvre':'send','untilAngle':89}]                         | | leave the largest entries of the stage without any",
        "[{'manoeuvre':'send'},{'manoeuvre':'recall','untilAngle':29}]  | /1/untilAngle | is below every entry of the stage",
      })
  void handlingsThatAreNotInOrder(String handlings, String pointer, String detail) {
    String entries = "{'clocks':['1:00','3:00']}";

    assertThat(faults(programmeOf("", stageWith("a", "none", entries, handlings))))
        .containsExactly(
            new DocumentFault("/stages/0/handlings" + (pointer == null ? "" : pointer), detail));
  }

  @Test
  void bothDogSidesOfAManoeuvreAreTwoHandlings() {
    String handlings =
        "[{'manoeuvre':'rear-cross','dogSide':'left'},{'manoeuvre':'rear-cross','dogSide':'right'}]";

    assertThat(onlyStage(stageWith("a", "none", STRAIGHT, handlings)).handlings()).hasSize(2);
  }

  @Test
  void onlyAJumpIsAddedBackwards() {
    assertThat(faults(programmeOf("", stage("a", "'backChainSteps':['wrap']"))))
        .containsExactly(
            new DocumentFault("/stages/0/backChainSteps", "go with a jump as the lead-in only"));
  }

  @Test
  void aDistanceGoesWithALeadIn() {
    String distance = "'leadInDistance':5";

    assertThat(faults(programmeOf("", stage("a", distance))))
        .containsExactly(
            new DocumentFault(
                "/stages/0/leadInDistance", "goes with a jump or a tunnel as the lead-in only"));
    assertThat(faults(programmeOf("", stageWith("a", "tunnel", STRAIGHT, ALONGSIDE, distance))))
        .isEmpty();
    assertThat(faults(programmeOf("", stageWith("a", "jump", STRAIGHT, ALONGSIDE, distance))))
        .isEmpty();
  }

  @Test
  void stagesInACircleAndThoseBehindAreNeverReached() {
    assertThat(
            faults(
                programmeOf(
                    "",
                    stage("start"),
                    stage("b", after("d", "start")),
                    stage("c", after("b")),
                    stage("d", after("c")),
                    stage("behind", after("d")),
                    stage("alone", after("alone")))))
        .containsExactlyInAnyOrder(
            new DocumentFault("/stages/1/prerequisites", "go in a circle: b, c, d"),
            new DocumentFault(
                "/stages/4/prerequisites",
                "come after a circle of stages, so this one is never reached"),
            new DocumentFault("/stages/5/prerequisites", "go in a circle: alone"));
  }

  @Test
  void idsAreToldApartAndFound() {
    assertThat(faults(programmeOf("", stage("a"), stage("a", after("a", "nobody")), stage("b"))))
        .containsExactlyInAnyOrder(
            new DocumentFault("/stages/1/stage", "is the id of an earlier stage already"),
            new DocumentFault("/stages/1/prerequisites/1", "must be a stage of this programme"));
  }

  @Test
  void nothingButAProbeWaitsForAProbe() {
    assertThat(
            faults(
                programmeOf(
                    "",
                    stage("six", "'probe':true"),
                    stage("twelve", "'probe':true", after("six")),
                    stage("jump", after("six")))))
        .containsExactly(
            new DocumentFault(
                "/stages/2/prerequisites/0", "must not be a probe: nothing has to wait for one"));
  }

  @Test
  void moreDrillsThanAnybodyCouldWalkAreRefused() {
    String rungs = "{'rungs':{'end':179,'stepDegrees':0.5}}";
    String[] stages =
        IntStream.range(0, 8)
            .mapToObj(i -> stageWith("s-" + i, "none", rungs, ALONGSIDE))
            .toArray(String[]::new);

    assertThat(faults(programmeOf("", stages)))
        .containsExactly(new DocumentFault("/stages", "come to 5736 drills; at most 5000"));
  }

  @Test
  void everyFaultIsToldAtOnce() {
    assertThat(
            faults(
                document(
                    "{'programme':'no id','version':1.5,'rule':{'method':'k-of-n','k':9,'n':8},"
                        + "'stages':[{'stage':'a','poles':1,'leadIn':'slide','entries':7},3,"
                        + stageWith("b", "none", "{'clocks':['13:00']}", "[{'manoeuvre':'dance'}]")
                        + "]}")))
        .extracting(DocumentFault::pointer)
        .containsExactlyInAnyOrder(
            "/name",
            "/programme",
            "/version",
            "/rule/k",
            "/stages/0/handlings",
            "/stages/0/poles",
            "/stages/0/leadIn",
            "/stages/0/entries",
            "/stages/1",
            "/stages/2/entries/clocks/0",
            "/stages/2/handlings/0/manoeuvre");
  }

  @Test
  void ofVeryManyFaultsAHundredAreTold() {
    String[] stages =
        IntStream.range(0, 60)
            .mapToObj(i -> stageWith("s-" + i, "none", "{}", "[]"))
            .toArray(String[]::new);

    assertThat(faults(programmeOf("", stages))).hasSize(ProgrammeDocument.FAULTS_MAX);
  }
}
