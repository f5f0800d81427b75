package gylebook.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// SenML against the examples of RFC 8428, section 5.1.
final class PayloadTest {
  private static final Instant NOW = Instant.parse("2026-11-25T08:00:00Z");
  private static final Instrument PROBE = instrument(Quantity.TEMPERATURE, "°C");

  private static Instrument instrument(Quantity quantity, String unit) {
    return new Instrument("it", "kettle", Unit.known(quantity, unit));
  }

  private static Decoded one(Payload payload, Instrument instrument, String text) {
    List<Decoded> heard = payload.decode(instrument, text, NOW);
    assertThat(heard).hasSize(1);
    return heard.getFirst();
  }

  private static double inside(Decoded decoded) {
    assertThat(decoded).isInstanceOf(Decoded.Value.class);
    return ((Decoded.Value) decoded).amount().inside();
  }

  private static String why(Decoded decoded) {
    assertThat(decoded).isInstanceOf(Decoded.Garbled.class);
    return ((Decoded.Garbled) decoded).why();
  }

  private static List<Decoded> pack(String name, Instrument instrument, String text) {
    return new Payload.SenMl(name).decode(instrument, text, NOW);
  }

  @Test
  void theFirstExampleOfTheStandardIsATemperatureNow() {
    String text = "[{\"n\":\"urn:dev:ow:10e2073a01080063\",\"u\":\"Cel\",\"v\":23.1}]";
    List<Decoded> heard = pack("urn:dev:ow:10e2073a01080063", PROBE, text);
    assertThat(heard).hasSize(1);
    Decoded.Value value = (Decoded.Value) heard.getFirst();
    assertThat(value.amount().inside()).isEqualTo(23.1);
    assertThat(value.amount().asTyped()).isEqualTo("23.1 Cel");
    assertThat(value.claimed()).isEmpty();
  }

  /// Section 5.1.2, third example: base name, base time, base unit, and times before it.
  @Test
  void aPackWithBasesIsResolvedAsTheStandardSays() {
    String text =
        """
        [{"bn":"urn:dev:ow:10e2073a0108006:","bt":1.276020076001e+09,"bu":"A","bver":5,
          "n":"voltage","u":"V","v":120.1},
         {"n":"current","t":-5,"v":1.2},
         {"n":"current","t":-4,"v":1.3},
         {"n":"current","v":1.7}]
        """;
    List<Decoded> current =
        pack("urn:dev:ow:10e2073a0108006:current", instrument(Quantity.CURRENT, "A"), text);
    assertThat(current.stream().map(PayloadTest::inside)).containsExactly(1.2, 1.3, 1.7);
    // 1.276020076001e9 s after 1970 is 2010-06-08T18:01:16.001Z (date -u -d @1276020076).
    assertThat(current.stream().map(one -> ((Decoded.Value) one).claimed().orElseThrow()))
        .containsExactly(
            Instant.parse("2010-06-08T18:01:11.001Z"),
            Instant.parse("2010-06-08T18:01:12.001Z"),
            Instant.parse("2010-06-08T18:01:16.001Z"));
    assertThat(pack("urn:dev:ow:10e2073a0108006:voltage", instrument(Quantity.VOLTAGE, "V"), text))
        .hasSize(1)
        .allSatisfy(one -> assertThat(inside(one)).isEqualTo(120.1));
    assertThat(pack("somebody-else", PROBE, text)).isEmpty();
  }

  @Test
  void aSmallTimeCountsFromNow() {
    Decoded heard = pack("a", PROBE, "[{\"n\":\"a\",\"u\":\"Cel\",\"v\":1,\"t\":-30}]").getFirst();
    assertThat(((Decoded.Value) heard).claimed()).isEqualTo(Optional.of(NOW.minusSeconds(30)));
  }

  @Test
  void aBaseValueIsAdded() {
    Decoded heard =
        pack("a", PROBE, "[{\"bn\":\"a\",\"bv\":20,\"u\":\"Cel\",\"v\":0.5}]").getFirst();
    assertThat(inside(heard)).isEqualTo(20.5);
  }

