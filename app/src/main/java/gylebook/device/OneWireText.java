package gylebook.device;

import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// What the kernel writes of a thermometer chip: two lines of nine bytes each, the first ending in
/// the verdict on the check sum, the second in thousandths of a degree. Pure.
///
/// Form as in the kernel's own description of its `w1_therm` driver.
final class OneWireText {
  private static final Pattern NINE_BYTES =
      Pattern.compile(
          "((?:[0-9a-f]{2} ){9}): crc=[0-9a-f]{2} (YES|NO)\\s+"
              + "(?:[0-9a-f]{2} ){9}t=(-?\\d{1,6})\\s*");
  private static final Unit CELSIUS = Unit.known(Quantity.TEMPERATURE, "°C");

  private OneWireText() {}

  static Decoded decode(Instrument instrument, String text) {
    Matcher found = NINE_BYTES.matcher(text);
    if (text.isBlank()) {
      return Decoded.garbled(text, "is empty");
    }
    if (!found.matches()) {
      return Decoded.garbled(text.strip(), "is not what the kernel writes of a thermometer");
    }
    if (found.group(2).equals("NO")) {
      return Decoded.garbled(text.strip(), "has a wrong check sum: a bad contact or a long cable");
    }
    // Nine zeros have a right check sum, and are what a bus pulled to ground says.
    if (found.group(1).matches("(00 ){9}")) {
      return Decoded.garbled(text.strip(), "is all zeros: the bus is shorted or has no power");
    }
    double readC = Integer.parseInt(found.group(3)) / 1000.0;
    return instrument.value(readC, CELSIUS, "t=" + found.group(3), Optional.empty());
  }
}
