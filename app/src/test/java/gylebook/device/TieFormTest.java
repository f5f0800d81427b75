package gylebook.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gylebook.device.ModbusForm.Kind;
import gylebook.device.ModbusForm.Order;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class TieFormTest {
  private static final String DIGEST = Board.digest("a token long enough");

  private static Reach reach(Map<String, String> form) throws Unfit {
    // By way of the document, as the book keeps it.
    return TieForm.tie("probe", "suction", TieForm.form(TieForm.document(form))).reach();
  }

  @Test
  void eachKindIsReadFromItsFormWithUsualValuesWhereNothingStands() throws Unfit {
    assertThat(reach(Map.of("kind", "broker", "host", "broker.home", "topic", "rig/probe")))
        .isEqualTo(
            new Reach.Broker(
                new MqttBroker("broker.home", 1883, MqttBroker.Version.V5, Optional.empty()),
                "rig/probe",
                new Payload.Plain()));
    assertThat(reach(Map.of("kind", "chip", "number", "28-0416c2f4a1ff", "everySec", "2")))
        .isEqualTo(new Reach.Chip("28-0416c2f4a1ff", Duration.ofSeconds(2)));
    assertThat(reach(Map.of("kind", "line", "device", "/dev/ttyUSB0", "baud", "115200")))
        .isEqualTo(
            new Reach.Printed(
                new LinePlace.Serial("/dev/ttyUSB0", 115_200), LineSource.WHOLE_LINE));
    assertThat(reach(Map.of("kind", "post", "tokenDigest", DIGEST, "payload", "json", "at", "/t")))
        .isEqualTo(new Reach.Post(DIGEST, new Payload.JsonAt("/t")));
    assertThat(reach(Map.of("kind", "table", "file", "day.csv", "column", "kettle", "pace", "2,5")))
        .isEqualTo(new Reach.Table(Path.of("day.csv"), "time", "kettle", 2.5));
  }

  @Test
  void aControllerIsReadWithItsByteOrderFromNetworkOrSerialLine() throws Unfit {
    Map<String, String> form =
        Map.of(
            "kind", "controller",
            "device", "/dev/ttyUSB0",
            "parity", "even",
            "unitId", "7",
            "address", "100",
            "numberKind", "float32",
            "order", "cdab");
    Reach.Controller to = (Reach.Controller) reach(form);
    assertThat(to.form()).isEqualTo(new ModbusForm(Kind.FLOAT32, Order.CDAB));
    assertThat(to.place())
        .isEqualTo(
            new ModbusPlace.Serial(
                "/dev/ttyUSB0", 9600, ModbusPlace.Parity.EVEN, 1, Duration.ofSeconds(1)));
    assertThat(reach(Map.of("kind", "controller", "host", "panel.home")))
        .extracting(one -> ((Reach.Controller) one).place())
        .isEqualTo(new ModbusPlace.Tcp("panel.home", 502, Duration.ofSeconds(1)));
  }

  @ParameterizedTest
  @CsvSource({
    "kind,telepathy",
    "host,''",
    "port,eighty",
    "port,70000",
    "payload,xml",
    "unit,furlong",
    "topic,rig/#",
    "at,no-slash",
  })
  void whatDoesNotFitIsSaidWithFieldAndLimit(String field, String value) {
    Map<String, String> form =
        new java.util.HashMap<>(
            Map.of("kind", "broker", "host", "h", "topic", "t", "payload", "json", "at", "/a"));
    form.put(field, value);
    assertThatThrownBy(() -> reach(form))
        .isInstanceOfSatisfying(
            Unfit.class,
            unfit -> {
              assertThat(unfit.field()).isIn(field, "form");
              assertThat(unfit).message().isNotBlank();
            });
  }

  @Test
  void aDocumentThatIsNoneIsSaid() {
    assertThatThrownBy(() -> TieForm.form("{")).isInstanceOf(Unfit.class);
    assertThatThrownBy(() -> TieForm.form("[]")).isInstanceOf(Unfit.class);
  }

  @Test
  void wordsShowNoPassword() throws Unfit {
    Map<String, String> form =
        Map.of("kind", "broker", "host", "h", "topic", "t", "user", "u", "password", "copper");
    assertThat(reach(form).words()).doesNotContain("copper");
    assertThat(reach(form).toString()).doesNotContain("copper");
  }
}
