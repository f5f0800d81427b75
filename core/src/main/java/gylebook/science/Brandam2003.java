package gylebook.science;

/// An older mash model, kept apart for comparison.
///
/// **Not verified.** The paper could not be read. The activities are a reader's refit of its
/// points, read second-hand; all other constants are from memory, and the two branches of the
/// starch law do not even meet at 60 C. Use {@link Gelatinisation}, {@link BetaAmylase} and {@link
/// Fermentability}.
///
/// Two of its remembered constants are used for want of better ones: the death of alpha-amylase,
/// which the forecast needs above 75 C only, and how the death of beta-amylase grows with the
/// temperature. The first agrees with Muller, who found over half left after an hour at 65 C; the
/// second was held against nothing.
public final class Brandam2003 {
  private static final double[] ALPHA = {
    9.82888846139552e-8,
    -1.91398099738377e-4,
    0.155234755391823,
    -67.1237341274294,
    16320.3910529193,
    -2115612.60688011,
    114232689.940232
  };

  private static final double BETA_PEAK_KELVIN = 336;

  /// Where the sixth-degree polynomial of alpha-amylase follows the points.
  public static final Validity RANGE =
      new Validity(
          "mash temperature in C",
          40,
          72,
          "the refitted activities have no points there; they are cut off at 0");

  private Brandam2003() {}

  /// Relative activity of alpha-amylase, a refit; cut off at 0.
  @Source(key = "brandam2003", at = "a reader's refit", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "alpha-amylase-activity-refit",
      says = "Relative activity of alpha-amylase in the mash, by a refit of an older study.",
      equation = "sextic in absolute temperature, all digits needed",
      range = "40 to 72 C; cut off at 0 above 74 C; not verified")
  public static double alphaActivityRatio(double mashC) {
    Require.within("mash temperature in C", mashC, 30, 110);
    double t = Arrhenius.absoluteKelvin(mashC);
    double sum = 0;
    for (double coefficient : ALPHA) {
      sum = sum * t + coefficient;
    }
    // Far above its points the polynomial turns up again.
    return mashC > 74 ? 0 : Math.max(0, sum);
  }

  /// Relative activity of beta-amylase, a refit in two lines; cut off at 0.
  @Source(key = "brandam2003", at = "a reader's refit", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "beta-amylase-activity-refit",
      says = "Relative activity of beta-amylase in the mash, by a refit of an older study.",
      equation = "0.04756 T - 13.403 below 336 K, 128.755 - 0.37548 T above",
      range = "40 to 70 C; cut off at 0; not verified")
  public static double betaActivityRatio(
      @Span(least = 40, most = 70, beyond = "the refitted lines have no points there")
          double mashC) {
    Require.within("mash temperature in C", mashC, 30, 110);
    double t = Arrhenius.absoluteKelvin(mashC);
    double line =
        t < BETA_PEAK_KELVIN ? 0.0475550936 * t - 13.4030012 : -0.375479041 * t + 128.755113;
    return Math.max(0, line);
  }

  /// Denaturation of alpha-amylase by remembered constants.
  @Source(key = "brandam2003", at = "tables", trust = Trust.MEMORY)
  @Reckoned(
      name = "alpha-amylase-denaturation-remembered",
      says = "How fast alpha-amylase dies in the mash, by remembered constants.",
      equation = "6.9e30 exp(-224200/(R T)) per second",
      range = "about 50 to 76 C; from memory, not verified")
  public static double alphaDenaturationPerSec(
      @Span(least = 50, most = 76, beyond = "the remembered law goes on without points")
          double mashC) {
    return rememberedPerSec(6.9e30, 224_200, mashC);
  }

  /// Denaturation of beta-amylase by remembered constants.
  @Source(key = "brandam2003", at = "tables", trust = Trust.MEMORY)
  @Reckoned(
      name = "beta-amylase-denaturation-remembered",
      says = "How fast beta-amylase dies in the mash, by remembered constants.",
      equation = "7.6e60 exp(-410700/(R T)) per second",
      range = "about 50 to 76 C; from memory, not verified")
  public static double betaDenaturationPerSec(
      @Span(least = 50, most = 76, beyond = "the remembered law goes on without points")
          double mashC) {
    return rememberedPerSec(7.6e60, 410_700, mashC);
  }

  /// Gelatinisation by the remembered branch for below 60 C.
  @Source(key = "brandam2003", at = "tables", trust = Trust.MEMORY)
  @Reckoned(
      name = "gelatinisation-below-60-remembered",
      says = "How fast starch gelatinises below 60 C, by remembered constants.",
      equation = "5.7e31 exp(-220600/(R T)) per second",
      range = "below 60 C; from memory, not verified; does not meet the other branch")
  public static double gelatinisationBelow60PerSec(
      @Span(
              least = 30,
              most = 60,
              beyond = "this branch is for below 60 C and does not meet the other")
          double mashC) {
    return rememberedPerSec(5.7e31, 220_600, mashC);
  }

  /// Gelatinisation by the remembered branch for above 60 C.
  @Source(key = "brandam2003", at = "tables", trust = Trust.MEMORY)
  @Reckoned(
      name = "gelatinisation-above-60-remembered",
      says = "How fast starch gelatinises above 60 C, by remembered constants.",
      equation = "3.1e14 exp(-108300/(R T)) per second",
      range = "above 60 C; from memory, not verified; does not meet the other branch")
  public static double gelatinisationAbove60PerSec(
      @Span(
              least = 60,
              most = 110,
              beyond = "this branch is for above 60 C and does not meet the other")
          double mashC) {
    return rememberedPerSec(3.1e14, 108_300, mashC);
  }

  /// Alpha-amylase left after a rest, by the remembered constants.
  ///
  /// Muller found more than half left after 60 min at 65 C; this says 0.56.
  @Source(key = "brandam2003", at = "tables", trust = Trust.MEMORY)
  @Reckoned(
      name = "alpha-amylase-left-remembered",
      says = "How much alpha-amylase a rest leaves, by remembered constants.",
      equation = "exp(-k t)",
      range = "about 50 to 76 C; from memory, not verified")
  public static double alphaLeftFrac(
      @Span(least = 50, most = 76, beyond = "the remembered law goes on without points")
          double mashC,
      @Usually(60) double heldMin) {
    double heldSec = Require.notBelow0("rest in min", heldMin) * Minutes.SEC_PER_MIN;
    return Math.exp(-alphaDenaturationPerSec(mashC) * heldSec);
  }

  private static double rememberedPerSec(
      double factorPerSec, double activationJPerMol, double mashC) {
    Require.within("mash temperature in C", mashC, 30, 110);
    return Arrhenius.ratePerSec(factorPerSec, activationJPerMol, mashC);
  }
}
