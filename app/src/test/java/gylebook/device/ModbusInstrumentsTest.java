package gylebook.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.device.ModbusForm.Kind;
import gylebook.device.ModbusForm.Order;
import gylebook.device.ModbusRegister.Table;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Against a controller made of libmodbus, over TCP and over two pseudo-terminals joined by socat.
final class ModbusInstrumentsTest {
  private static final Instant MORNING = Instant.parse("2026-11-25T08:00:00Z");
  private static final Patience QUICK = new Patience(Duration.ofMillis(10), Duration.ofMillis(50));
  private static final Duration OFTEN = Duration.ofMillis(10);
  private static final Duration ANSWER = Duration.ofMillis(300);
  private static final Unit CELSIUS = Unit.known(Quantity.TEMPERATURE, "°C");

  @TempDir private Path folder;

  /// A clock that moves on at each look, so that no reading counts as a flood.
  private final AtomicInteger looks = new AtomicInteger();

  private final InstantSource clock = () -> MORNING.plusSeconds(looks.incrementAndGet());

  private static ModbusRegister register(
      String name, int unitId, Table table, int address, ModbusForm form, double factor) {
    Instrument instrument = new Instrument(name, "panel", CELSIUS);
    return new ModbusRegister(instrument, unitId, table, address, form, factor);
  }

  private static ModbusRegister whole(String name, Table table, int address) {
    return register(name, 1, table, address, ModbusForm.plain(Kind.INT16), 0.1);
  }

  private static List<ModbusRegister> everything() {
    List<ModbusRegister> registers = new ArrayList<>();
    registers.add(whole("warm", Table.HOLDING, 0));
    registers.add(whole("cold", Table.HOLDING, 1));
    registers.add(whole("air", Table.INPUT, 0));
    for (Order order : Order.values()) {
      ModbusForm form = new ModbusForm(Kind.FLOAT32, order);
      registers.add(register(order.name(), 1, Table.HOLDING, 2 + 2 * order.ordinal(), form, 1));
    }
    return registers;
  }

  private static void hearEverything(Ear ear) {
    ear.value("warm", 66.3);
    ear.value("cold", -10);
    ear.value("air", 21.5);
    for (Order order : Order.values()) {
      ear.value(order.name(), 66.3);
    }
  }

  private static ModbusPlace tcp(int port) {
    return new ModbusPlace.Tcp("127.0.0.1", port, ANSWER);
  }

  private static ModbusPlace serial(Path device) {
    return new ModbusPlace.Serial(device.toString(), 9600, ModbusPlace.Parity.NONE, 1, ANSWER);
  }

  private ModbusInstruments listen(ModbusPlace place, List<ModbusRegister> registers, Ear ear) {
    return new ModbusInstruments(place, registers, OFTEN, clock, QUICK, ear);
  }

  private static void onlyReads(Other controller) throws IOException {
    assertThat(controller.said())
        .contains("function 3", "function 4")
        .isSubsetOf("ready", "function 3", "function 4");
  }

  @Test
  void aControllerOnTheNetworkIsReadInEveryByteOrder() throws IOException {
    int port = Mosquitto.freePort();
    Ear ear = new Ear();
    try (Other controller = Other.controller(folder, "tcp", "" + port);
        ModbusInstruments driver = listen(tcp(port), everything(), ear)) {
      hearEverything(ear);
      Ear.soon().until(() -> driver.line() instanceof Line.Up);
      onlyReads(controller);
    }
  }

  @Test
  void aControllerOnASerialLineIsReadInEveryByteOrder() throws IOException {
    Path ours = folder.resolve("ours");
    Path theirs = folder.resolve("theirs");
    Ear ear = new Ear();
    try (Other _ = Other.cable(folder, ours, theirs);
        Other controller = Other.controller(folder, "rtu", theirs.toString());
        ModbusInstruments driver = listen(serial(ours), everything(), ear)) {
      hearEverything(ear);
      Ear.soon().until(() -> driver.line() instanceof Line.Up);
      onlyReads(controller);
    }
  }

  /// A refused register and a controller that does not answer hold up nobody else.
  private void oneRefusesOneIsSilent(ModbusPlace place) {
    Ear ear = new Ear();
    List<ModbusRegister> registers =
        List.of(
            whole("missing", Table.HOLDING, 100),
            register("silent", 9, Table.HOLDING, 0, ModbusForm.plain(Kind.INT16), 0.1),
            whole("warm", Table.HOLDING, 0));
    try (ModbusInstruments driver = listen(place, registers, ear)) {
      ear.value("warm", 66.3);
      assertThat(ear.garbled("missing").why()).contains("does not give this register");
      Ear.soon().until(() -> driver.line() instanceof Line.Up);
      assertThat(ear.has(one -> one.instrumentId().equals("silent"))).isFalse();
    }
  }

