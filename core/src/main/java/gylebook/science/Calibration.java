package gylebook.science;

/// What ice and a rolling boil tell about a thermometer, and what its grade promises.
public final class Calibration {
  /// Beyond these it was no ice, or the two readings were exchanged.
  private static final double ICE_LEAST_C = -20;

  private static final double ICE_MOST_C = 20;

  private Calibration() {}

  /// True temperature of a reading, by a straight line through ice and boil.
  ///
  /// `T = (R - R_ice) T_boil / (R_boil - R_ice)`. A chip's error is curved in between: after both
  /// checks claim 0.25 K at mash temperature, no better (measured by others on one batch).
  @Source(key = "energy-balance", at = "straight line through two points", trust = Trust.COMPUTED)
  @Reckoned(
      name = "two-point-calibration",
      says = "What does a reading mean after a check in ice and in the boil?",
      equation = "T = (R - R_ice) T_boil / (R_boil - R_ice)",
      range = "boil reading above ice reading; a straight line is assumed between")
  public static double trueC(
      double readingC, double iceReadingC, double boilReadingC, @Usually(99.97) double boilC) {
    Require.within("reading in ice in C", iceReadingC, ICE_LEAST_C, ICE_MOST_C);
    double spanK = boilReadingC - iceReadingC;
    Require.above0("boil reading less ice reading", spanK);
    Require.temperatureC("reading", readingC);
    return (readingC - iceReadingC) * Require.above0("boiling point", boilC) / spanK;
  }

  /// True temperature when only ice was tried: the whole scale is shifted.
  @Source(key = "nist-sp1088", at = "abstract", trust = Trust.READ)
  @Reckoned(
      name = "ice-point-calibration",
      says = "What does a reading mean after a check in ice alone?",
      equation = "T = R - R_ice",
      range = "valid when only the offset drifts; leaves 0.4 to 0.6 K of doubt on cheap chips")
  public static double shiftedC(double readingC, double iceReadingC) {
    Require.within("reading in ice in C", iceReadingC, ICE_LEAST_C, ICE_MOST_C);
    // Two readings of one scale: their difference is the height above ice, hence the temperature.
    return Require.within("reading above ice", readingC - iceReadingC, -273.15, 2000);
  }

  /// Limit of error of a dial thermometer: a share of its *span*, at 20 C, tapped.
  ///
  /// From memory: grade A 1 %, AA 0.5 %, B 2 %. A dial whose screw was never set can be off by 5 K.
  @Source(key = "asme-b40-200", at = "accuracy grades", trust = Trust.MEMORY)
  @Reckoned(
      name = "dial-grade",
      says = "How far off may a dial thermometer of a grade be?",
      equation = "limit = grade (T_most - T_least)",
      range = "grade A 0.01, AA 0.005, B 0.02 of the span; a scale that rises, refused otherwise")
  public static double dialLimitK(double leastC, double mostC, @Usually(0.01) double gradeFrac) {
    return Require.above0("span", mostC - leastC) * Require.within("grade", gradeFrac, 0, 1);
  }
}
