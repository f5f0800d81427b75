package gylebook.science;

/// Density of water as it stands in a kettle: liquid, air-free, at the pressure of the room.
public final class WaterDensity {
  /// Coldest water the equation answers for: a little below freezing, for cold beer.
  public static final double LEAST_C = -5;

  /// Hottest water the equation answers for.
  public static final double MOST_C = 110;

  private WaterDensity() {}

  /// Density of water, in the rational form fitted to the temperature scale of 1990.
  ///
  /// `rho = (a0 + a1 t + a2 t^2 + a3 t^3 + a4 t^4 + a5 t^5) / (1 + b t)`
  ///
  /// - Valid: 0 to 100 C with 0.006 kg/m3; from -5 and up to 110 C it runs on smoothly (within 0.05
  ///   kg/m3 of the steam tables at 110 C); outside it refuses.
  /// - Source: Bettin and Spieweck 1990, a new fit of Kell 1975. A much-copied print of Kell's own
  ///   denominator has two digits swapped and is 0.07 kg/m3 too low at 4 C; the tests guard this.
  @Reckoned(
      name = "water-density",
      says = "How heavy a litre of water is at a temperature.",
      equation = "rho = (a0 + a1 t + a2 t^2 + a3 t^3 + a4 t^4 + a5 t^5) / (1 + b t)",
      range = "0 to 100 C as published; -5 to 110 C carried on; refused outside")
  @Source(key = "bettin-spieweck-1990", trust = Trust.SECOND_HAND)
  public static double waterKgPerL(
      @Span(least = 0, most = 100, beyond = "the published fit ends there; it is carried on")
          double waterC) {
    Require.within("water in C", waterC, LEAST_C, MOST_C);
    double above =
        999.83952
            + waterC
                * (16.952577
                    + waterC
                        * (-7.9905127e-3
                            + waterC
                                * (-46.241757e-6
                                    + waterC * (105.84601e-9 + waterC * -281.03006e-12))));
    return above / (1 + 16.887236e-3 * waterC) / 1000;
  }

  /// Density of liquid water under any pressure, from the steam tables.
  ///
  /// `rho = p / (R T pi dgamma/dpi)`, the Gibbs energy of region 1.
  ///
  /// - Valid: 0 to 150 C and 50 to 1000 kPa, liquid; it differs from the rational form by up to
  ///   0.02 kg/m3 at 80 C, so a brew day uses one of them throughout. Outside it refuses.
  /// - Source: IAPWS-IF97, equation 7 and table 2.
  @Reckoned(
      name = "water-density-steam-tables",
      says = "How heavy a litre of liquid water is at a temperature and pressure, by steam tables.",
      equation = "rho = p / (R T pi dgamma/dpi)",
      range = "0 to 150 C, 50 to 1000 kPa, liquid; refused outside")
  @Source(key = "iapws-if97", at = "equation 7, tables 2 and 3", trust = Trust.SECOND_HAND)
  public static double tableKgPerL(double waterC, @Usually(101.325) double pressureKpa) {
    Require.within("water in C", waterC, 0, 150);
    Require.within("pressure in kPa", pressureKpa, 50, 1000);
    return LiquidIf97.densityKgPerM3(waterC, pressureKpa) / Air.L_PER_M3;
  }

  /// Density of water, Kell's own fit of 1975 on the temperature scale of 1968.
  ///
  /// `rho = (999.83952 + 16.945176 t - 7.9870401e-3 t^2 - ...)/(1 + 16.879850e-3 t)`
  ///
  /// - Valid: 0 to 150 C; refused outside. A web print has 16.897850 for 16.879850 and is 0.07
  ///   kg/m3 too low at 4 C. The newer fit is to be preferred: the scale has moved by 0.005 K at 20
  ///   C.
  /// - Source: Kell 1975 as printed by Jones and Harris 1992.
  @Reckoned(
      name = "water-density-1975",
      says = "How heavy a litre of water is, by the fit of 1975.",
      equation = "rho = (999.83952 + 16.945176 t - 7.9870401e-3 t^2 - ...)/(1 + 16.879850e-3 t)",
      range = "0 to 150 C on the scale of 1968; refused outside")
  @Source(key = "kell-1975", at = "as in Jones and Harris 1992", trust = Trust.SECOND_HAND)
  public static double olderKgPerL(double waterC) {
    double t = Require.within("water in C", waterC, 0, 150);
    double above =
        999.83952
            + t
                * (16.945176
                    + t
                        * (-7.9870401e-3
                            + t * (-46.170461e-6 + t * (105.56302e-9 - 280.54253e-12 * t))));
    return above / (1 + 16.879850e-3 * t) / 1000;
  }
}
