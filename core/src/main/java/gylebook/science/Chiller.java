package gylebook.science;

/// Heat exchange between hot wort and cold water: effectiveness and transfer units.
///
/// One learnt UA is not enough: it moved by a factor of 1.3 to 1.9 with the flows on one measured
/// exchanger. Learn the two film resistances instead.
public final class Chiller {
  /// Specific heat of chilling water between 10 and 90 C, from memory of steam tables.
  private static final double WATER_J_PER_KG_K = 4184;

  /// Wort as it comes from a kettle.
  public static final Validity WORT_RANGE =
      new Validity("wort temperature in C", 0, 105, "no wort is liquid there");

  /// Water on its way in and out.
  public static final Validity WATER_RANGE =
      new Validity(
          "water temperature in C",
          0,
          60,
          "above, it scalds within seconds and softens hoses; below, it is ice");

  private Chiller() {}

  /// How wort and water pass each other.
  public enum Passing {
    /// Against each other, in two channels.
    COUNTERFLOW,
    /// Side by side, in two channels.
    PARALLEL,
    /// Water in a coil, wort stirred in the kettle: one temperature all around.
    MIXED_KETTLE
  }

  /// What leaves a chiller.
  ///
  /// @param wortC the wort's temperature
  /// @param waterC the water's temperature
  /// @param heatW heat that passed
  /// @param effectivenessFrac of the heat that could pass
  public record Outlets(double wortC, double waterC, double heatW, double effectivenessFrac) {}

  /// Share of the possible heat that passes, for any arrangement.
  @Source(key = "bergman-2011", at = "effectiveness and transfer units", trust = Trust.SECOND_HAND)
  public static double effectivenessFrac(
      Passing passing, double transferNumber, double capacityRatio) {
    return switch (passing) {
      case COUNTERFLOW -> counterflowFrac(transferNumber, capacityRatio);
      case PARALLEL -> parallelFrac(transferNumber, capacityRatio);
      case MIXED_KETTLE -> mixedKettleFrac(transferNumber);
    };
  }

  /// Counterflow: `(1 - e) / (1 - Cr e)`, `e = exp(-NTU (1 - Cr))`; `NTU/(1 + NTU)` at Cr = 1.
  @Source(key = "bergman-2011", at = "effectiveness and transfer units", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "chiller-effectiveness-counterflow",
      says = "What share of the possible heat passes in counterflow?",
      equation = "eps = (1 - e)/(1 - Cr e), e = exp(-NTU (1 - Cr)); NTU/(1 + NTU) at Cr = 1",
      range = "transfer units of 0 or more, capacity ratio 0 to 1; refused otherwise")
  public static double counterflowFrac(double transferNumber, double capacityRatio) {
    Require.notBelow0("transfer units", transferNumber);
    Require.within("capacity ratio", capacityRatio, 0, 1);
    double unlike = 1 - capacityRatio;
    // Near equal streams the quotient loses its digits; the limit is smooth there.
    if (transferNumber * unlike < 1e-9) {
      return transferNumber / (1 + transferNumber);
    }
    double gone = -Math.expm1(-transferNumber * unlike);
    return gone / (unlike + capacityRatio * gone);
  }

  /// Parallel flow: `(1 - exp(-NTU (1 + Cr))) / (1 + Cr)`.
  @Source(key = "bergman-2011", at = "effectiveness and transfer units", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "chiller-effectiveness-parallel",
      says = "What share of the possible heat passes in parallel flow?",
      equation = "eps = (1 - exp(-NTU (1 + Cr)))/(1 + Cr)",
      range = "transfer units of 0 or more, capacity ratio 0 to 1; refused otherwise")
  public static double parallelFrac(double transferNumber, double capacityRatio) {
    Require.notBelow0("transfer units", transferNumber);
    Require.within("capacity ratio", capacityRatio, 0, 1);
    return -Math.expm1(-transferNumber * (1 + capacityRatio)) / (1 + capacityRatio);
  }

