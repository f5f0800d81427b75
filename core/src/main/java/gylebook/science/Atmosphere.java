package gylebook.science;

/// Pressure of the air a kettle stands in.
public final class Atmosphere {
  private static final double EARTH_M = 6_356_766;
  private static final double SEA_LEVEL_KPA = 101.325;
  private static final double SEA_LEVEL_KELVIN = 288.15;
  private static final double LAPSE_K_PER_M = 0.0065;
  private static final double EXPONENT_NUMBER = 5.255877;
  private static final double LEAST_M = -500;
  private static final double MOST_M = 11_000;

  private Atmosphere() {}

  /// Air pressure at an altitude on a day of standard weather.
  ///
  /// `p = 101.325 (1 - 0.0065 H/288.15)^5.255877`, with `H = 6356766 z/(6356766 + z)`
  ///
  /// - Valid: -500 to 11000 m; outside it refuses. Weather swings by 2 to 3 kPa about it, which is
  ///   0.6 to 0.8 K in the boiling point: prefer the day's own station pressure.
  /// - Source: US Standard Atmosphere 1976.
  @Reckoned(
      name = "air-pressure",
      says = "The air pressure at an altitude in standard weather.",
      equation = "p = 101.325 (1 - 0.0065 H/288.15)^5.255877, H = 6356766 z/(6356766 + z)",
      range = "-500 to 11000 m; refused outside; weather moves it by 2 to 3 kPa")
  @Source(key = "us-atmosphere-1976", trust = Trust.READ)
  public static double stationKpa(double altitudeM) {
    return stationKpa(SEA_LEVEL_KPA, altitudeM);
  }

  /// Air pressure where the brewer stands, from a weather report reduced to sea level.
  ///
  /// `p = reported (1 - 0.0065 H/288.15)^5.255877`
  ///
  /// - Valid: -500 to 11000 m and reports of 85 to 110 kPa; outside it refuses. Weather services
  ///   reduce with the day's temperature; standard air makes an error of some 0.1 kPa per 300 m on
  ///   a cold or hot day. A barometer at hand gives the station pressure directly.
  /// - Source: US Standard Atmosphere 1976; the size of the error is from memory.
  @Reckoned(
      name = "air-pressure-from-report",
      says = "The air pressure at an altitude from a weather report reduced to sea level.",
      equation = "p = reported (1 - 0.0065 H/288.15)^5.255877",
      range = "-500 to 11000 m, reports of 85 to 110 kPa; refused outside")
  @Source(key = "us-atmosphere-1976", trust = Trust.READ)
  public static double stationKpa(double reportedKpa, double altitudeM) {
    Require.within("reported in kPa", reportedKpa, 85, 110);
    Require.within("altitude in m", altitudeM, LEAST_M, MOST_M);
    double h = EARTH_M * altitudeM / (EARTH_M + altitudeM);
    return reportedKpa * Math.pow(1 - LAPSE_K_PER_M * h / SEA_LEVEL_KELVIN, EXPONENT_NUMBER);
  }

  /// Altitude at which standard weather has this pressure.
  ///
  /// `H = (288.15/0.0065) (1 - (p/101.325)^(1/5.255877))`, `z = 6356766 H/(6356766 - H)`
  ///
  /// - Valid: 22.65 to 107.4 kPa; outside it refuses.
  /// - Source: US Standard Atmosphere 1976, solved for the altitude.
  @Reckoned(
      name = "altitude",
      says = "The altitude at which standard weather has a pressure.",
      equation = "H = (288.15/0.0065) (1 - (p/101.325)^(1/5.255877)), z = 6356766 H/(6356766 - H)",
      range = "22.65 to 107.4 kPa; refused outside")
  @Source(key = "us-atmosphere-1976", trust = Trust.READ)
  public static double altitudeM(double pressureKpa) {
    Require.within("pressure in kPa", pressureKpa, 22.65, 107.4);
    double ratio = Math.pow(pressureKpa / SEA_LEVEL_KPA, 1 / EXPONENT_NUMBER);
    double h = SEA_LEVEL_KELVIN / LAPSE_K_PER_M * (1 - ratio);
    return EARTH_M * h / (EARTH_M - h);
  }
}
