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

  private CarbonDioxide() {}

  /// Mass of a litre of the gas.
  ///
  /// `p V = R T (1 + B/V)`, `rho = M/V`
  ///
  /// - Valid: B of -149 mL/mol belongs to 0 C; near one atmosphere. Refused outside -20 to 60 C and
  ///   10 to 300 kPa.
  /// - Source: the virial equation; B from memory. As an ideal gas it would be 0.7 % lighter.
  @Reckoned(
      name = "carbon-dioxide-volume-mass",
      says = "How heavy a litre of carbon dioxide is: one volume of carbonation at 0 C.",
      equation = "p V = R T (1 + B/V); rho = M/V",
      range = "near one atmosphere; refused outside -20 to 60 C and 10 to 300 kPa")
  @Source(key = "virial-co2", trust = Trust.MEMORY)
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
  /// - Valid: 0 to 40 C; refused outside. Another standard (IAPWS) is 2.5 % lower at 10 C.
  /// - Source: Weiss 1974; coefficients second-hand.
  @Reckoned(
      name = "carbon-dioxide-in-water",
      says = "How much carbon dioxide water holds under a pressure of the gas.",
      equation = "ln K0 = -58.0931 + 90.5069 (100/T) + 22.2940 ln(T/100); c = K0 M p",
      range = "0 to 40 C, fresh water; beer holds 4 to 8 % less; refused outside")
  @Source(key = "weiss1974", trust = Trust.SECOND_HAND)
  public static double waterGPerL(double waterC, @Usually(101.325) double gasKpa) {
    Require.within("water temperature in C", waterC, 0, 40);
    Require.notBelow0("pressure of the gas in kPa", gasKpa);
    double t = waterC + ZERO_KELVIN;
    double ln = -58.0931 + 90.5069 * (100 / t) + 22.2940 * Math.log(t / 100);
    return Math.exp(ln) * G_PER_MOL * gasKpa / SEA_LEVEL_KPA;
  }
}
