package gylebook.device;

import gylebook.units.AnyUnit;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/// The way to an instrument.
public sealed interface Reach {
  /// It publishes to the user's broker.
  record Broker(MqttBroker broker, String topic, Payload payload) implements Reach {
    MqttTopic topic(Instrument instrument) {
      return new MqttTopic(instrument, topic, payload);
    }
  }

  /// It stands in the registers of a controller, which is asked again and again.
  @AnyUnit("the factor leads to the instrument's unit, whichever that is")
  record Controller(
      ModbusPlace place,
      int unitId,
      ModbusRegister.Table table,
      int address,
      ModbusForm form,
      double factor,
      Duration every)
      implements Reach {
    ModbusRegister register(Instrument instrument) {
      return new ModbusRegister(instrument, unitId, table, address, form, factor);
    }
  }

  /// It is a chip on this computer's own 1-Wire bus.
  record Chip(String number, Duration every) implements Reach {
    OneWireChip chip(Instrument instrument) {
      return new OneWireChip(instrument, number);
    }
  }

  /// It prints lines on a serial port or into a named pipe.
  record Printed(LinePlace place, String pattern) implements Reach {
    LineSource source(Instrument instrument) {
      return new LineSource(instrument, pattern);
    }
  }

  /// A board sends what it measured by HTTP POST, with a token of which the digest is kept.
  record Post(String tokenDigest, Payload payload) implements Reach {
    Board.Source source(Instrument instrument) {
      return new Board.Source(instrument, payload);
    }
  }

  /// A column of a table of readings, played once as if it happened now.
  ///
  /// @param paceFactor how many times faster than it happened
  record Table(Path file, String timeHeading, String heading, double paceFactor) implements Reach {
    /// Refuses a pace at which nothing is ever played.
    public Table {
      if (!(paceFactor > 0) || Double.isInfinite(paceFactor)) {
        throw new IllegalArgumentException(
            "paceFactor is " + paceFactor + "; it must be finite and above 0.");
      }
    }
  }

  /// Refuses an instrument to which this way cannot lead.
  default void fit(Instrument instrument) {
    var _ =
        switch (this) {
          case Broker to -> to.topic(instrument);
          case Controller to -> to.register(instrument);
          case Chip to -> to.chip(instrument);
          case Printed to -> to.source(instrument);
          case Post(String digest, Payload _) -> new Board("board", digest, List.of());
          case Table to -> to;
        };
  }

  /// The serial port or named pipe that it takes for itself, where it takes one.
  default Optional<String> port() {
    return switch (this) {
      case Printed(LinePlace place, String _) -> Optional.of(place.words());
      case Controller to when to.place() instanceof ModbusPlace.Serial serial ->
          Optional.of(serial.device());
      default -> Optional.empty();
    };
  }

  /// The same in words, without passwords.
  default String words() {
    return switch (this) {
      case Broker(MqttBroker broker, String topic, Payload _) ->
          "publishes '" + topic + "' to the broker at " + broker.place();
      case Controller to ->
          "register "
              + to.address()
              + " of unit "
              + to.unitId()
              + " in the controller at "
              + to.place().words();
      case Chip(String number, Duration _) -> "1-Wire chip " + number;
      case Printed(LinePlace place, String _) -> "prints lines on " + place.words();
      case Post _ -> "a board that posts here, with its token";
      case Table(Path file, String _, String heading, double _) ->
          "column '" + heading + "' of the table " + file;
    };
  }
}
