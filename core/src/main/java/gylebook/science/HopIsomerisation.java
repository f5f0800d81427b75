package gylebook.science;

/// Alpha acid turning into iso-alpha acid in hot wort, and iso-alpha acid breaking down again.
///
/// Malowicki & Shellhammer 2005 measured both as first-order steps in a buffer of pH 5.2 from 90 to
/// 130 C. They saw no effect of gravity, calcium or pH on the rate: what strong worts utilise less
/// is lost elsewhere. No trub, no foam and no filter is in these numbers, and no bonus for hops
/// that lie in the first wort: those are a boil addition plus the minutes before the boil.
public final class HopIsomerisation {
  /// Constants are given to two to four digits; believe two.
  private static final double FORMATION_PER_MIN = 7.9e11;

  private static final double FORMATION_KELVIN = 11_858;
  private static final double LOSS_PER_MIN = 4.1e12;
  private static final double LOSS_KELVIN = 12_994;

  /// About what dissolves of alpha acid at pH 5.2; more waits undissolved ({@link
  /// AlphaSolubility}).
  public static final double SOLUBLE_MG_PER_L = 90;

  /// Steps of the integration over a falling temperature.
  private static final int STEP_COUNT = 400;

  /// The temperatures of the measurement.
  public static final Validity RANGE =
      new Validity(
          "wort temperature in C",
          90,
          130,
          "the isomerisation rate is extrapolated; other work finds the same kind of law down to"
              + " 80 C");

  private HopIsomerisation() {}

  /// Alpha acid isomerised per second, as a share of what is left.
  ///
  /// `k1 = 7.9e11 exp(-11858/T)` per minute
  ///
  /// - Valid: 90 to 130 C; extrapolated below, with a caution.
  @Source(key = "malowicki2005", at = "abstract", trust = Trust.READ)
  @Reckoned(
      name = "hop-isomerisation-rate",
      says = "How fast alpha acid isomerises in wort of a temperature.",
      equation = "k1 = 7.9e11 exp(-11858/T) per minute",
      range = "90 to 130 C; a whirlpool below 90 C is extrapolated; 0 to 135 C answered")
  public static double formationPerSec(double wortC) {
    return arrheniusPerSec(FORMATION_PER_MIN, FORMATION_KELVIN, wortC);
  }

  /// Iso-alpha acid lost per second, as a share of what is there.
  ///
  /// `k2 = 4.1e12 exp(-12994/T)` per minute
  ///
  /// - Valid: 90 to 130 C; extrapolated below, with a caution.
  @Source(key = "malowicki2005", at = "abstract", trust = Trust.READ)
  @Reckoned(
      name = "iso-alpha-loss-rate",
      says = "How fast iso-alpha acid breaks down in wort of a temperature.",
      equation = "k2 = 4.1e12 exp(-12994/T) per minute",
      range = "90 to 130 C; extrapolated below; 0 to 135 C answered")
  public static double lossPerSec(double wortC) {
    return arrheniusPerSec(LOSS_PER_MIN, LOSS_KELVIN, wortC);
  }

  private static double arrheniusPerSec(
      double factorPerMin, double activationKelvin, double wortC) {
    Require.within("wort temperature in C", wortC, 0, 135);
    double slowing = Math.exp(-activationKelvin / Arrhenius.absoluteKelvin(wortC));
    return factorPerMin * slowing / Minutes.SEC_PER_MIN;
  }

  /// Iso-alpha acid present per alpha acid added, after a time at one temperature.
  ///
  /// `iso = k1/(k2 - k1) (exp(-k1 t) - exp(-k2 t))`
  @Source(key = "malowicki2005", at = "abstract", trust = Trust.READ)
  @Reckoned(
      name = "iso-alpha-formed",
      says = "How much of the alpha acid is iso-alpha acid after a time at one temperature.",
      equation = "iso = k1/(k2 - k1) (exp(-k1 t) - exp(-k2 t))",
      range = "90 to 130 C; extrapolated below; nothing lost to trub or foam")
  public static double isoFrac(double wortC, @Usually(60) double heldMin) {
    double heldSec = Require.notBelow0("time in min", heldMin) * Minutes.SEC_PER_MIN;
    double k1 = formationPerSec(wortC);
    double k2 = lossPerSec(wortC);
    return k1 / (k2 - k1) * (Math.exp(-k1 * heldSec) - Math.exp(-k2 * heldSec));
  }