  /// A coil in a stirred kettle: `1 - exp(-NTU)`, with NTU and share both of the water's stream.
  @Source(key = "bergman-2011", at = "effectiveness and transfer units", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "chiller-effectiveness-immersion",
      says = "What share of the possible heat does a coil's water take from a stirred kettle?",
      equation = "eps = 1 - exp(-NTU)",
      range = "transfer units of 0 or more; refused otherwise; still wort takes longer")
  public static double mixedKettleFrac(double transferNumber) {
    return -Math.expm1(-Require.notBelow0("transfer units", transferNumber));
  }

  /// Crossflow, the stronger stream mixed: `(1 - exp(-Cr (1 - exp(-NTU))))/Cr`.
  @Source(key = "bergman-2011", at = "effectiveness and transfer units", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "chiller-effectiveness-crossflow",
      says = "What share of the possible heat passes in crossflow, the stronger stream mixed?",
      equation = "eps = (1 - exp(-Cr (1 - exp(-NTU))))/Cr; 1 - exp(-NTU) at Cr = 0",
      range = "transfer units of 0 or more, capacity ratio 0 to 1; refused otherwise")
  public static double crossflowFrac(double transferNumber, double capacityRatio) {
    Require.within("capacity ratio", capacityRatio, 0, 1);
    double alone = mixedKettleFrac(transferNumber);
    return capacityRatio < 1e-9 ? alone : -Math.expm1(-capacityRatio * alone) / capacityRatio;
  }

  /// UA of two films whose strength grows with the flow to the power 0.8.
  ///
  /// `1/UA = a/m_hot^0.8 + b/m_cold^0.8`; a and b are the films' resistances at 1 kg/s.
  @Source(key = "energy-balance", at = "two resistances in series", trust = Trust.COMPUTED)
  @Source(key = "turbulent-power", at = "0.8 of turbulent films", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "chiller-ua",
      says = "How well does a chiller pass heat at these flows?",
      equation = "1/UA = a/m_hot^0.8 + b/m_cold^0.8",
      range = "turbulent on both sides; learn a and b from steady readings at several flows")
  public static double uaWPerK(
      double hotKgPerSec, double coldKgPerSec, double hotKPerW, double coldKPerW) {
    double hot =
        Require.above0("film a", hotKPerW) / turbulentNumber(Require.above0("hot", hotKgPerSec));
    double cold =
        Require.above0("film b", coldKPerW) / turbulentNumber(Require.above0("cold", coldKgPerSec));
    return 1 / (hot + cold);
  }

  /// Outlets of a counterflow chiller.
  @Source(key = "bergman-2011", at = "effectiveness and transfer units", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "counterflow-chiller",
      says = "How cold does wort leave a counterflow chiller, and how hot the water?",
      equation = "Q = eps Cmin (T_wort - T_water), T_out = T_in -+ Q/C",
      range = "steady flows above 0, no loss to the room; the water may be hot enough to scald")
  public static Outlets counterflow(
      double wortKgPerSec,
      double wortC,
      double waterKgPerSec,
      double waterC,
      double uaWPerK,
      @Usually(4000) double wortJPerKgK,
      @Usually(WATER_J_PER_KG_K) double waterJPerKgK) {
    Require.temperatureC("wort", wortC);
    Require.temperatureC("water", waterC);
    double wort = Require.above0("wort flow", wortKgPerSec) * Require.above0("heat", wortJPerKgK);
    double water =
        Require.above0("water flow", waterKgPerSec) * Require.above0("heat", waterJPerKgK);
    double least = Math.min(wort, water);
    double share =
        counterflowFrac(Require.notBelow0("UA", uaWPerK) / least, least / Math.max(wort, water));
    double heat = share * least * (wortC - waterC);
    return new Outlets(wortC - heat / wort, waterC + heat / water, heat, share);
  }

