package dev.poleward.service.contract;

import static dev.poleward.service.contract.Events.CONTRACT;
import static dev.poleward.service.contract.Events.event;
import static dev.poleward.service.contract.Events.faults;
import static dev.poleward.service.contract.Events.tree;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The rules that no schema can say. */
class RulesTest {

  private static final String SETUP = "{'session':'s-1','setup':{'poles':4,'spacing':0.6,%s}}";
  private static final String STAGE =
      "{'stage':'%s','poles':4,'leadIn':'none','handlings':[{'manoeuvre':'send'}],'entries':%s}";
  private static final String CLOCKS = "{'clocks':['12:00']}";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "'leadIn':'none'",
        "'leadIn':'jump','angle':0",
        "'leadIn':'tunnel','clock':'1:30'",
        "'leadIn':'jump','angle':-90,'clock':'9:00'",
        "'leadIn':'jump','angle':45.0000001,'clock':'1:30'",
      })
  void setupsInOrder(String rest) {
    assertThat(faults(event("setup.changed.v1", SETUP.formatted(rest)))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "'leadIn':'jump'                          | angle | is required with a jump, or clock in its place",
        "'leadIn':'tunnel'                        | angle | is required with a tunnel, or clock in its place",
        "'leadIn':'none','angle':45,'clock':'3:00' | clock | must agree with angle: 3:00 is 90 degrees",
        "'leadIn':'jump','angle':90,'clock':'9:00' | clock | must agree with angle: 9:00 is -90 degrees",
      })
  void setups(String rest, String member, String detail) {
    assertThat(faults(event("setup.changed.v1", SETUP.formatted(rest))))
        .containsExactly(new Fault("/data/setup/" + member, detail));
  }

  @Test
  void directionsOfRepsAndTheirSetups() {
    String rep =
        "{'rep':'r','session':'s','dog':'d','manoeuvre':'send','outcome':'void','angle':1,"
            + "'clock':'1:00','setup':{'poles':4,'spacing':0.6,'leadIn':'jump'}}";

    assertThat(faults(event("rep.logged.v1", rep)))
        .containsExactlyInAnyOrder(
            new Fault("/data/clock", "must agree with angle: 1:00 is 30 degrees"),
            new Fault("/data/setup/angle", "is required with a jump, or clock in its place"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "rep.logged.v1  | 'session':'s','dog':'d','manoeuvre':'send','outcome':'popped-out','rep':'r','atPole':%d,'setup':{'poles':4,'spacing':0.6,'leadIn':'none'}",
        "rep.amended.v1 | 'rep':'r','atPole':%d,'setup':{'poles':4,'spacing':0.6,'leadIn':'none'}",
        "trial.run.v1   | 'dog':'d','poles':4,'outcome':'popped-out','atPole':%d",
      })
  void noFaultIsBeyondTheLastPoleThatIsSaidBesideIt(String type, String data) {
    assertThat(faults(event(type, "{" + data.formatted(4) + "}"))).isEmpty();
    assertThat(faults(event(type, "{" + data.formatted(5) + "}")))
        .containsExactly(new Fault("/data/atPole", "must be one of the 4 poles that stood"));
  }

  /** What stood is said by the session's setups, and those may come later. */
  @Test
  void aPoleAloneIsNotJudged() {
    assertThat(faults(event("rep.amended.v1", "{'rep':'r','atPole':24}"))).isEmpty();
    assertThat(
            faults(
                event(
                    "rep.logged.v1",
                    "{'rep':'r','session':'s','dog':'d','manoeuvre':'send','outcome':'popped-out','atPole':24}")))
        .isEmpty();
  }

  @Test
  void amendmentsMayTakeOneWayToSayTheDirectionAway() {
    assertThat(faults(event("rep.amended.v1", "{'rep':'r','angle':45,'clock':null}"))).isEmpty();
    assertThat(faults(event("rep.amended.v1", "{'rep':'r','setup':null}"))).isEmpty();
    assertThat(faults(event("rep.amended.v1", "{'rep':'r','angle':45,'clock':'9:00'}")))
        .extracting(Fault::pointer)
        .containsExactly("/data/clock");
  }

  @Test
  void stepsOfAPathAreNoIds() {
    assertThat(faults(event("dog.registered.v1", "{'dog':'..','callName':'Dots'}")))
        .containsExactly(
            new Fault(
                "/data/dog",
                "must be 1 to 64 of the characters A-Z a-z 0-9 . _ ~ -, and not . or .."));
    assertThat(faults(event("dog.registered.v1", "{'dog':'...','callName':'Dots'}"))).isEmpty();
  }

  @Test
  void drills() {
    String homework =
        "{'dog':'d','due':'2026-05-04','drills':[{'reps':1},{'angle':10,'clock':'12:00'}]}";

    assertThat(faults(event("homework.set.v1", homework)))
        .containsExactly(
            new Fault("/data/drills/1/clock", "must agree with angle: 12:00 is 0 degrees"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "dog.merged.v1 | {'dog':'a','into':'a'} | /data/into | must be another dog: none is merged into itself",
        "timing.recorded.v1 | {'device':'a','sequence':1,'deviceClock':9,'entryAt':5,'exitAt':4.9} | /data/exitAt | must not be before entryAt",
        "club.settings-changed.v1 | {'timeZone':'Europe/Atlantis'} | /data/timeZone | is not a time zone known here; give its IANA name, as in Europe/Lisbon",
        "club.settings-changed.v1 | {'timeZone':'europe/lisbon'} | /data/timeZone | is not a time zone known here; give its IANA name, as in Europe/Lisbon",
      })
  void others(String type, String data, String pointer, String detail) {
    assertThat(faults(event(type, data))).containsExactly(new Fault(pointer, detail));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "'method':'run','k':1                            | k        | does not belong to the method run",
        "'method':'k-of-n','length':1                    | length   | does not belong to the method k-of-n",
        "'method':'sequential','n':1                     | n        | does not belong to the method sequential",
        "'method':'k-of-n','k':9,'n':8                   | k        | must not be above n",
        "'method':'sequential','mastered':.7,'notYet':.7 | notYet   | must be below mastered",
      })
  void rulesForMovingOn(String rule, String member, String detail) {
    String json = rule.replace(":.", ":0.");

    assertThat(programme("'rule':{" + json + "}", STAGE.formatted("a", CLOCKS)))
        .containsExactly(new Fault("/data/rule/" + member, detail));
    assertThat(programme("'version':1", STAGE.formatted("a", CLOCKS + ",'rule':{" + json + "}")))
        .containsExactly(new Fault("/data/stages/0/rule/" + member, detail));
  }

  @Test
  void stagesAreToldApartAndFound() {
    String second = STAGE.formatted("a", CLOCKS + ",'prerequisites':['a','b']");

    assertThat(programme("'version':2", STAGE.formatted("a", CLOCKS) + "," + second))
        .containsExactlyInAnyOrder(
            new Fault("/data/stages/1/stage", "is the id of an earlier stage already"),
            new Fault("/data/stages/1/prerequisites/1", "must be a stage of this programme"));
  }

  @Test
  void aStageMayComeAfterOneThatIsWrittenBelow() {
    assertThat(
            programme(
                "'version':1",
                STAGE.formatted("a", CLOCKS + ",'prerequisites':['b']")
                    + ","
                    + STAGE.formatted("b", CLOCKS)))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "'end':90                                  | stepDegrees | is required, or stepChord in its place",
        "'end':90,'stepDegrees':5,'stepChord':0.1  | stepChord   | must not be given beside stepDegrees",
        "'start':91,'end':90,'stepDegrees':5       | end         | must not be below start",
        "'end':179,'stepChord':0.01                | stepChord   | is so short that a side has more than 360 rungs",
      })
  void rungs(String rungs, String member, String detail) {
    assertThat(programme("'version':1", STAGE.formatted("a", "{'rungs':{" + rungs + "}}")))
        .containsExactly(new Fault("/data/stages/0/entries/rungs/" + member, detail));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "'end':0,'stepDegrees':90",
        "'end':179.9,'stepDegrees':0.5",
        "'start':30,'end':30,'stepChord':5",
        "'end':90,'stepChord':0.1524",
      })
  void rungsInOrder(String rungs) {
    assertThat(programme("'version':1", STAGE.formatted("a", "{'rungs':{" + rungs + "}}")))
        .isEmpty();
  }

  /** The schema's fault and the reader's, and of two at one place the schema's. */
  @Test
  void everyFaultOfAProgrammeIsToldAtOnce() {
    String first = STAGE.formatted("a", "{'clocks':['6:00']},'prerequisites':['b'],'mood':1");
    String second = STAGE.formatted("b", CLOCKS + ",'prerequisites':['a']");

    assertThat(programme("'version':0,'cleanFloor':0.95", first + "," + second))
        .extracting(Fault::pointer)
        .containsExactlyInAnyOrder(
            "/data/version",
            "/data/cleanFloor",
            "/data/stages/0/entries/clocks/0",
            "/data/stages/0/mood",
            "/data/stages/0/prerequisites");
  }

  private static List<Fault> programme(String members, String stages) {
    return faults(
        event(
            "programme.published.v1",
            "{'programme':'p','name':'n',%s,'stages':[%s]}".formatted(members, stages)));
  }

  @Test
  void requestsOfSingleResources() {
    assertThat(
            CONTRACT.judge(
                "RegisterClub",
                tree("{'id':'e','club':'saltmarsh','name':'S','timeZone':'Nowhere','x':1}")))
        .containsExactlyInAnyOrder(
            new Fault("/x", "is not known here"),
            new Fault(
                "/timeZone",
                "is not a time zone known here; give its IANA name, as in Europe/Lisbon"));
    assertThat(
            CONTRACT.judge(
                "IssueAccessKey",
                tree("{'id':'e','scopes':['records:read','club:manage'],'dogs':['juniper']}")))
        .containsExactly(new Fault("/scopes/1", "is not for a key that is narrowed to dogs"));
    assertThat(CONTRACT.judge("IssueAccessKey", tree("{'id':'e','scopes':['club:manage']}")))
        .isEmpty();
    assertThat(CONTRACT.judge("RegisterClub", tree("[]")))
        .containsExactly(new Fault("", "must be an object"));
    assertThatThrownBy(() -> CONTRACT.judge("Nothing", tree("{}")))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
