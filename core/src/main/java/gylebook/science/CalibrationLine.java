package gylebook.science;

/// A straight line through the corrections of a thermometer, with its doubts.
///
/// `b(t) = y1 + y2 (t - t0)`, least squares of equal weight; the scatter about the line tells the
/// doubt, so at least three points are needed.
///
/// @param referenceC the temperature t0 that the offset belongs to
/// @param offsetK y1
/// @param slopeRatio y2, kelvin per kelvin
/// @param offsetDoubtK standard uncertainty of y1
/// @param slopeDoubtRatio standard uncertainty of y2
/// @param correlationRatio of y1 and y2, -1 to 1
public record CalibrationLine(
    double referenceC,
    double offsetK,
    double slopeRatio,
    double offsetDoubtK,
    double slopeDoubtRatio,
    double correlationRatio) {

  /// Fits the line. Refused below three points, or when all lie at one temperature.
  @Source(key = "gum", at = "annex H.3", trust = Trust.READ)
  public static CalibrationLine fit(double[] readC, double[] correctionK, double referenceC) {
    int count = readC.length;
    if (count < 3 || correctionK.length != count) {
      throw new IllegalArgumentException(
          "there are "
              + count
              + " readings and "
              + correctionK.length
              + " corrections; at least three of each, and equally many, are needed.");
    }
    double first = 0;
    double second = 0;
    double value = 0;
    double cross = 0;
    for (int i = 0; i < count; i++) {
      double off = readC[i] - referenceC;
      first += off;
      second += off * off;
      value += correctionK[i];
      cross += correctionK[i] * off;
    }
    double spread = Require.above0("spread of the readings", count * second - first * first);
    double offset = (value * second - cross * first) / spread;
    double slope = (count * cross - value * first) / spread;
    double squares = 0;
    for (int i = 0; i < count; i++) {
      double residual = correctionK[i] - offset - slope * (readC[i] - referenceC);
      squares += residual * residual;
    }
    double scatter = Math.sqrt(squares / (count - 2));
    return new CalibrationLine(
        referenceC,
        offset,
        slope,
        scatter * Math.sqrt(second / spread),
        scatter * Math.sqrt(count / spread),
        -first / Math.sqrt(count * second));
  }

  /// Correction to add to a reading.
  @Source(key = "gum", at = "annex H.3", trust = Trust.READ)
  public double correctionK(double readC) {
    return offsetK + slopeRatio * (readC - referenceC);
  }

  /// Standard uncertainty of that correction, the correlation counted.
  @Source(key = "gum", at = "annex H.3", trust = Trust.READ)
  public double correctionDoubtK(double readC) {
    double sloped = (readC - referenceC) * slopeDoubtRatio;
    double square =
        offsetDoubtK * offsetDoubtK
            + sloped * sloped
            + 2 * offsetDoubtK * sloped * correlationRatio;
    return Math.sqrt(Math.max(0, square));
  }
}