  @Test
  void aRefusedRegisterAndASilentUnitOnTheNetworkHoldUpNobody() throws IOException {
    int port = Mosquitto.freePort();
    try (Other controller = Other.controller(folder, "tcp", "" + port)) {
      oneRefusesOneIsSilent(tcp(port));
      assertThat(controller.said()).doesNotContain("function 6", "function 16");
    }
  }

  @Test
  void aRefusedRegisterAndASilentUnitOnASerialLineHoldUpNobody() throws IOException {
    Path ours = folder.resolve("ours");
    Path theirs = folder.resolve("theirs");
    try (Other _ = Other.cable(folder, ours, theirs);
        Other controller = Other.controller(folder, "rtu", theirs.toString())) {
      oneRefusesOneIsSilent(serial(ours));
      assertThat(controller.said()).doesNotContain("function 6", "function 16");
    }
  }

  @Test
  void aNetworkThatFailsAtTheNthReadStopsNothing() throws IOException {
    int port = Mosquitto.freePort();
    try (Other _ = Other.controller(folder, "tcp", "" + port)) {
      for (int n = 0; n < 6; n++) {
        Ear ear = new Ear();
        try (Relay relay = new Relay(port, n);
            ModbusInstruments driver = listen(tcp(relay.port()), everything(), ear)) {
          Ear.soon().until(relay::failed);
          int before = ear.heard.size();
          Ear.soon().until(() -> ear.heard.size() > before + 14);
          Ear.soon().until(() -> driver.line() instanceof Line.Up);
          hearEverything(ear);
          functions(relay.asked()).forEach(code -> assertThat(code).isIn(3, 4));
        }
      }
    }
  }

  /// The function codes in a row of Modbus TCP requests: a header of seven bytes, whose fifth and
  /// sixth are the length from there on (less six), then the code.
  private static List<Integer> functions(byte[] asked) {
    List<Integer> codes = new ArrayList<>();
    for (int at = 0; at + 8 <= asked.length; at += 6 + asked[at + 5]) {
      codes.add((int) asked[at + 7]);
    }
    assertThat(codes).isNotEmpty();
    return codes;
  }

  /// The controller answers for the register 12 after 500 ms, when nobody waits any more. Its 99.9
  /// must not pass for the value of the register that is asked next.
  private void aLateAnswerIsNobodyElses(ModbusPlace place) {
    Ear ear = new Ear();
    List<ModbusRegister> registers =
        List.of(whole("late", Table.HOLDING, 12), whole("warm", Table.HOLDING, 0));
    try (ModbusInstruments _ = listen(place, registers, ear)) {
      Ear.soon().until(() -> ear.heard.size() >= 3);
    }
    assertThat(ear.heard)
        .allSatisfy(
            one -> {
              assertThat(one.instrumentId()).isEqualTo("warm");
              assertThat(Ear.inside(one)).isCloseTo(66.3, within(1e-9));
            });
  }

  @Test
  void aLateAnswerOnASerialLineIsNotTakenForTheNextRegisters() throws IOException {
    Path ours = folder.resolve("ours");
    Path theirs = folder.resolve("theirs");
    try (Other _ = Other.cable(folder, ours, theirs);
        Other _ = Other.controller(folder, "rtu", theirs.toString())) {
      aLateAnswerIsNobodyElses(serial(ours));
    }
  }

  @Test
  void aLateAnswerOnTheNetworkIsNotTakenForTheNextRegisters() throws IOException {
    int port = Mosquitto.freePort();
    try (Other _ = Other.controller(folder, "tcp", "" + port)) {
      aLateAnswerIsNobodyElses(tcp(port));
    }
  }

  @Test
  void anAnswerWithAnotherTransactionNumberIsPassedOver() throws IOException {
    Ear ear = new Ear();
    try (StalePeer peer = new StalePeer();
        ModbusInstruments _ =
            listen(tcp(peer.port()), List.of(whole("warm", Table.HOLDING, 0)), ear)) {
      Ear.soon().until(() -> ear.heard.size() >= 3);
    }
    assertThat(ear.heard)
        .allSatisfy(one -> assertThat(Ear.inside(one)).isCloseTo(66.3, within(1e-9)));
  }

