package gylebook.science;

import org.hipparchus.analysis.UnivariateFunction;

/// Carbon dioxide: how heavy a volume of it is, and how much water holds.
public final class CarbonDioxide {
  /// Grams in a mole.
  static final double G_PER_MOL = 44.0095;

  static final double GAS_J_PER_MOL_K = 8.314462618;
  static final double ZERO_KELVIN = 273.15;
  static final double SEA_LEVEL_KPA = 101.325;

  private static final double ONE_VOL = 1;

  /// What brewers call one volume, in grams for a litre: a litre of the real gas at 0 C.
  static final double VOLUME_G_PER_L_VOL = volumeGPerL(0, SEA_LEVEL_KPA, -149) / ONE_VOL;

  private static final double SANDER_KELVIN = 298.15;
  private static final double SANDER_SLOPE_KELVIN = 2350;

  /// 3.35e-4 mol/(m3 Pa), in litres and kilopascals.
  private static final double SANDER_MOL_PER_L_KPA = 3.35e-4;

  private CarbonDioxide() {}

  /// Mass of a litre of the gas.
  ///
  /// `p V = R T (1 + B/V)`, `rho = M/V`
  ///
  /// - Valid: B of -149 mL/mol belongs to 0 C; near one atmosphere. Refused outside -20 to 60 C and
  ///   10 to 300 kPa.
  /// - Source: the virial equation; a table of constants has B of -151, the reference equation
  ///   -150: a volume differs by 0.01 %. As an ideal gas it would be 0.7 % lighter.
  @Reckoned(
      name = "carbon-dioxide-volume-mass",
      says = "How heavy a litre of carbon dioxide is: one volume of carbonation at 0 C.",
      equation = "p V = R T (1 + B/V); rho = M/V",
      range = "near one atmosphere; refused outside -20 to 60 C and 10 to 300 kPa")
  @Source(key = "virial-co2", trust = Trust.SECOND_HAND)
  public static double volumeGPerL(
      @Usually(0) double gasC,
      @Usually(101.325) double gasKpa,
      @Usually(-149) double virialMlPerMol) {
    Require.within("gas temperature in C", gasC, -20, 60);
    Require.within("gas pressure in kPa", gasKpa, 10, 300);
    Require.within("second virial coefficient in mL/mol", virialMlPerMol, -300, 0);
    double ideal = GAS_J_PER_MOL_K * (gasC + ZERO_KELVIN) / gasKpa;
    double b = virialMlPerMol / 1000;
    UnivariateFunction gap = v -> v - ideal * (1 + b / v);
    return G_PER_MOL / Root.between(ideal / 2, 2 * ideal, gap);
  }

  /// Carbon dioxide that water holds.
  ///
  /// `ln K0 = -58.0931 + 90.5069 (100/T) + 22.2940 ln(T/100)`, mol a litre and atmosphere
  ///
  /// - Valid: 0 to 40 C; goes on to 80 C with a caution. Another standard (IAPWS) is 2.5 % lower at
  ///   10 C.
  /// - Source: Weiss 1974; coefficients second-hand.
  @Reckoned(
      name = "carbon-dioxide-in-water",
      says = "How much carbon dioxide water holds under a pressure of the gas.",
      equation = "ln K0 = -58.0931 + 90.5069 (100/T) + 22.2940 ln(T/100); c = K0 M p",
      range = "0 to 40 C, goes on to 80 C; fresh water; beer holds 4 to 8 % less")
  @Source(key = "weiss1974", trust = Trust.SECOND_HAND)
  public static double waterGPerL(
      @Span(least = 0, most = 40, beyond = "the law was fitted there only; it goes on")
          double waterC,
      @Usually(101.325) double gasKpa) {
    Require.within("water temperature in C", waterC, 0, 80);
    Require.notBelow0("pressure of the gas in kPa", gasKpa);
    double t = waterC + ZERO_KELVIN;
    double ln = -58.0931 + 90.5069 * (100 / t) + 22.2940 * Math.log(t / 100);
    return Math.exp(ln) * G_PER_MOL * gasKpa / SEA_LEVEL_KPA;
  }

  /// Carbon dioxide that water holds, by a compilation of Henry's constants.
  ///
  /// `H = 3.35e-4 exp(2350 (1/T - 1/298.15))` mol/(m3 Pa)
  ///
  /// - Valid: 15 to 40 C within 3 %; the constants belong to 25 C, and towards 0 C it falls 10 %
  ///   short (for cold beer use {@link #waterGPerL}). Goes on to 80 C with a caution. The
  ///   compilation's own spread: 3.3 to 3.4e-4 and 2300 to 2400 K; taken in the middle.
  /// - Source: Sander's compilation of 2023.
  @Reckoned(
      name = "carbon-dioxide-in-water-compiled",
      says = "How much carbon dioxide water holds, by a compilation of Henry's constants.",
      equation = "H = 3.35e-4 exp(2350 (1/T - 1/298.15)) mol/(m3 Pa); c = H M p",
      range = "15 to 40 C; 7 % short at 5 C, 10 % at 0 C; goes on to 80 C")
  @Source(key = "sander2023", at = "carbon dioxide", trust = Trust.READ)
  public static double compiledGPerL(
      @Span(
              least = 15,
              most = 40,
              beyond =
                  "below it falls short, 7 % at 5 C and 10 % at 0 C; above nothing was compared")
          double waterC,
      @Usually(101.325) double gasKpa) {
    Require.within("water temperature in C", waterC, 0, 80);
    Require.notBelow0("pressure of the gas in kPa", gasKpa);
    double warmth = 1 / (waterC + ZERO_KELVIN) - 1 / SANDER_KELVIN;
    return SANDER_MOL_PER_L_KPA * Math.exp(SANDER_SLOPE_KELVIN * warmth) * G_PER_MOL * gasKpa;
  }
}
