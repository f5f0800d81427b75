package gylebook.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// Against a tree of files like the kernel's. The form of the text is that of the kernel's
/// documentation (`w1_therm`); 0x0191 sixteenths are 25.0625 °C (from memory of the chip's sheet).
final class OneWireInstrumentsTest {
  private static final Patience QUICK = new Patience(Duration.ofMillis(10), Duration.ofMillis(50));
  private static final Duration OFTEN = Duration.ofMillis(10);
  private static final Unit CELSIUS = Unit.known(Quantity.TEMPERATURE, "°C");
  private static final Instrument PROBE = new Instrument("probe", "suction", CELSIUS);
  private static final Instrument OTHER = new Instrument("other", "cellar", CELSIUS);
  private static final OneWireChip CHIP = new OneWireChip(PROBE, "28-0416c2f4a1ff");
  private static final OneWireChip SECOND = new OneWireChip(OTHER, "28-0000000000aa");

  @TempDir private Path root;

  private final AtomicInteger looks = new AtomicInteger();
  private final InstantSource clock =
      () -> Instant.parse("2026-11-25T08:00:00Z").plusSeconds(looks.incrementAndGet());

  private static String text(String verdict, int thousandths) {
    String bytes = "91 01 4b 46 7f ff 0f 10 25 ";
    return bytes + ": crc=25 " + verdict + "\n" + bytes + "t=" + thousandths + "\n";
  }

  private void write(OneWireChip chip, String text) throws IOException {
    Path folder = Files.createDirectories(root.resolve(chip.number()));
    Path fresh = Files.writeString(folder.resolve("fresh"), text);
    Files.move(
        fresh,
        folder.resolve("w1_slave"),
        java.nio.file.StandardCopyOption.ATOMIC_MOVE,
        java.nio.file.StandardCopyOption.REPLACE_EXISTING);
  }

  private OneWireInstruments listen(Ear ear, OneWireChip... chips) {
    return new OneWireInstruments(root, List.of(chips), OFTEN, clock, QUICK, ear);
  }

  private static Decoded.Garbled garbled(String text) {
    Decoded decoded = OneWireText.decode(PROBE, text);
    assertThat(decoded).isInstanceOf(Decoded.Garbled.class);
    return (Decoded.Garbled) decoded;
  }

  /// The kernel's description of its driver: 23125 thousandths are 23.125 degrees.
  @Test
  void thousandthsAreDegrees() {
    assertThat(((Decoded.Value) OneWireText.decode(PROBE, text("YES", 23125))).amount().inside())
        .isEqualTo(23.125);
  }

  @Test
  void aChipIsReadAndItsTextIsKept() throws IOException {
    Ear ear = new Ear();
    write(CHIP, text("YES", 25062));
    try (OneWireInstruments driver = listen(ear, CHIP)) {
      Heard heard = ear.value("probe", 25.062);
      assertThat(((Decoded.Value) heard.decoded()).amount().asTyped()).isEqualTo("t=25062");
      Ear.soon().until(() -> driver.line() instanceof Line.Up);
      write(CHIP, text("YES", -10125));
      ear.value("probe", -10.125);
    }
  }

  @Test
  void aBadContactIsSaidAndTheNextReadingIsHeard() throws IOException {
    Ear ear = new Ear();
    write(CHIP, text("NO", 25062));
    try (OneWireInstruments _ = listen(ear, CHIP)) {
      assertThat(ear.garbled("probe").why()).contains("wrong check sum");
      write(CHIP, text("YES", 66300));
      ear.value("probe", 66.3);
    }
  }

  @Test
  void aChipThatStartsAnewSaysEightyFiveAndIsMarked() throws IOException {
    Ear ear = new Ear();
    write(CHIP, text("YES", 20000));
    try (OneWireInstruments _ = listen(ear, CHIP)) {
      ear.value("probe", 20);
      write(CHIP, text("YES", 85000));
      assertThat(ear.value("probe", 85).oddities()).containsExactly(Oddity.POWER_ON_VALUE);
      write(CHIP, text("YES", 20062));
      assertThat(ear.value("probe", 20.062).oddities()).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "\n", "t=25062", "garbage", "91 01 4b 46 7f ff 0f 10 25 : crc=25 YES"})
  void whatTheKernelDoesNotWriteIsGarbled(String text) {
    assertThat(garbled(text).why()).isNotBlank();
  }

