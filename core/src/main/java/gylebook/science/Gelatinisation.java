package gylebook.science;

import org.hipparchus.special.Erf;

/// How fast malt starch swells and becomes food for the enzymes.
///
/// The form is a ceiling rate behind a gate in temperature, a cumulative normal, as Potter &
/// Coulter describe the susceptibility of malt starch. The three constants are **ours**, calibrated
/// on what Rittenauer et al. report for ten minutes at a temperature, each range read at its
/// middle:
///
/// | mash | sugar, of that after 65 C for 60 min | how we know |
/// |---|---|---|
/// | 55.8 C (onset, 54.5-57.1) | 2 % | they say none to speak of; the figure is our assumption |
/// | 58.65 C (pasting, 57.5-59.8) | 61.7 % | read; that it is ten minutes too is assumed |
/// | 62.95 C (61.4-64.5) | 97.5 % | read |
///
/// Conversion is taken as first order, so the rates at the three are `-ln(1 - share)/600 s`, and
/// three constants meet three points exactly. A malt differs by a kelvin or two: a bag's middle
/// that lags behind the sensor differs by more.
public final class Gelatinisation {
  /// Rate well above the gate; 97.6 % in ten minutes.
  public static final double CEILING_PER_SEC = 6.234e-3;

  /// Where the gate is half open.
  private static final double HALF_OPEN_C = 59.633;

  /// Spread of the starch over temperature, one standard deviation.
  private static final double SPREAD_K = 1.504;

  /// The temperatures between the points of the calibration, widened to a usual mash.
  public static final Validity RANGE =
      new Validity(
          "mash temperature in C",
          54.5,
          72,
          "below, almost no starch is converted; above, the calibration has no point, and above 85 C"
              + " starch was found to stay, for the enzymes die before they reach it");

  // Knots every 0.1 K: within 1e-9 of the ceiling of the formula.
  private static final CubicTable TABLE =
      new CubicTable(40, 80, 400, Gelatinisation::formulaPerSec);

  private Gelatinisation() {}

  /// Share of the starch left that is opened and converted in a second.
  ///
  /// `r(T) = ceiling * Phi((T - 59.633)/1.504)`
  ///
  /// - Valid: 54.5 to 72 C by the calibration above; answers from 0 to 110 C.
  @Source(key = "rittenauer2021", at = "abstract", trust = Trust.READ)
  @Source(key = "potter-coulter", at = "abstract: form of the law", trust = Trust.READ)
  @Reckoned(
      name = "gelatinisation-rate",
      says = "How fast malt starch becomes available to the enzymes at a mash temperature.",
      equation = "r = 6.234e-3 Phi((T - 59.633)/1.504) per second",
      range = "54.5 to 72 C by points at 55.8, 58.65 and 62.95 C; almost nothing below 56 C")
  public static double ratePerSec(double mashC) {
    Require.within("mash temperature in C", mashC, 0, 110);
    return TABLE.at(mashC);
  }

  private static double formulaPerSec(double mashC) {
    double z = (mashC - HALF_OPEN_C) / SPREAD_K;
    return CEILING_PER_SEC * 0.5 * Erf.erfc(-z / Math.sqrt(2));
  }

  /// Share of the starch converted at a constant temperature, by starch alone: enzymes are taken as
  /// plenty.
  ///
  /// `1 - exp(-r t)`
  @Source(key = "rittenauer2021", at = "abstract", trust = Trust.READ)
  @Reckoned(
      name = "starch-converted",
      says = "How much of the starch is converted after a rest at one temperature.",
      equation = "X = 1 - exp(-r(T) t)",
      range = "as gelatinisation-rate; enzymes taken as plenty, which above 75 C they are not")
  public static double convertedFrac(double mashC, @Usually(10) double heldMin) {
    double heldSec = Require.notBelow0("rest in min", heldMin) * Minutes.SEC_PER_MIN;
    return -Math.expm1(-ratePerSec(mashC) * heldSec);
  }

  /// The temperature at which the starch is opened at half its highest rate.
  ///
  /// Twenty-five malts began to gelatinise between 58.5 and 64.3 C in the calorimeter (Patindol et
  /// al. 2012); viscometers find the onset 3-4 K lower. Ours lies at the lower end of the former.
  @Source(key = "rittenauer2021", at = "abstract", trust = Trust.READ)
  @Source(key = "patindol2012", at = "abstract: onset of 25 malts", trust = Trust.READ)
  @Reckoned(
      name = "gelatinisation-temperature",
      says = "The temperature at which malt starch opens at half its highest rate.",
      equation = "Phi((T - 59.633)/1.504) = 1/2",
      range = "pale barley malt; one malt differs by a kelvin or two")
  public static double halfOpenC() {
    return HALF_OPEN_C;
  }
}