  @Test
  void kelvinsAreReadAndFahrenheitIsNoUnitOfTheStandard() {
    assertThat(inside(pack("a", PROBE, "[{\"n\":\"a\",\"u\":\"K\",\"v\":339.45}]").getFirst()))
        .isCloseTo(66.3, within(1e-9));
    assertThat(why(pack("a", PROBE, "[{\"n\":\"a\",\"u\":\"degF\",\"v\":151}]").getFirst()))
        .isEqualTo("has 'degF', which is no SenML unit of temperature");
    assertThat(why(pack("a", PROBE, "[{\"n\":\"a\",\"u\":\"W\",\"v\":20}]").getFirst()))
        .contains("no SenML unit of temperature");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "66.3",
        "{}",
        "[1]",
        "[{\"n\":\"a\",\"v\":\"66\"}]",
        "[{\"n\":7,\"v\":66}]",
        "[{\"v\":66}]",
        "[{\"n\":\"a b\",\"v\":66}]",
        "[{\"n\":\"a\",\"v\":66}",
        "[{\"n\":\"a\",\"v\":66,\"v\":67}]",
        "[{\"bver\":11,\"n\":\"a\",\"v\":66}]",
        "[{\"n\":\"a\",\"v\":66,\"later_\":1}]",
        "[{\"n\":\"a\",\"v\":66}] more",
      })
  void whatIsNoSenMlIsSaidToBeNone(String text) {
    assertThat(why(pack("a", PROBE, text).getFirst())).startsWith("is no SenML");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[{\"n\":\"a\",\"vs\":\"open\"}]",
        "[{\"n\":\"a\",\"vb\":true}]",
        "[{\"n\":\"a\",\"u\":\"Cel\",\"v\":1e999}]",
        "[{\"n\":\"a\",\"u\":\"Cel\",\"v\":66,\"t\":1e300}]",
      })
  void aRecordWithoutAUsableNumberIsGarbled(String text) {
    assertThat(why(pack("a", PROBE, text).getFirst())).isNotBlank();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "66.3|66.3",
        "66,3|66.3",
        "+66.3|66.3",
        "-3|-3",
        "6.63e1|66.3",
        "66.3 °C|66.3",
        "66.3C|66.3",
        "151.34 F|66.3",
        "151.34°F|66.3",
        "339.45 K|66.3",
      })
  void aPlainNumberIsReadWithOrWithoutUnit(String text, double wantedC) {
    assertThat(inside(one(new Payload.Plain(), PROBE, text))).isCloseTo(wantedC, within(1e-9));
  }

  @Test
  void spaceAndLineEndsAroundANumberDoNotMatter() {
    assertThat(inside(one(new Payload.Plain(), PROBE, " 66.3\r\n"))).isEqualTo(66.3);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "nan",
        "NaN",
        "inf",
        "-",
        "66.3.1",
        "0x42",
        "T=66.3",
        "66 30",
        "66.3 kg",
        "1e99",
        "1234567890",
        "-127",
        "151",
        "４２"
      })
  void whatIsNoTemperatureIsGarbled(String text) {
    assertThat(why(one(new Payload.Plain(), PROBE, text))).isNotBlank();
  }

  @Test
  void anyJsonIsReadWhereThePointerLeads() {
    Payload at = new Payload.JsonAt("/kettle/0/warm");
    assertThat(inside(one(at, PROBE, "{\"kettle\":[{\"warm\":66.3}]}"))).isEqualTo(66.3);
    assertThat(inside(one(at, PROBE, "{\"kettle\":[{\"warm\":\"151.34 F\"}]}")))
        .isCloseTo(66.3, within(1e-9));
    assertThat(why(one(at, PROBE, "{\"kettle\":[{\"warm\":null}]}")))
        .isEqualTo("has no number at /kettle/0/warm");
    assertThat(why(one(at, PROBE, "{}"))).contains("no number");
    assertThat(why(one(at, PROBE, "66"))).contains("no number");
    assertThat(why(one(at, PROBE, "<xml/>"))).isEqualTo("is no JSON");
  }

  @Test
  void bytesThatAreNoTextAreShownInHexadecimal() {
    List<Decoded> heard =
        new Payload.Plain().decode(PROBE, new byte[] {(byte) 0xff, 0x36, 0x36}, NOW);
    assertThat(heard).containsExactly(new Decoded.Garbled("ff 36 36", "is no text (not UTF-8)"));
  }

  @Test
  void aHugeMessageIsNotReadAtAll() {
    byte[] huge = "6".repeat(Received.BYTES_MOST + 1).getBytes(StandardCharsets.UTF_8);
    assertThat(why(new Payload.Plain().decode(PROBE, huge, NOW).getFirst()))
        .contains("more than the 65536 bytes");
  }

  @Test
  void longAndUnprintableTextIsCutForShowing() {
    Decoded.Garbled garbled =
        (Decoded.Garbled) one(new Payload.Plain(), PROBE, "\u001b[31m" + "x".repeat(500));
    assertThat(garbled.text()).hasSizeLessThan(130).startsWith("\uFFFD[31m").endsWith(" ...");
  }
}
