package gylebook.device;

import gylebook.units.Quantity;

/// A digital thermometer on the computer's own 1-Wire bus, by its number: `28-0416c2f4a1ff`.
public record OneWireChip(Instrument instrument, String number) {
  /// Refuses what is no number of a chip, and instruments that are no thermometers.
  public OneWireChip {
    if (!number.matches("[0-9a-f]{2}-[0-9a-f]{12}")) {
      throw new IllegalArgumentException(
          "number is '" + number + "'; it must be two and twelve digits 0-9a-f: 28-0416c2f4a1ff.");
    }
    if (instrument.unit().quantity() != Quantity.TEMPERATURE) {
      throw new IllegalArgumentException(
          "instrument measures "
              + instrument.unit().quantity().words()
              + "; it must be temperature.");
    }
  }
}
