package gylebook.device;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.device.MqttBroker.Login;
import gylebook.device.MqttBroker.Version;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/// Against Debian's mosquitto, whose protocol log is the witness of what we sent.
final class MqttInstrumentsTest {
  private static final Instant MORNING = Instant.parse("2026-11-25T08:00:00Z");
  private static final InstantSource CLOCK = InstantSource.fixed(MORNING);
  private static final Patience QUICK = new Patience(Duration.ofMillis(20), Duration.ofMillis(100));
  private static final Instrument PROBE =
      new Instrument("probe", "suction", Unit.known(Quantity.TEMPERATURE, "°C"));
  private static final Instrument DUTY =
      new Instrument("duty", "element", Unit.known(Quantity.SHARE, "%"));
  private static final List<MqttTopic> TOPICS =
      List.of(
          new MqttTopic(PROBE, "rig/1/probe", new Payload.Plain()),
          new MqttTopic(DUTY, "rig/1/senml", new Payload.SenMl("rig:1:duty")));

  @TempDir private Path folder;

  private static MqttInstruments listen(int port, Version version, Optional<Login> login, Ear ear) {
    MqttBroker broker = new MqttBroker("127.0.0.1", port, version, login);
    return new MqttInstruments(broker, TOPICS, CLOCK, QUICK, ear);
  }

  private static MqttInstruments listen(Mosquitto broker, Version version, Ear ear) {
    MqttInstruments driver = listen(broker.port(), version, Optional.empty(), ear);
    awaitUp(driver);
    return driver;
  }

  private static void awaitUp(Listening driver) {
    Ear.soon().until(() -> driver.line() instanceof Line.Up);
  }

  @ParameterizedTest
  @EnumSource(Version.class)
  void plainNumbersAndSenMlAreHeardWithUnitAndTime(Version version) throws IOException {
    Ear ear = new Ear();
    try (Mosquitto broker = Mosquitto.start(folder, false);
        MqttInstruments driver = listen(broker, version, ear)) {
      broker.publish("rig/1/probe", "66.3");
      broker.publish("rig/1/probe", "151.34 F", "-q", "1");
      broker.publish("rig/1/senml", "[{\"bn\":\"rig:1:\",\"n\":\"duty\",\"u\":\"%\",\"v\":11.5}]");
      assertThat(ear.value("probe", 66.3).received()).isEqualTo(MORNING);
      Decoded.Value fahrenheit = (Decoded.Value) ear.value("probe", 66.3).decoded();
      assertThat(fahrenheit.amount().asTyped()).isEqualTo("66.3");
      // 151.34 °F is exactly 66.3 °C by the definition of the Fahrenheit scale.
      ear.first(
          one ->
              one.decoded() instanceof Decoded.Value value
                  && value.amount().asTyped().equals("151.34 F")
                  && Math.abs(value.amount().inside() - 66.3) < 1e-9);
      assertThat(ear.value("duty", 0.115).oddities()).isEmpty();
      assertThat(driver.line()).isInstanceOf(Line.Up.class);
    }
  }