  /// UA from one steady pair of outlets: transfer units of counterflow read backwards.
  ///
  /// `NTU = ln((eps - 1)/(eps Cr - 1))/(Cr - 1)`, `eps/(1 - eps)` at Cr = 1.
  @Source(key = "bergman-2011", at = "effectiveness and transfer units", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "transfer-units-counterflow",
      says = "How many transfer units does an effectiveness in counterflow mean?",
      equation = "NTU = ln((eps - 1)/(eps Cr - 1))/(Cr - 1); eps/(1 - eps) at Cr = 1",
      range = "effectiveness from 0 to below 1, capacity ratio 0 to 1; refused otherwise")
  public static double transferNumber(double effectivenessFrac, double capacityRatio) {
    Require.within("capacity ratio", capacityRatio, 0, 1);
    Require.notBelow0("effectiveness", effectivenessFrac);
    Require.above0("one less effectiveness", 1 - effectivenessFrac);
    double unlike = 1 - capacityRatio;
    double odds = effectivenessFrac / (1 - effectivenessFrac);
    return unlike * odds < 1e-9 ? odds : Math.log1p(unlike * odds) / unlike;
  }

  /// What steady readings of a counterflow chiller teach.
  ///
  /// @param uaWPerK heat passed per kelvin of mean difference
  /// @param heatW mean of what the hot stream lost and the cold one gained
  /// @param balanceFrac gain over loss, less one: far from 0 a reading or a flow is wrong
  public record Learnt(double uaWPerK, double heatW, double balanceFrac) {}

  /// UA of a counterflow chiller from its four temperatures and two flows.
  ///
  /// `UA = Q/dT_lm`, `dT_lm = (d1 - d2)/ln(d1/d2)`, Q the mean of both heats
  ///
  /// - Valid: steady, the temperatures settled; refused where the streams cross (no counterflow
  ///   chiller can) or the wort is not cooled. A balance more than 0.1 off says a flow or a
  ///   thermometer is wrong. One UA holds for these flows only: learn the two films from several.
  @Source(key = "bergman-2011", at = "logarithmic mean difference", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "chiller-ua-measured",
      says = "How well a counterflow chiller passes heat, from its flows and temperatures.",
      equation = "UA = Q (ln d1 - ln d2)/(d1 - d2), Q the mean of both heats",
      range = "steady; holds for these flows; a balance more than 0.1 off is a wrong reading")
  public static Learnt learnt(
      double wortKgPerSec,
      double wortInC,
      double wortOutC,
      double waterKgPerSec,
      double waterInC,
      double waterOutC,
      @Usually(4000) double wortJPerKgK) {
    double wort = Require.above0("wort flow", wortKgPerSec) * Require.above0("heat", wortJPerKgK);
    double water = Require.above0("water flow", waterKgPerSec) * WATER_J_PER_KG_K;
    double lostW = wort * Require.above0("cooling of the wort in K", wortInC - wortOutC);
    double gainedW = water * Require.above0("warming of the water in K", waterOutC - waterInC);
    double warm = Require.above0("wort in above water out in K", wortInC - waterOutC);
    double cold = Require.above0("wort out above water in in K", wortOutC - waterInC);
    double apart = Math.log(warm / cold);
    double mean = Math.abs(apart) < 1e-6 ? (warm + cold) / 2 : (warm - cold) / apart;
    double heatW = (lostW + gainedW) / 2;
    return new Learnt(heatW / mean, heatW, gainedW / lostW - 1);
  }