  @Test
  void aShortedBusAndAValueOfNoKettleAreGarbled() {
    String zeros = "00 00 00 00 00 00 00 00 00 ";
    assertThat(garbled(zeros + ": crc=00 YES\n" + zeros + "t=0\n").why()).contains("all zeros");
    assertThat(garbled(text("YES", -127000)).why()).contains("outside what this instrument");
  }

  @Test
  void aChipThatIsPulledOutIsAwayAndTheOtherGoesOn() throws IOException {
    Ear ear = new Ear();
    write(CHIP, text("YES", 30000));
    write(SECOND, text("YES", 12000));
    try (OneWireInstruments driver = listen(ear, CHIP, SECOND)) {
      ear.value("probe", 30);
      Files.delete(root.resolve(CHIP.number()).resolve("w1_slave"));
      Ear.soon()
          .until(
              () ->
                  driver.line() instanceof Line.Down(_, var why)
                      && why.equals("28-0416c2f4a1ff: not on the bus"));
      write(SECOND, text("YES", 12500));
      assertThat(ear.value("other", 12.5).oddities()).isEmpty();
      write(CHIP, text("YES", 31000));
      assertThat(ear.value("probe", 31).oddities()).isEmpty();
    }
  }

  /// A named pipe nobody writes to is a conversion that never ends.
  @Test
  void aReadingThatHangsIsGivenUpAndNoneIsBegunBesideIt() throws Exception {
    Path folder = Files.createDirectories(root.resolve(CHIP.number()));
    Path pipe = folder.resolve("w1_slave");
    Other.run(root, "mkfifo", pipe.toString());
    var port = new OneWireInstruments.Files1Wire(root, Duration.ofMillis(50));
    assertThatThrownBy(() -> port.read(CHIP)).hasMessageContaining("no answer within");
    assertThatThrownBy(() -> port.read(CHIP)).hasMessageContaining("still no answer");
    Files.writeString(pipe, text("YES", 1000));
    write(CHIP, text("YES", 40000));
    Ear.soon().ignoreExceptions().until(() -> port.read(CHIP).contains("t=40000"));
    assertThat(port.read(CHIP)).contains("t=40000");
  }

  @Test
  void aBusThatFailsAtTheNthReadStopsNothing() throws IOException {
    for (int n = 0; n < 6; n++) {
      int failAt = n;
      AtomicInteger reads = new AtomicInteger();
      write(CHIP, text("YES", 50000));
      Ear ear = new Ear();
      var real = new OneWireInstruments.Files1Wire(root, Duration.ofSeconds(8));
      OneWireInstruments.Port faulty =
          chip -> {
            if (reads.getAndIncrement() == failAt) {
              throw new IOException("pulled");
            }
            return real.read(chip);
          };
      try (OneWireInstruments driver =
          new OneWireInstruments(faulty, List.of(CHIP), OFTEN, QUICK, new Watch(clock, ear))) {
        Ear.soon().until(() -> reads.get() > failAt + 3);
        Ear.soon().until(() -> driver.line() instanceof Line.Up);
        ear.value("probe", 50);
        assertThat(ear.heard).hasSizeGreaterThanOrEqualTo(failAt + 2);
      }
    }
  }

  @Test
  void theSetUpPageSeesTheChipsOnTheBus() throws IOException {
    write(CHIP, text("YES", 1));
    write(SECOND, text("YES", 1));
    Files.createDirectories(root.resolve("w1_bus_master1"));
    assertThat(OneWireInstruments.found(root)).containsExactly(SECOND.number(), CHIP.number());
    assertThat(OneWireInstruments.found(root.resolve("nowhere"))).isEmpty();
  }

  @Test
  void aNumberThatCouldLeadOutOfTheFolderIsRefused() {
    assertThatThrownBy(() -> new OneWireChip(PROBE, "../../etc/passwd"))
        .hasMessageContaining("number is");
  }
}
