package gylebook.device;

import gylebook.units.Typed;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// A number alone, or with its unit behind it. Pure.
final class PlainText {
  /// At most nine digits before the point: longer rows are serial numbers, not measurements.
  private static final Pattern NUMBER =
      Pattern.compile("([+-]?\\d{1,9}(?:[.,]\\d{0,9})?(?:[eE][+-]?\\d{1,2})?)\\s*(\\S.*)?");

  private PlainText() {}

  static Decoded decode(Instrument instrument, String text) {
    String sent = text.strip();
    Matcher found = NUMBER.matcher(sent);
    if (sent.isEmpty()) {
      return Decoded.garbled(text, "is empty");
    }
    if (!found.matches()) {
      return Decoded.garbled(sent, "is no number");
    }
    Optional<String> unit = Optional.ofNullable(found.group(2));
    double number = Double.parseDouble(found.group(1).replace(',', '.'));
    if (unit.isEmpty()) {
      return instrument.value(number, instrument.unit(), sent, Optional.empty());
    }
    // The unit is read the way a brewer types it; the number stays what was sent.
    return switch (Typed.parse(sent.replace(',', '.'), instrument.unit())) {
      case Typed.Read(var typed) ->
          instrument.value(number, typed.unit(), Received.shown(sent), Optional.empty());
      case Typed.Unclear unclear -> Decoded.garbled(sent, unclear.what());
    };
  }
}