  /// Share of dosed iso-alpha acid that a boil destroys, `1 - exp(-k2 t)`.
  ///
  /// Kappler et al. 2010 found over a fifth gone after 90 min. What the pH adds: {@link
  /// IsoAlphaAcidity}.
  @Source(key = "malowicki2005", at = "abstract", trust = Trust.READ)
  @Reckoned(
      name = "iso-alpha-lost",
      says = "How much ready iso-alpha acid is destroyed after a time at one temperature.",
      equation = "lost = 1 - exp(-k2 t)",
      range = "90 to 130 C; more at low pH and in strong wort")
  public static double isoLostFrac(double wortC, @Usually(60) double heldMin) {
    double heldSec = Require.notBelow0("time in min", heldMin) * Minutes.SEC_PER_MIN;
    return -Math.expm1(-lossPerSec(wortC) * heldSec);
  }

  /// Iso-alpha acid per alpha acid added to wort that cools at an even pace.
  @Source(key = "malowicki2005", at = "abstract", trust = Trust.READ)
  @Reckoned(
      name = "iso-alpha-in-even-cooling",
      says = "How much alpha acid becomes iso-alpha acid while the wort cools at an even pace.",
      equation = "d(alpha)/dt = -k1 alpha, d(iso)/dt = k1 alpha - k2 iso, T linear",
      range = "90 to 130 C; extrapolated below")
  public static double evenCoolingIsoFrac(double startC, double endC, double coolingMin) {
    Require.notBelow0("time in min", coolingMin);
    return integratedFrac(coolingMin, share -> startC + share * (endC - startC));
  }

  /// Iso-alpha acid per alpha acid added to wort that cools by itself towards a room.
  ///
  /// The temperature is `room + (start - room) exp(-t/tau)`.
  @Source(key = "malowicki2005", at = "abstract", trust = Trust.READ)
  @Reckoned(
      name = "iso-alpha-in-free-cooling",
      says = "How much alpha acid becomes iso-alpha acid while the kettle cools by itself.",
      equation =
          "d(alpha)/dt = -k1 alpha, d(iso)/dt = k1 alpha - k2 iso, T = Tr + (T0 - Tr) e^(-t/tau)",
      range = "90 to 130 C; extrapolated below")
  public static double freeCoolingIsoFrac(
      double startC, @Usually(20) double roomC, double timeConstantMin, double coolingMin) {
    Require.above0("time constant in min", timeConstantMin);
    Require.notBelow0("time in min", coolingMin);
    double span = coolingMin / timeConstantMin;
    return integratedFrac(coolingMin, u -> roomC + (startC - roomC) * Math.exp(-u * span));
  }

  /// Iso-alpha acid of hops that lie in the wort from the run-off on: heating up, then the boil.
  ///
  /// A boil addition with its time of heating, and **no bonus**: Hahn and Shellhammer and a trial
  /// of 2022 found no gain in bitterness.
  @Source(key = "malowicki2005", at = "abstract", trust = Trust.READ)
  @Reckoned(
      name = "first-wort-hop-iso-alpha",
      says = "How much alpha acid of first-wort hops becomes iso-alpha acid.",
      equation =
          "d(alpha)/dt = -k1 alpha, d(iso)/dt = k1 alpha - k2 iso, heating evenly, then boiling",
      range = "90 to 130 C; extrapolated below; no bonus over a boil addition")
  public static double firstWortIsoFrac(
      @Usually(65) double startC,
      @Usually(40) double heatedMin,
      @Usually(100) double boilC,
      @Usually(60) double boiledMin) {
    Require.notBelow0("time of heating in min", heatedMin);
    Require.notBelow0("time of the boil in min", boiledMin);
    double whole = heatedMin + boiledMin;
    double heated = whole > 0 ? heatedMin / whole : 0;
    return integratedFrac(whole, u -> u < heated ? startC + u / heated * (boilC - startC) : boilC);
  }

  /// The course of the wort's temperature over the share of the time that has passed.
  @FunctionalInterface
  private interface Course {
    double wortC(double passedFrac);
  }

  private static double integratedFrac(double heldMin, Course course) {
    double step = heldMin * Minutes.SEC_PER_MIN / STEP_COUNT;
    double alpha = 1;
    double iso = 0;
    for (int i = 0; i < STEP_COUNT; i++) {
      // Rates at the middle of the step, then the exact solution of the step: second order.
      double wortC = course.wortC((i + 0.5) / STEP_COUNT);
      double k1 = formationPerSec(wortC);
      double k2 = lossPerSec(wortC);
      double kept = Math.exp(-k2 * step);
      double left = Math.exp(-k1 * step);
      iso = iso * kept + alpha * k1 / (k2 - k1) * (left - kept);
      alpha *= left;
    }
    return iso;
  }
}
