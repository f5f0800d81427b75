package gylebook.science;

/// A counterflow chiller whose two water films grow with the flow and with the warmth.
///
/// Warm water is thinner and carries heat to a wall better: after the turbulent law of Dittus and
/// Boelter a film goes with `m^0.8 k^0.6 mu^-0.4`. So the resistances are those at 20 C and 1 kg/s,
/// and the UA follows from flows and mean temperatures. On an exchanger that others measured,
/// learnt on three trials, this forecasts the fourth within 0.17 K where films without warmth come
/// to 0.20 and one constant UA to nearly 1 K.
public final class ChillerFilms {
  private static final double SCALE_C = 20;
  private static final double WATER_J_PER_KG_K = 4184;
  private static final int MOST_TURNS = 60;
  private static final double CLOSE_K = 1e-9;

  private ChillerFilms() {}

  /// How much better a turbulent film of water passes heat at a temperature than at 20 C.
  ///
  /// `g = (k/k20)^0.6 (mu20/mu)^0.4`
  ///
  /// - Valid: 0 to 100 C; refused outside. 1.6 at 95 C. Wort is stickier but goes alike.
  /// - Source: Dittus and Boelter, in Bergman; properties by {@link TubeFilm} and {@link
  ///   WaterViscosity}.
  @Reckoned(
      name = "film-warmth",
      says = "How much better a film of warm water passes heat than one of 20 C.",
      equation = "g = (k/k20)^0.6 (mu20/mu)^0.4",
      range = "turbulent water, 0 to 100 C; refused outside")
  @Source(key = "bergman-2011", at = "Dittus-Boelter", trust = Trust.SECOND_HAND)
  @Source(key = "ramires-1995", at = "reference correlation", trust = Trust.SECOND_HAND)
  public static double warmthFactor(double waterC) {
    double conducts = TubeFilm.conductivityWPerMK(waterC) / TubeFilm.conductivityWPerMK(SCALE_C);
    double thinner = WaterViscosity.waterPaSec(SCALE_C) / WaterViscosity.waterPaSec(waterC);
    return Math.pow(conducts, 0.6) * Math.pow(thinner, 0.4);
  }

  /// UA of a chiller from its flows and the mean temperature of each stream.
  ///
  /// `1/UA = a/(m_hot^0.8 g(T_hot)) + b/(m_cold^0.8 g(T_cold))`
  ///
  /// - Valid: turbulent on both sides; 0 to 100 C, refused outside. Learn a and b from steady
  ///   readings at several flows.
  /// - Source: two resistances in series; the rest as above.
  ///
  /// @param hotKPerW resistance of the hot film at 1 kg/s and 20 C
  /// @param coldKPerW the cold film's
  @Reckoned(
      name = "chiller-ua-warm",
      says = "How well a chiller passes heat at these flows and temperatures.",
      equation = "1/UA = a/(m_hot^0.8 g(T_hot)) + b/(m_cold^0.8 g(T_cold))",
      range = "turbulent on both sides, 0 to 100 C; learn a and b from readings at several flows")
  @Source(key = "energy-balance", at = "two resistances in series", trust = Trust.COMPUTED)
  @Source(key = "turbulent-power", at = "0.8 of turbulent films", trust = Trust.SECOND_HAND)
  public static double uaWPerK(
      double hotKgPerSec,
      double hotC,
      double coldKgPerSec,
      double coldC,
      double hotKPerW,
      double coldKPerW) {
    return Chiller.uaWPerK(
        hotKgPerSec,
        coldKgPerSec,
        Require.above0("film a", hotKPerW) / warmthFactor(hotC),
        Require.above0("film b", coldKPerW) / warmthFactor(coldC));
  }

  /// Outlets of a counterflow chiller from its two films: the UA goes with the mean temperatures
  /// that it brings about, which is solved by turns.
  ///
  /// - Valid: as the UA; the wort warmer than the water.
  /// - Source: as above, with effectiveness and transfer units.
  @Reckoned(
      name = "counterflow-chiller-films",
      says = "How cold wort leaves a chiller whose two films are known, and how hot the water.",
      equation = "Q = eps Cmin (T_wort - T_water) with the UA of the mean temperatures",
      range = "turbulent on both sides, steady, 0 to 100 C; the water may be hot enough to scald")
  @Source(key = "bergman-2011", at = "effectiveness and transfer units", trust = Trust.SECOND_HAND)
  @Source(key = "measured-exchanger", at = "four trials", trust = Trust.READ)
  public static Chiller.Outlets outlets(
      double wortKgPerSec,
      @Span(least = 0, most = 100, beyond = "the properties of water that warm the films end there")
          double wortC,
      double waterKgPerSec,
      @Span(least = 0, most = 100, beyond = "the properties of water that warm the films end there")
          double waterC,
      double hotKPerW,
      double coldKPerW,
      @Usually(4000) double wortJPerKgK) {
    Require.above0("wort above water in K", wortC - waterC);
    double wortOutC = (wortC + waterC) / 2;
    double waterOutC = wortOutC;
    for (int turn = 0; turn < MOST_TURNS; turn++) {
      double ua =
          uaWPerK(
              wortKgPerSec,
              (wortC + wortOutC) / 2,
              waterKgPerSec,
              (waterC + waterOutC) / 2,
              hotKPerW,
              coldKPerW);
      Chiller.Outlets next =
          Chiller.counterflow(
              wortKgPerSec, wortC, waterKgPerSec, waterC, ua, wortJPerKgK, WATER_J_PER_KG_K);
      double moved = Math.abs(next.wortC() - wortOutC) + Math.abs(next.waterC() - waterOutC);
      wortOutC = next.wortC();
      waterOutC = next.waterC();
      if (moved < CLOSE_K) {
        return next;
      }
    }
    throw new IllegalArgumentException(
        "the chiller's outlets did not settle in " + MOST_TURNS + " turns; look at the flows.");
  }
}
