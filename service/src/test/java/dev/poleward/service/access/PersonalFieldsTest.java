package dev.poleward.service.access;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.record.Sealed;
import dev.poleward.service.access.MasterKey.WhenMissing;
import dev.poleward.service.access.PersonalFields.Enveloped;
import java.nio.file.Path;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PersonalFieldsTest {

  private static final JsonMapper JSON = new JsonMapper();
  private static final Duration WAIT = Duration.ofSeconds(10);

  private final ForgottenSet forgotten = new ForgottenSet();

  @TempDir Path folder;
  private PersonKeys keys;
  private PersonalFields fields;

  @BeforeEach
  void start() {
    MasterKey master = MasterKey.open(folder.resolve("master.key"), WhenMissing.CREATE);
    keys = new PersonKeys(new KeyLog().node(), master, forgotten, new SeededRandomness(5), WAIT);
    keys.start(WAIT);
    fields = new PersonalFields(keys);
  }

  @AfterEach
  void stop() {
    keys.close();
  }

  /** JSON with single quotes, which read better here. */
  private static ObjectNode json(String text) throws JsonProcessingException {
    return (ObjectNode) JSON.readTree(text.replace('\'', '"'));
  }

  private Enveloped enveloped(String type, String data) throws JsonProcessingException {
    return fields.enveloped("saltmarsh", "e-1", type, json(data));
  }

  private ObjectNode opened(Enveloped enveloped) {
    return fields.opened("saltmarsh", "e-1", enveloped.sealed(), enveloped.data());
  }

  @Test
  void namesAndAddressesOfHandlersAreTakenOutAndComeBack() throws Exception {
    String data = "{'handler':'ines','name':'Inês','email':'ines@example.org'}";

    Enveloped enveloped = enveloped("handler.registered.v1", data);

    assertThat(enveloped.data()).isEqualTo(json("{'handler':'ines'}"));
    assertThat(personOf(enveloped.sealed())).isEqualTo("ines");
    assertThat(opened(enveloped)).isEqualTo(json(data));
  }

  @Test
  void notesAreTakenOutAndTheRestStaysAsItIs() throws Exception {
    String data = "{'rep':'r-1','dog':'juniper','rewards':[{'kind':'toy'}],'note':'tired\\n😀'}";
    ObjectNode sent = json(data);

    Enveloped enveloped = fields.enveloped("saltmarsh", "e-1", "rep.logged.v1", sent);

    assertThat(sent).isEqualTo(json(data));
    assertThat(enveloped.data())
        .isEqualTo(json("{'rep':'r-1','dog':'juniper','rewards':[{'kind':'toy'}]}"));
    assertThat(opened(enveloped)).isEqualTo(sent);
    assertThat(enveloped.data().has("note")).isFalse();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'rep':'r','dog':'d','handler':'h','observer':'o','note':'n'} | h",
        "{'rep':'r','dog':'d','handler':null,'observer':'o','note':'n'} | o",
        "{'rep':'r','dog':'d','observer':'o','note':'n'} | o",
        "{'rep':'r','dog':'d','note':'n'} | dog:d",
        "{'rep':'r','note':'n'} | rep:r"
      })
  void aNoteIsItsHandlersElseItsObserversElseSomebodysOfTheDogElseOfTheRep(
      String data, String person) throws Exception {
    assertThat(personOf(enveloped("rep.amended.v1", data).sealed())).isEqualTo(person);
  }

  private static @Nullable String personOf(@Nullable Sealed sealed) {
    return sealed == null ? null : sealed.person();
  }

  @Test
  void aNoteThatIsTakenAwayIsNotPersonal() throws Exception {
    Enveloped enveloped = enveloped("rep.amended.v1", "{'rep':'r-1','note':null}");

    assertThat(enveloped.data()).isEqualTo(json("{'rep':'r-1','note':null}"));
    assertThat(enveloped.sealed()).isNull();
    assertThat(opened(enveloped)).isEqualTo(enveloped.data());
  }

  @ParameterizedTest
  @ValueSource(strings = {"dog.registered.v1", "event.withdrawn.v1", "rep.logged.v2", ""})
  void otherTypesHoldNothingPersonal(String type) throws Exception {
    Enveloped enveloped = enveloped(type, "{'name':'Saltmarsh','note':'n','email':'e'}");

    assertThat(enveloped.data()).isEqualTo(json("{'name':'Saltmarsh','note':'n','email':'e'}"));
    assertThat(enveloped.sealed()).isNull();
  }

  @Test
  void theOrderOfMembersMakesNoDifference() throws Exception {
    assertThat(enveloped("handler.registered.v1", "{'email':'i@x','name':'I','handler':'ines'}"))
        .isEqualTo(
            enveloped("handler.registered.v1", "{'handler':'ines','name':'I','email':'i@x'}"));
  }

  @Test
  void membersOfSomebodyForgottenAreDroppedAndMarkedSo() throws Exception {
    Enveloped before = enveloped("handler.registered.v1", "{'handler':'ines','name':'Inês'}");
    forgotten.add("saltmarsh", "ines");
    keys.forget("saltmarsh", "ines");

    Enveloped after = enveloped("handler.registered.v1", "{'handler':'ines','name':'Inês'}");

    assertThat(after).isEqualTo(new Enveloped(json("{'handler':'ines'}"), Sealed.dropped("ines")));
    assertThat(opened(after)).isEqualTo(json("{'handler':'ines'}"));
    assertThat(opened(before)).isEqualTo(json("{'handler':'ines'}"));
    assertThat(fields.members("saltmarsh", "e-1", before.sealed())).isEmpty();
  }

  @Test
  void whatIsNoObjectIsAFaultThatQuotesNothing() {
    for (String plaintext : new String[] {"secret words", "[1]", ""}) {
      Sealed sealed =
          keys.seal("saltmarsh", "ines", "e-1", plaintext.getBytes(UTF_8)).orElseThrow();

      assertThatThrownBy(() -> fields.members("saltmarsh", "e-1", sealed))
          .isInstanceOf(IllegalStateException.class)
          .hasMessageNotContaining("secret")
          .hasNoCause();
    }
  }
}