  @Test
  void whatFollowsABrokenAnswerOnASerialLineIsNotTakenForTheNext() throws Exception {
    Path ours = folder.resolve("ours");
    Path theirs = folder.resolve("theirs");
    Ear ear = new Ear();
    try (Other _ = Other.cable(folder, ours, theirs);
        GarbledPeer _ = new GarbledPeer(theirs);
        ModbusInstruments _ = listen(serial(ours), List.of(whole("warm", Table.HOLDING, 0)), ear)) {
      assertThat(ear.garbled("warm").why()).isEqualTo("came with a wrong check sum");
      Ear.soon().until(() -> ear.heard.size() >= 4);
    }
    assertThat(ear.heard.subList(1, 4))
        .allSatisfy(one -> assertThat(Ear.inside(one)).isCloseTo(66.3, within(1e-9)));
  }

  /// A controller that serves one at a time would be shut for everybody by a line left open.
  @Test
  void whoeverIsClosedAtWhateverMomentLeavesNoLineOpen() throws IOException {
    try (OpenLines lines = new OpenLines()) {
      for (int i = 0; i < 40; i++) {
        int before = lines.begun();
        int stage = i % 3;
        try (ModbusInstruments _ = listen(tcp(lines.port()), everything(), new Ear())) {
          Ear.soon().until(() -> stage == 0 || lines.begun() > before);
          Ear.soon().until(() -> stage < 2 || lines.asked());
        }
      }
      Ear.soon().until(() -> lines.open() == 0);
      assertThat(lines.begun()).isGreaterThan(20);
    }
  }

  /// A port that fails once, at the n-th read of a round that has two.
  private record FaultyPort(ModbusPort real, AtomicInteger reads, int n) implements ModbusPort {
    @Override
    public byte[] read(ModbusRegister register) throws IOException {
      if (reads.getAndIncrement() == n) {
        throw new IOException("pulled");
      }
      return real.read(register);
    }

    @Override
    public void close() {
      real.close();
    }
  }

  @Test
  void aSerialLineThatFailsAtTheNthReadStopsNothing() throws IOException {
    Path ours = folder.resolve("ours");
    Path theirs = folder.resolve("theirs");
    try (Other _ = Other.cable(folder, ours, theirs);
        Other _ = Other.controller(folder, "rtu", theirs.toString())) {
      for (int n = 0; n < 3; n++) {
        AtomicInteger reads = new AtomicInteger();
        int failAt = n;
        Ear ear = new Ear();
        try (ModbusInstruments driver =
            new ModbusInstruments(
                () -> new FaultyPort(ModbusWire.open(serial(ours)), reads, failAt),
                "faulty",
                List.of(whole("warm", Table.HOLDING, 0), whole("air", Table.INPUT, 0)),
                OFTEN,
                QUICK,
                new Watch(clock, ear))) {
          Ear.soon().until(() -> reads.get() > failAt + 4);
          ear.value("warm", 66.3);
          ear.value("air", 21.5);
          assertThat(ear.heard).allMatch(one -> one.decoded() instanceof Decoded.Value);
          Ear.soon().until(() -> driver.line() instanceof Line.Up);
        }
      }
    }
  }

  @Test
  void aControllerThatIsNotThereIsSaidToBeAwayAndFoundWhenItComes() throws IOException {
    int port = Mosquitto.freePort();
    Ear ear = new Ear();
    try (ModbusInstruments driver = listen(tcp(port), everything(), ear)) {
      Ear.soon()
          .until(() -> driver.line() instanceof Line.Down(_, var why) && why.contains("refused"));
      try (Other _ = Other.controller(folder, "tcp", "" + port)) {
        hearEverything(ear);
      }
      Ear.soon().until(() -> driver.line() instanceof Line.Down);
      assertThat(driver.line()).isInstanceOf(Line.Down.class);
    }
  }

  @Test
  void aSerialPortThatIsNotThereIsSaidToBeAway() {
    Ear ear = new Ear();
    Path nowhere = folder.resolve("no-such-port");
    try (ModbusInstruments driver = listen(serial(nowhere), everything(), ear)) {
      Ear.soon()
          .until(
              () -> driver.line() instanceof Line.Down(_, var why) && why.contains("no-such-port"));
      assertThat(ear.heard).isEmpty();
    }
  }

  @Test
  void theSetUpPageFindsTheByteOrderFromWhatTheControllerShows() throws IOException {
    int port = Mosquitto.freePort();
    try (Other _ = Other.controller(folder, "tcp", "" + port)) {
      for (Order order : Order.values()) {
        ModbusForm any = ModbusForm.plain(Kind.FLOAT32);
        int address = 2 + 2 * order.ordinal();
        byte[] bytes =
            ModbusInstruments.once(
                tcp(port), register("unknown", 1, Table.HOLDING, address, any, 1));
        assertThat(ModbusForm.fitting(bytes, "66.3"))
            .extracting(fit -> fit.form().order())
            .containsExactly(order);
      }
    }
  }
}
