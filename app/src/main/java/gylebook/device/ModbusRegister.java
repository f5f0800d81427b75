package gylebook.device;

import gylebook.units.AnyUnit;

/// An instrument inside a controller: which register, and how the number stands in it.
///
/// @param unitId the controller's address on its line, 0 to 255
/// @param table which of the two readable tables
/// @param address as it goes over the wire: the printed register number less one (40001 is 0)
/// @param form what kind of number it is, with the order of its bytes
/// @param factor the number times this is in the instrument's unit: 0.1 for 663 that means 66.3
@AnyUnit("the factor leads to the instrument's unit, whichever that is")
public record ModbusRegister(
    Instrument instrument, int unitId, Table table, int address, ModbusForm form, double factor) {

  /// The two tables one can read numbers from.
  public enum Table {
    /// Function code 3.
    HOLDING,
    /// Function code 4.
    INPUT
  }

  /// Refuses an address no controller has.
  public ModbusRegister {
    if (unitId < 0 || unitId > 255) {
      throw new IllegalArgumentException("unitId is " + unitId + "; it must lie in 0 to 255.");
    }
    if (address < 0 || address + form.registers() > 65_536) {
      throw new IllegalArgumentException("address is " + address + "; it must lie in 0 to 65535.");
    }
    if (!(Math.abs(factor) > 0) || Double.isInfinite(factor)) {
      throw new IllegalArgumentException("factor is " + factor + "; it must be finite, not 0.");
    }
  }
}
