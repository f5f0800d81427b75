package gylebook.device;

import java.io.IOException;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/// Asks a controller again and again what its registers hold. Asks; never tells.
public final class ModbusInstruments implements Listening {
  private final List<ModbusRegister> registers;
  private final ModbusPort.Opener opener;
  private final Watch watch;
  private final Rounds rounds;
  private Optional<ModbusPort> port = Optional.empty();

  /// Begins to ask at once; a controller that is not there yet is tried again and again.
  public ModbusInstruments(
      ModbusPlace place,
      List<ModbusRegister> registers,
      Duration every,
      InstantSource clock,
      Patience patience,
      Consumer<Heard> ear) {
    this(
        () -> ModbusWire.open(place), place.words(), registers, every, patience, watch(clock, ear));
  }

  ModbusInstruments(
      ModbusPort.Opener opener,
      String name,
      List<ModbusRegister> registers,
      Duration every,
      Patience patience,
      Watch watch) {
    this.registers = List.copyOf(registers);
    this.opener = opener;
    this.watch = watch;
    this.rounds = new Rounds("modbus-" + name, every, patience, watch::now, this::round);
    rounds.start();
  }

  private static Watch watch(InstantSource clock, Consumer<Heard> ear) {
    return new Watch(clock, ear);
  }

  /// Reads registers once, for the set-up page to compare with what the controller shows.
  public static byte[] once(ModbusPlace place, ModbusRegister register) throws IOException {
    try (ModbusPort port = ModbusWire.open(place)) {
      return port.read(register);
    }
  }

  /// Every register once. Fails when the line cannot be opened or nobody answers at all.
  private void round() throws IOException, InterruptedException {
    Optional<IOException> silence = Optional.empty();
    boolean answered = registers.isEmpty();
    for (ModbusRegister register : registers) {
      ModbusPort open = port.isPresent() ? port.get() : opener.open();
      port = Optional.of(open);
      try {
        watch.hear(register.instrument(), ModbusForm.decode(register, open.read(register)));
        answered = true;
      } catch (ModbusPort.Unusable unusable) {
        watch.hear(
            register.instrument(),
            Decoded.garbled("the answer", String.valueOf(unusable.getMessage())));
        answered = true;
        if (!unusable.sound()) {
          hangUp();
        }
      } catch (IOException failed) {
        // The answer may still come, and would pass for the next one: the line is opened afresh,
        // which on a serial line begins with waiting until nothing comes any more.
        hangUp();
        if (Thread.interrupted()) {
          throw new InterruptedException("closed");
        }
        silence = Optional.of(failed);
      }
    }
    if (!answered && silence.isPresent()) {
      throw silence.get();
    }
  }

  private void hangUp() {
    port.ifPresent(ModbusPort::close);
    port = Optional.empty();
  }

  @Override
  public Line line() {
    return rounds.line();
  }

  @Override
  public void close() {
    rounds.close();
    hangUp();
  }
}
