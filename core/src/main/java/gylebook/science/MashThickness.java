package gylebook.science;

/// A thin mash acts like a hotter one: the same enzymes, less protected, die sooner.
///
/// Two accounts disagree on how much, so both ends are answered. Muller 1991 found that thinning
/// acts like heating; his beta-amylase lived about twice as long at 2.5 L/kg as in a remembered
/// study of thinner mashes. If the enzyme's death went with the liquor in proportion, the shift
/// would be the most given here. Other brewers see no difference at all (common practice, no
/// source): the least. The middle takes half the power and is **our assumption**. All of it is
/// smaller than the difference from malt to malt until the mash is very thin.
public final class MashThickness {
  /// The thickness at which the attenuation curve was measured.
  static final double REFERENCE_KG_PER_KG = 3;

  private static final double MIDDLE_POWER_NUMBER = 0.5;

  /// From a stiff infusion mash to a full-volume bag.
  public static final Validity RANGE =
      new Validity(
          "liquor to grist in kg/kg",
          2,
          8,
          "nobody whose figures are used here mashed so thick or so thin; the law goes on");

  private MashThickness() {}

  /// What the thickness is worth, as heat and as attenuation limit after an hour.
  ///
  /// @param leastK kelvin that it acts hotter, if thickness does not matter: 0
  /// @param middleK the same in the middle of the two accounts
  /// @param mostK the same if the enzyme dies in proportion to the liquor
  /// @param leastLimitFrac attenuation limit with the most shift
  /// @param middleLimitFrac with the middle one
  /// @param mostLimitFrac without any
  public record Shift(
      double leastK,
      double middleK,
      double mostK,
      double leastLimitFrac,
      double middleLimitFrac,
      double mostLimitFrac) {}

  /// How much hotter a mash acts than it is, by its thickness.
  ///
  /// `1/T' = 1/T - n (R/E) ln(r/3)`, n = 0, 0.5 and 1; the attenuation limit is read at `T'`
  ///
  /// - Valid: 2 to 8 kg/kg, 62 to 80 C; a mash thicker than 3 kg/kg acts cooler. Refused outside
  ///   0.5 to 30 kg/kg.
  @Source(key = "muller1991", at = "a thin mash acts like a hotter one", trust = Trust.READ)
  @Source(key = "brandam2003", at = "activation energy", trust = Trust.MEMORY)
  @Source(key = "wray2014", at = "four points at 3:1", trust = Trust.READ)
  @Reckoned(
      name = "mash-thickness",
      says = "How much hotter does a thin mash act, and what does that do to the attenuation?",
      equation = "1/T' = 1/T - n (R/E) ln(r/3), n = 0, 0.5 and 1; limit = A(T')",
      range = "2 to 8 kg/kg, 62 to 80 C; two accounts disagree, both ends are given")
  public static Shift shift(double mashC, double liquorKgPerKg) {
    Require.within("mash temperature in C", mashC, 0, 100);
    Require.within("liquor to grist in kg/kg", liquorKgPerKg, 0.5, 30);
    double middle = hotterK(mashC, liquorKgPerKg, MIDDLE_POWER_NUMBER);
    double most = hotterK(mashC, liquorKgPerKg, 1);
    return new Shift(
        0,
        middle,
        most,
        Attenuation.limitFrac(mashC + most),
        Attenuation.limitFrac(mashC + middle),
        Attenuation.limitFrac(mashC));
  }

  private static double hotterK(double mashC, double liquorKgPerKg, double powerNumber) {
    double t = Arrhenius.absoluteKelvin(mashC);
    double b = Arrhenius.GAS_J_PER_MOL_K / BetaAmylase.ACTIVATION_J_PER_MOL;
    double times = powerNumber * Math.log(liquorKgPerKg / REFERENCE_KG_PER_KG);
    return 1 / (1 / t - b * times) - t;
  }
}