  @ParameterizedTest
  @EnumSource(Version.class)
  void aValueTheBrokerKeptIsMarkedAsStored(Version version) throws IOException {
    Ear ear = new Ear();
    try (Mosquitto broker = Mosquitto.start(folder, false)) {
      broker.publish("rig/1/probe", "20.5", "-r");
      try (MqttInstruments _ = listen(broker, version, ear)) {
        assertThat(ear.value("probe", 20.5).oddities()).containsExactly(Oddity.STORED);
        broker.publish("rig/1/probe", "20.6", "-r");
        assertThat(ear.value("probe", 20.6).oddities()).isEmpty();
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Version.class)
  void garbageIsShownAsGarbageAndTheNextReadingIsHeard(Version version) throws IOException {
    Ear ear = new Ear();
    try (Mosquitto broker = Mosquitto.start(folder, false);
        MqttInstruments driver = listen(broker, version, ear)) {
      Path noise = folder.resolve("noise");
      Files.write(noise, new byte[] {(byte) 0xff, 0, 1, 2, (byte) 0xfe, '\n'});
      broker.publishLines("rig/1/probe", noise);
      assertThat(ear.garbled("probe").why()).isEqualTo("is no text (not UTF-8)");
      broker.publish("rig/1/probe", "-127.00");
      broker.publish("rig/1/probe", "offline");
      broker.publish("rig/1/senml", "{}");
      assertThat(ear.garbled("duty").why()).contains("no SenML");
      broker.publish("rig/1/probe", "64.2");
      ear.value("probe", 64.2);
      assertThat(ear.heard)
          .extracting(Heard::decoded)
          .contains(new Decoded.Garbled("offline", "is no number"))
          .contains(
              new Decoded.Garbled(
                  "-127.00", "is outside what this instrument can see (-20.0 °C to 150.0 °C)"));
      assertThat(driver.line()).isInstanceOf(Line.Up.class);
    }
  }

  @ParameterizedTest
  @EnumSource(Version.class)
  void aFloodIsThinnedAndCountedAndLosesNoPlace(Version version) throws IOException {
    int count = 5000;
    Path flood = folder.resolve("flood");
    Files.writeString(
        flood,
        IntStream.range(0, count)
            .mapToObj(i -> "" + (10 + i * 0.01))
            .collect(Collectors.joining("\n", "", "\n")));
    Ear ear = new Ear();
    try (Mosquitto broker = Mosquitto.start(folder, false);
        MqttInstruments _ = listen(broker, version, ear)) {
      broker.publishLines("rig/1/probe", flood);
      // Kept by the broker, so that it is heard even if a busy machine lost the line meanwhile.
      broker.publish(
          "rig/1/senml", "[{\"n\":\"rig:1:duty\",\"u\":\"%\",\"v\":50}]", "-q", "1", "-r");
      // The clock of this test stands still, so the flood gets its first twenty and no more; the
      // other instrument is not held up.
      ear.value("duty", 0.5);
      assertThat(ear.heard.stream().filter(one -> one.instrumentId().equals("probe"))).hasSize(20);
    }
  }

  @ParameterizedTest
  @EnumSource(Version.class)
  void aBrokerThatDiesAndComesBackIsHeardAgain(Version version) throws IOException {
    Ear ear = new Ear();
    try (Mosquitto broker = Mosquitto.start(folder, false);
        MqttInstruments driver = listen(broker, version, ear)) {
      broker.publish("rig/1/probe", "30");
      ear.value("probe", 30);
      broker.kill();
      Ear.soon().until(() -> driver.line() instanceof Line.Down);
      broker.again();
      awaitUp(driver);
      hearAgain(broker, ear, "31");
    }
  }

  /// The line may be up a moment before the subscription is renewed: a kept value reaches both.
  private static void hearAgain(Mosquitto broker, Ear ear, String value) throws IOException {
    broker.publish("rig/1/probe", value, "-r");
    ear.value("probe", Double.parseDouble(value));
  }

  @ParameterizedTest
  @EnumSource(Version.class)
  void aBrokerThatStartsLateIsFound(Version version) throws IOException {
    Ear ear = new Ear();
    try (Mosquitto broker = Mosquitto.start(folder, false)) {
      broker.kill();
      try (MqttInstruments driver = listen(broker.port(), version, Optional.empty(), ear)) {
        Ear.soon()
            .until(() -> driver.line() instanceof Line.Down(_, var why) && why.contains("refused"));
        broker.again();
        awaitUp(driver);
        hearAgain(broker, ear, "32");
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Version.class)
  void aLineThatFailsAtTheNthReadStopsNothing(Version version) throws IOException {
    boolean failed = true;
    int n = 0;
    try (Mosquitto broker = Mosquitto.start(folder, false)) {
      broker.publish("rig/1/probe", "40", "-r");
      while (failed) {
        Ear ear = new Ear();
        try (Relay relay = new Relay(broker.port(), n);
            MqttInstruments driver = listen(relay.port(), version, Optional.empty(), ear)) {
          ear.value("probe", 40);
          awaitUp(driver);
          hearAgain(broker, ear, "41");
          hearAgain(broker, ear, "40");
          failed = relay.failed();
        }
        n++;
      }
    }
    assertThat(n).as("reads until nothing failed").isGreaterThan(3);
  }

  @ParameterizedTest
  @EnumSource(Version.class)
  void aLockedBrokerIsOpenedByNameAndPasswordOnly(Version version) throws IOException {
    Ear ear = new Ear();
    try (Mosquitto broker = Mosquitto.start(folder, true)) {
      try (MqttInstruments stranger =
          listen(broker.port(), version, Optional.of(new Login("brewer", "tin")), ear)) {
        Ear.soon()
            .until(
                () ->
                    stranger.line() instanceof Line.Down(_, var why)
                        && why.toUpperCase(java.util.Locale.ROOT).contains("AUTHORIZED"));
      }
      try (MqttInstruments friend =
          listen(broker.port(), version, Optional.of(new Login("brewer", "copper")), ear)) {
        awaitUp(friend);
        assertThat(friend.line()).isInstanceOf(Line.Up.class);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Version.class)
  void nothingIsEverPublished(Version version) throws IOException {
    Ear ear = new Ear();
    try (Mosquitto broker = Mosquitto.start(folder, false)) {
      try (MqttInstruments _ = listen(broker, version, ear)) {
        broker.publish("rig/1/probe", "66", "-q", "1");
        ear.value("probe", 66);
      }
      Pattern sent = Pattern.compile("Received (\\w+) from gylebook-");
      Ear.soon()
          .until(() -> String.join("\n", broker.protocol()).contains("DISCONNECT from gylebook-"));
      String log = String.join("\n", broker.protocol());
      assertThat(sent.matcher(log).results().map(found -> found.group(1)).toList())
          .contains("SUBSCRIBE", "PUBACK", "DISCONNECT")
          .isSubsetOf("CONNECT", "SUBSCRIBE", "PUBACK", "PINGREQ", "DISCONNECT");
      assertThat(log).doesNotContain("Will message specified");
    }
  }

  @Test
  void theSetUpPageSeesEverythingThatArrivesUnderAWildcard() throws IOException {
    List<MqttMessage> seen = new java.util.concurrent.CopyOnWriteArrayList<>();
    try (Mosquitto broker = Mosquitto.start(folder, false)) {
      MqttBroker at = new MqttBroker("127.0.0.1", broker.port(), Version.V5, Optional.empty());
      try (MqttSubscription all = new MqttSubscription(at, List.of("#"), CLOCK, QUICK, seen::add)) {
        awaitUp(all);
        broker.publish("cellar/air", "12.5");
        Ear.soon().until(() -> !seen.isEmpty());
        assertThat(seen.getFirst().topic()).isEqualTo("cellar/air");
        assertThat(seen.getFirst().shown()).isEqualTo("12.5");
      }
    }
  }
}
