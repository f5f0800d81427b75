package gylebook.science;

/// Plato from specific gravity in forms short enough for the head.
public final class ShortPlatoScale {
  private ShortPlatoScale() {}

  /// Extract by a product of two lines.
  ///
  /// `P = (463 - 205 S) (S - 1)`
  ///
  /// - Valid: SG 0.98 to 1.083, within 0.02 P of the cubic; outside it refuses.
  /// - Source: printed beside the cubic of the American Society of Brewing Chemists.
  @Reckoned(
      name = "plato-short-form",
      says = "How strong wort is in Plato, by a short form.",
      equation = "P = (463 - 205 S) (S - 1)",
      range = "SG 0.98 to 1.083, within 0.02 P of the cubic; refused outside")
  @Source(key = "asbc-tables", at = "short form beside the cubic", trust = Trust.READ)
  public static double extractPlato(double gravitySg) {
    Require.within("gravity as a gravity", gravitySg, 0.98, 1.083);
    return (463 - 205 * gravitySg) * (gravitySg - 1);
  }

  /// Extract as if every gram of sugar took up the same room.
  ///
  /// `P = 260.4 (1 - 1/S)`
  ///
  /// - Valid: SG 0.98 to 1.083 (0.023 P root mean square as stated); outside it refuses.
  /// - Source: Buhl 2024, a preprint.
  @Reckoned(
      name = "plato-one-constant",
      says = "How strong wort is in Plato, by a form with one constant.",
      equation = "P = 260.4 (1 - 1/S)",
      range = "SG 0.98 to 1.083, about 0.023 P root mean square; refused outside")
  @Source(key = "buhl-2024", trust = Trust.READ)
  public static double oneConstantPlato(double gravitySg) {
    Require.within("gravity as a gravity", gravitySg, 0.98, 1.083);
    return 260.4 * (1 - 1 / gravitySg);
  }
}
