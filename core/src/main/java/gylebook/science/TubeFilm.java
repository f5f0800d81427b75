package gylebook.science;

/// How well water or wort in a tube passes heat to its wall.
///
/// Two respected correlations stand side by side; they agree to a fifth, which is the doubt of
/// either. In a chiller this is the inside film only: scale, the wall and the other side come on
/// top, and round a coil in still wort natural convection (500 to 1000 W/(m2 K), from memory)
/// governs.
public final class TubeFilm {
  /// Where both correlations were made for.
  public static final Validity RANGE =
      new Validity(
          "Reynolds number in 1",
          10_000,
          5e6,
          "the flow is not fully turbulent, and the two disagree more");

  private static final double SCALE_W_PER_M_K = 0.6065;
  private static final double SCALE_KELVIN = 298.15;
  private static final double M3_PER_L = 1e-3;

  private TubeFilm() {}

  /// Film coefficients by both correlations.
  ///
  /// @param gnielinskiWPerM2K after Gnielinski, better between 3000 and 10 000
  /// @param dittusBoelterWPerM2K after Dittus and Boelter, the liquid being cooled
  /// @param reynoldsNumber inertia over friction
  /// @param turbulent whether the flow is fully turbulent (Reynolds above 10 000)
  public record Films(
      double gnielinskiWPerM2K,
      double dittusBoelterWPerM2K,
      double reynoldsNumber,
      boolean turbulent) {}

  /// Heat conductivity of liquid water.
  ///
  /// `k = 0.6065 (-1.48445 + 4.12292 T* - 1.63866 T*^2)`, `T* = T/298.15`
  ///
  /// - Valid: 1 to 97 C within 1 %; refused outside 0 to 100 C. One Java library gives 0.5995 at 20
  ///   C where the formulation of 2011 gives 0.5980.
  /// - Source: reference data of 1995, second-hand.
  @Reckoned(
      name = "water-conductivity",
      says = "How well water conducts heat.",
      equation = "k = 0.6065 (-1.48445 + 4.12292 T* - 1.63866 T*^2), T* = T/298.15",
      range = "0 to 100 C, refused outside; within 1 %")
  @Source(key = "ramires-1995", at = "reference correlation", trust = Trust.SECOND_HAND)
  public static double conductivityWPerMK(@Usually(20) double waterC) {
    double kelvin = Require.within("water temperature in C", waterC, 0, 100) + 273.15;
    double t = kelvin / SCALE_KELVIN;
    return SCALE_W_PER_M_K * (-1.48445 + t * (4.12292 - 1.63866 * t));
  }

  /// Film coefficient of water in a smooth tube, by two correlations.
  ///
  /// `Nu = (f/8)(Re - 1000) Pr/(1 + 12.7 sqrt(f/8)(Pr^(2/3) - 1))` and `Nu = 0.023 Re^0.8 Pr^0.3`
  ///
  /// - Valid: Reynolds 3000 to 5 million for the first, above 10 000 for the second (said in the
  ///   answer); refused below 3000, where the flow is laminar. Give or take a fifth. Wort is a
  ///   little worse than water: it is stickier.
  /// - Source: Gnielinski 1976; Dittus and Boelter as in Bergman. Both second-hand.
  @Reckoned(
      name = "tube-film",
      says = "How well water in a tube passes heat to the wall, by two correlations.",
      equation = "Nu after Gnielinski; Nu = 0.023 Re^0.8 Pr^0.3; h = Nu k/D",
      range = "turbulent, Reynolds above 3000, refused below; 0 to 100 C; give or take 20 %")
  @Source(key = "gnielinski-1976", at = "turbulent flow in tubes", trust = Trust.SECOND_HAND)
  @Source(key = "bergman-2011", at = "Dittus-Boelter", trust = Trust.SECOND_HAND)
  public static Films films(
      @Usually(0.0095) double boreM, double flowLPerSec, @Usually(55) double waterC) {
    Require.above0("bore in m", boreM);
    Require.above0("flow in L/s", flowLPerSec);
    double density = WaterDensity.waterKgPerL(waterC) * Air.L_PER_M3;
    double viscosity = WaterViscosity.waterPaSec(waterC);
    double conductivity = conductivityWPerMK(waterC);
    double heat = WaterHeat.waterJPerKgK(waterC, 101.325);
    double speed = flowLPerSec * M3_PER_L * 4 / (Math.PI * boreM * boreM);
    double re = Require.within("Reynolds number", density * speed * boreM / viscosity, 3000, 5e6);
    double pr = heat * viscosity / conductivity;
    double friction = Math.pow(0.790 * Math.log(re) - 1.64, -2) / 8;
    double gnielinski =
        friction * (re - 1000) * pr / (1 + 12.7 * Math.sqrt(friction) * (Math.cbrt(pr * pr) - 1));
    double dittus = 0.023 * Math.pow(re, 0.8) * Math.pow(pr, 0.3);
    double perNumber = conductivity / boreM;
    return new Films(gnielinski * perNumber, dittus * perNumber, re, re > 10_000);
  }
}
