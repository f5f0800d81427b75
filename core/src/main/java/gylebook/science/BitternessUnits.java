package gylebook.science;

/// Bitterness units, a definition by absorbance: not the same as milligrams of iso-alpha acid.
///
/// The two agree only for beer hopped in the boil with aged hops, as it was common when the unit
/// was made. Report them as two numbers.
public final class BitternessUnits {
  private static final double PER_ABSORBANCE_NUMBER = 50;

  private BitternessUnits() {}

  /// Bitterness units of an acidified iso-octane extract, 1 cm at 275 nm.
  @Source(key = "asbc-beer23", at = "method A; EBC 9.8", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "bitterness-units",
      says = "Bitterness units from the absorbance of an iso-octane extract.",
      equation = "BU = 50 A275",
      range = "1 cm path, acidified beer extracted by iso-octane")
  public static double unitsNumber(double absorbance275Number) {
    return PER_ABSORBANCE_NUMBER * Require.notBelow0("absorbance at 275 nm", absorbance275Number);
  }
}