  /// Time in which a coil cools a stirred kettle.
  ///
  /// `t = M c / (C_w eps) ln((T0 - Tw)/(T - Tw))`, `eps = 1 - exp(-UA/C_w)`. Refused for a target
  /// at or below the water's temperature, which is never reached.
  @Source(key = "energy-balance", at = "stirred kettle", trust = Trust.COMPUTED)
  @Reckoned(
      name = "immersion-chilling-time",
      says = "How long does a coil take to cool a stirred kettle?",
      equation = "t = M c/(C_w eps) ln((T0 - Tw)/(T - Tw)), eps = 1 - exp(-UA/C_w)",
      range = "a target between water and start; refused otherwise; still wort takes longer")
  public static double immersionSec(
      double wortKg,
      @Usually(95) double startC,
      @Usually(20) double targetC,
      double waterKgPerSec,
      double waterC,
      @Usually(400) double uaWPerK,
      @Usually(4000) double wortJPerKgK) {
    double water = Require.above0("water flow", waterKgPerSec) * WATER_J_PER_KG_K;
    double taken = water * mixedKettleFrac(Require.above0("UA", uaWPerK) / water);
    Require.notBelow0("start above target", startC - targetC);
    double left = (startC - waterC) / Require.above0("target above water", targetC - waterC);
    return Require.above0("wort", wortKg)
        * Require.above0("heat", wortJPerKgK)
        / taken
        * Math.log(left);
  }

  /// What a coil may pass before anybody measured it.
  ///
  /// @param areaM2 its outside
  /// @param stillLeastWPerK in wort that stands, at least
  /// @param stillMostWPerK the same at most
  /// @param stirredLeastWPerK in wort that is stirred or whirls, at least
  /// @param stirredMostWPerK the same at most
  public record Coil(
      double areaM2,
      double stillLeastWPerK,
      double stillMostWPerK,
      double stirredLeastWPerK,
      double stirredMostWPerK) {}

  /// How well a coil passes heat, from its size.
  ///
  /// `UA = U pi d L`, U 340 to 455 W/(m2 K) from still water through copper to water
  ///
  /// - Valid: a bare coil wholly in the wort. Outside, natural convection governs: stirring or a
  ///   whirlpool brings two to three times as much (from memory). A start, until one cooling was
  ///   timed.
  /// - Source: a table of coefficients, read; the factor of stirring from memory.
  @Source(key = "coil-coefficients", at = "still water, copper, water", trust = Trust.READ)
  @Reckoned(
      name = "coil-ua",
      says = "How well does a coil pass heat in still and in stirred wort, by its size?",
      equation = "UA = U pi d L; U 340 to 455 W/(m2 K) still, two to three times that stirred",
      range = "a bare coil wholly in the wort; a start until one cooling was timed")
  public static Coil coil(double lengthM, @Usually(0.0095) double outerM) {
    double areaM2 =
        Math.PI
            * Require.within("outside of the tube in m", outerM, 0.001, 0.2)
            * Require.within("length of the coil in m", lengthM, 0, 1000);
    double least = 340 * areaM2;
    double most = 455 * areaM2;
    return new Coil(areaM2, least, most, 2 * least, 3 * most);
  }

  /// Least water that an ideal counterflow chiller needs per litre of wort.
  @Source(key = "energy-balance", at = "ideal counterflow", trust = Trust.COMPUTED)
  @Reckoned(
      name = "least-chilling-water",
      says = "How much water does chilling take at least, per litre of wort?",
      equation = "ratio = rho c (T1 - T2) / (c_w (T1 - Tw)), water of 1 kg/L",
      range = "water colder than the target; refused otherwise; a real chiller needs more")
  public static double leastWaterRatio(
      @Usually(95) double startC,
      @Usually(20) double targetC,
      double waterC,
      @Usually(1.03) double densityKgPerL,
      @Usually(4000) double wortJPerKgK) {
    Require.notBelow0("target above water", targetC - waterC);
    Require.notBelow0("start above target", startC - targetC);
    return Require.above0("density", densityKgPerL)
        * Require.above0("heat", wortJPerKgK)
        * (startC - targetC)
        / (WATER_J_PER_KG_K * Require.above0("start above water", startC - waterC));
  }

  private static double turbulentNumber(double flowKgPerSec) {
    return Math.pow(flowKgPerSec, 0.8);
  }
}
