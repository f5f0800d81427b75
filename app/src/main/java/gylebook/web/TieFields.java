package gylebook.web;

import java.util.List;
import java.util.Optional;

/// The forms in which an instrument is tied, one for each way to reach it: what is asked, in the
/// brewer's words. The names of the fields are those of the document that the book keeps.
///
/// @param kind its name in the document
/// @param words what the brewer chooses it by
/// @param says what one should know first
/// @param canLook whether there is something to look at before it is tied
record TieFields(String kind, String words, String says, boolean canLook, List<Field> fields) {

  private static final TieFields BROKER =
      new TieFields(
          "broker",
          "Publishes to your MQTT broker",
          "Gylebook only listens; it publishes nothing. Name and password go over the network and stand"
              + " in the book's file as they are: use a login that may do no more than read.",
          true,
          List.of(
              Field.needed("host", "Address of the broker", "192.168.1.20"),
              Field.usual("port", "Port", "1883"),
              Field.choice("version", "Version of the protocol", "5|5", "3.1.1|3.1.1"),
              Field.maybe("user", "Login name, if it asks for one", ""),
              Field.secret("password", "Password"),
              Field.needed(
                  "topic", "Topic (leave it empty to look at all)", "brewery/kettle/probe"),
              payload(),
              at()));

  private static final TieFields CONTROLLER =
      new TieFields(
          "controller",
          "Stands in a register of a controller (Modbus TCP or RTU)",
          "Gylebook reads registers and never writes one. The controller's own papers say which"
              + " register; makers count from 0 or from 1, so try the number before and after as well.",
          true,
          List.of(
              Field.maybe("host", "On the network: its address", "192.168.1.30"),
              Field.usual("port", "Port", "502"),
              Field.maybe("device", "Or on a serial line: its device", "/dev/ttyUSB0"),
              Field.usual("baud", "Speed of the serial line", "9600"),
              Field.choice("parity", "Check bit", "none|none", "even|even", "odd|odd"),
              Field.choice("stopBits", "Stop bits", "1|1", "2|2"),
              Field.usual("answerMs", "An answer may take, in milliseconds", "1000"),
              Field.usual("unitId", "Number of the controller on its line", "1"),
              Field.choice("table", "Table", "holding|holding registers", "input|input registers"),
              Field.usual("address", "Register, counted from 0", "0"),
              Field.maybe("shown", "What the controller shows just now", "66.3"),
              Field.choice(
                  "numberKind",
                  "Kind of number",
                  "int16|whole, 1 register",
                  "uint16|whole without sign, 1 register",
                  "int32|whole, 2 registers",
                  "uint32|whole without sign, 2 registers",
                  "float32|with a point, 2 registers"),
              Field.choice(
                  "order",
                  "Order of its bytes",
                  "abcd|ABCD",
                  "cdab|CDAB",
                  "badc|BADC",
                  "dcba|DCBA"),
              Field.usual("factor", "Times this is the value", "1"),
              every()));

  private static final TieFields CHIP =
      new TieFields(
          "chip",
          "A 1-Wire chip on this computer",
          "The kernel keeps a file for each chip on its 1-Wire bus; Gylebook reads it.",
          true,
          List.of(Field.needed("number", "Number of the chip", "28-0416c2f4a1ff"), every()));

  private static final TieFields LINE =
      new TieFields(
          "line",
          "Prints lines on a serial port or into a named pipe",
          "Gylebook reads and writes nothing. Some boards start anew when their port is opened.",
          true,
          List.of(
              Field.needed("device", "Device or path", "/dev/ttyACM0"),
              Field.maybe("baud", "Speed; empty for a named pipe", "9600"),
              Field.maybe(
                  "pattern",
                  "If a line holds more than the number: a regular expression with (?<value>...)",
                  "T1=(?<value>[^;]*);.*")));

  private static final TieFields POST =
      new TieFields(
          "post",
          "A board that sends by HTTP",
          "It posts to /api/readings with a token of its own. The token opens nothing else, and it is"
              + " shown once.",
          false,
          List.of(payload(), at()));

  private static final TieFields TABLE =
      new TieFields(
          "table",
          "A table of readings (CSV), played as if it happened now",
          "For practice and for looking back. It is played once each time Gylebook starts.",
          false,
          List.of(
              Field.needed("file", "Path of the file on this computer", "/home/me/day.csv"),
              Field.usual("time", "Heading of the column with the time", "time"),
              Field.needed("column", "Heading of the column with the values", "kettle"),
              Field.usual("pace", "Times faster than it happened", "1")));

  /// One thing that is asked.
  ///
  /// @param name its name in the document
  /// @param label what is asked
  /// @param usual what stands in it at first
  /// @param like an example, shown while it is empty
  /// @param choices value and words of each, parted by a bar; none where it is typed
  record Field(
      String name,
      String label,
      String usual,
      String like,
      boolean needed,
      boolean secret,
      List<String> choices) {
    static Field needed(String name, String label, String like) {
      return new Field(name, label, "", like, true, false, List.of());
    }

    static Field maybe(String name, String label, String like) {
      return new Field(name, label, "", like, false, false, List.of());
    }

    static Field usual(String name, String label, String usual) {
      return new Field(name, label, usual, "", false, false, List.of());
    }

    static Field secret(String name, String label) {
      return new Field(name, label, "", "", false, true, List.of());
    }

    static Field choice(String name, String label, String... choices) {
      return new Field(name, label, "", "", false, false, List.of(choices));
    }
  }

  static final List<TieFields> ALL = List.of(BROKER, CONTROLLER, CHIP, LINE, POST, TABLE);

  /// Keeps its own copy.
  TieFields {
    fields = List.copyOf(fields);
  }

  private static Field every() {
    return Field.usual("everySec", "Ask every so many seconds", "5");
  }

  private static Field payload() {
    return Field.choice(
        "payload",
        "What it sends",
        "plain|the number alone, with or without a unit",
        "senml|SenML (RFC 8428)",
        "json|other JSON");
  }

  private static Field at() {
    return Field.maybe(
        "at",
        "For SenML the full name of the record; for JSON the way to the number",
        "/temperature");
  }

  static Optional<TieFields> of(String kind) {
    return ALL.stream().filter(one -> one.kind.equals(kind)).findFirst();
  }
}
