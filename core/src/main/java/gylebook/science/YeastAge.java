package gylebook.science;

/// How stored slurry and liquid yeast die: first order, faster when warm.
///
/// Measured over six days on one slurry; strains differ. Packaged liquid yeast keeps better, near
/// 0.0075 a day at 4 C by a maker's figure.
public final class YeastAge {
  /// The temperatures of the measurements.
  public static final Validity RANGE =
      new Validity(
          "storage temperature in C", 1, 25, "no yeast was measured there; the line goes on");

  private static final double AT_1_PER_DAY = 0.01210;
  private static final double SLOPE_PER_K = 0.115;
  private static final double FIRST_C = 1;
  private static final double PACK_PER_DAY = 0.0075;
  private static final double FRIDGE_C = 4;

  private YeastAge() {}

  /// Rate at which stored yeast dies.
  ///
  /// `k = 0.01210 exp(0.115 (T - 1))`
  ///
  /// - Valid: 1 to 25 C; at 5 C the measured rate (0.0251) is a third above this line. Outside it
  ///   goes on with a caution; refused below -2 and above 40 C. Do not freeze.
  /// - Source: fitted to McCaig and Bendiak 1985 (-7 % in six days at 1 C; at worst -68 % at 10 to
  ///   25 C, taken as 25 C).
  @Reckoned(
      name = "yeast-death-rate",
      says = "How fast stored yeast dies at a temperature.",
      equation = "k = 0.01210 exp(0.115 (T - 1))",
      range = "slurry at 1 to 25 C, a quarter low at 5 C; packaged liquid yeast about half as fast")
  @Source(key = "mccaig1985", at = "abstract", trust = Trust.READ)
  public static double deathPerDay(@Usually(4) double storageC) {
    Require.within("storage temperature in C", storageC, -2, 40);
    return AT_1_PER_DAY * Math.exp(SLOPE_PER_K * (storageC - FIRST_C));
  }

  /// Rate from a measured loss.
  ///
  /// `k = -ln(1 - lost)/t`
  ///
  /// - Valid: a loss below all; refused otherwise.
  /// - Source: a definition.
  @Reckoned(
      name = "yeast-death-rate-measured",
      says = "How fast stored yeast dies, from a loss that was measured.",
      equation = "k = -ln(1 - lost)/t",
      range = "a loss from 0 to below 1 and a time above 0; refused otherwise")
  @Source(key = "mass-balance", at = "first order", trust = Trust.COMPUTED)
  public static double measuredPerDay(double lostFrac, double heldDay) {
    Require.within("lost share", lostFrac, 0, 0.999999);
    return -Math.log1p(-lostFrac) / Require.above0("time in days", heldDay);
  }

  /// Living share after storage at a known rate.
  ///
  /// `v = v0 exp(-k t)`
  ///
  /// - Valid: any time; refused for negative times or rates.
  /// - Source: first order, McCaig and Bendiak 1985.
  @Reckoned(
      name = "yeast-viability",
      says = "The living share of stored yeast after some days at a known rate.",
      equation = "v = v0 exp(-k t)",
      range = "weeks; strains differ; count under the microscope where it matters")
  @Source(key = "mccaig1985", at = "abstract", trust = Trust.READ)
  public static double viableFrac(
      @Usually(1) double startFrac, double deathPerDay, double heldDay) {
    Require.within("living share at the start", startFrac, 0, 1);
    Require.notBelow0("rate a day", deathPerDay);
    return startFrac * Math.exp(-deathPerDay * Require.notBelow0("time in days", heldDay));
  }

  /// Living share after storage at one temperature.
  ///
  /// `v = v0 exp(-k(T) t)`; for several temperatures apply it one after the other.
  ///
  /// - Valid: as the rate.
  /// - Source: as the rate.
  @Reckoned(
      name = "yeast-viability-stored",
      says = "The living share of yeast after some days at a storage temperature.",
      equation = "v = v0 exp(-k t), k = 0.01210 exp(0.115 (T - 1))",
      range = "slurry at 1 to 25 C; packaged liquid yeast keeps better")
  @Source(key = "mccaig1985", at = "abstract", trust = Trust.READ)
  public static double storedFrac(
      @Usually(1) double startFrac, @Usually(4) double storageC, double heldDay) {
    return viableFrac(startFrac, deathPerDay(storageC), heldDay);
  }

  /// Living share of packaged liquid yeast after storage, by its makers.
  ///
  /// `v = v0 exp(-0.0075 e^(0.115 (T - 4)) t)`
  ///
  /// - Valid: a pack at 4 C: 75 to 85 % alive after 30 days. Elsewhere the slurry's dependence on
  ///   warmth is borrowed, which nobody measured on packs: a caution. Refused below -2 and above 40
  ///   C.
  /// - Source: a maker's figure, second-hand; the slope fitted to McCaig and Bendiak 1985.
  @Reckoned(
      name = "yeast-viability-packaged",
      says = "The living share of packaged liquid yeast after some days in the fridge.",
      equation = "v = v0 exp(-0.0075 e^(0.115 (T - 4)) t)",
      range = "packs at 4 C by a maker's figure; slurry dies more than twice as fast")
  @Source(key = "yeast-makers", at = "liquid yeast", trust = Trust.SECOND_HAND)
  @Source(key = "mccaig1985", at = "abstract", trust = Trust.READ)
  public static double packagedFrac(
      @Usually(1) double startFrac,
      @Span(least = 3, most = 6, beyond = "makers speak of the fridge only; warmth is borrowed")
          @Usually(4)
          double storageC,
      double heldDay) {
    Require.within("storage temperature in C", storageC, -2, 40);
    double deathPerDay = PACK_PER_DAY * Math.exp(SLOPE_PER_K * (storageC - FRIDGE_C));
    return viableFrac(startFrac, deathPerDay, heldDay);
  }

  /// Living share of dried yeast in a closed packet in the fridge.
  ///
  /// `v = v0 0.96^(t/365)`
  ///
  /// - Valid: a closed packet at 4 C. Opened or warm it loses more, and nobody's figure was read.
  /// - Source: a maker's figure, second-hand.
  @Reckoned(
      name = "yeast-viability-dried",
      says = "The living share of dried yeast after some days in the fridge.",
      equation = "v = v0 0.96^(t/365)",
      range = "a closed packet at 4 C; opened or warm it loses more")
  @Source(key = "yeast-makers", at = "dried yeast", trust = Trust.SECOND_HAND)
  public static double driedFrac(@Usually(1) double startFrac, double heldDay) {
    return viableFrac(startFrac, measuredPerDay(0.04, 365), heldDay);
  }
}
