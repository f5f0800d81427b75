package gylebook.science;

/// What the recirculation hose costs in heat and in time.
///
/// The air film outside decides, so the loss per kelvin hardly depends on the flow and the drop is
/// inversely proportional to it. With a healthy flow a hose explains less than half a kelvin.
public final class HoseHeat {
  /// Silicone rubber: measured 0.224 to 0.249 on plain sheet at 26 C.
  private static final double SILICONE_W_PER_M_K = 0.23;

  private static final int MOST_TURNS = 60;

  /// Wort in a hose.
  public static final Validity RANGE =
      new Validity(
          "wort temperature in C", 1, 105, "the liquid is taken as wort, neither ice nor steam");

  private HoseHeat() {}

  /// A hose: bores and length, wall conductivity, emissivity of its outside.
  public record Hose(
      double boreM, double outerM, double lengthM, double wallWPerMK, double emissivityFrac) {
    /// Refuses what is no hose.
    public Hose {
      Require.above0("bore", boreM);
      if (!(outerM > boreM)) {
        throw new IllegalArgumentException(
            "outside diameter is " + outerM + " m; it must exceed the bore of " + boreM + " m.");
      }
      Require.above0("hose length", lengthM);
      Require.above0("wall conductivity", wallWPerMK);
      Require.within("emissivity", emissivityFrac, 0, 1);
    }

    /// A hose of silicone rubber.
    public static Hose silicone(double boreM, double outerM, double lengthM) {
      return new Hose(boreM, outerM, lengthM, SILICONE_W_PER_M_K, 0.9);
    }
  }

  /// What flows in it.
  public record Liquid(
      double densityKgPerM3, double viscosityPaSec, double conductivityWPerMK, double heatJPerKgK) {
    /// Refuses what is no liquid.
    public Liquid {
      Require.above0("density", densityKgPerM3);
      Require.above0("viscosity", viscosityPaSec);
      Require.above0("conductivity", conductivityWPerMK);
      Require.above0("specific heat", heatJPerKgK);
    }

    /// Water at mash temperature, near enough to wort for a hose.
    public static Liquid atMash() {
      return new Liquid(980, 4.3e-4, 0.655, 4186);
    }
  }

  /// How well silicone rubber conducts heat: 0.23 W/(m K), give or take 0.03.
  @Source(key = "silicone-sheet", at = "plain sheets, 26 C", trust = Trust.READ)
  @Reckoned(
      name = "silicone-conductivity",
      says = "How well does a silicone hose's wall conduct heat?",
      equation = "k = 0.23",
      range = "plain silicone rubber near 26 C, give or take 0.03")
  public static double siliconeWPerMK() {
    return SILICONE_W_PER_M_K;
  }

  /// Resistance of a metre of hose wall: `ln(do/di) / (2 pi k)`.
  @Source(key = "energy-balance", at = "conduction through a tube's wall", trust = Trust.COMPUTED)
  @Reckoned(
      name = "hose-wall-resistance",
      says = "How much does a metre of hose wall resist heat?",
      equation = "R = ln(do/di) / (2 pi k)",
      range = "outside wider than the bore; refused otherwise")
  public static double wallMKPerW(
      double boreM, double outerM, @Usually(SILICONE_W_PER_M_K) double wallWPerMK) {
    Require.above0("bore", boreM);
    Require.above0("outside over bore, less one", outerM / boreM - 1);
    return Math.log(outerM / boreM) / (2 * Math.PI * Require.above0("conductivity", wallWPerMK));
  }

  /// Resistance of a metre from the liquid to the wall's inside: `1 / (Nu pi k)`.
  ///
  /// Below Reynolds 3000 Hausen's form, above it Gnielinski's with `f = (0.790 ln Re - 1.64)^-2`.
  @Source(key = "gnielinski-1976", at = "turbulent flow in tubes", trust = Trust.SECOND_HAND)
  @Source(key = "hausen-1943", at = "laminar flow in short tubes", trust = Trust.SECOND_HAND)
  public static double insideMKPerW(Hose hose, Liquid liquid, double flowLPerSec) {
    double prandtl = liquid.heatJPerKgK * liquid.viscosityPaSec / liquid.conductivityWPerMK;
    double reynolds = reynoldsNumber(hose, liquid, flowLPerSec);
    double nusselt;
    if (reynolds < 3000) {
      double entry = hose.boreM / hose.lengthM * reynolds * prandtl;
      nusselt = 3.66 + 0.0668 * entry / (1 + 0.04 * Math.cbrt(entry * entry));
    } else {
      double friction = Math.pow(0.790 * Math.log(reynolds) - 1.64, -2) / 8;
      nusselt =
          friction
              * (reynolds - 1000)
              * prandtl
              / (1 + 12.7 * Math.sqrt(friction) * (Math.cbrt(prandtl * prandtl) - 1));
    }
    return 1 / (nusselt * Math.PI * liquid.conductivityWPerMK);
  }

  /// Ratio of inertia to friction of the flow inside.
  @Source(key = "bergman-2011", at = "definition of Reynolds' number", trust = Trust.COMPUTED)
  public static double reynoldsNumber(Hose hose, Liquid liquid, double flowLPerSec) {
    return 4e-3
        * Require.above0("flow", flowLPerSec)
        * liquid.densityKgPerM3
        / (Math.PI * hose.boreM * liquid.viscosityPaSec);
  }

  /// Heat a metre of hose loses per kelvin above a still room.
  ///
  /// `UA' = 1 / (1/(h_i pi d_i) + ln(d_o/d_i)/(2 pi k) + 1/(h_o pi d_o))`. The outside coefficient
  /// (convection plus radiation) depends on the outside temperature, which is iterated until it
  /// moves by less than a millionth of a kelvin.
  @Source(key = "churchill-chu-1975-tube", at = "all Rayleigh numbers", trust = Trust.SECOND_HAND)
  @Source(key = "energy-balance", at = "three resistances in series", trust = Trust.COMPUTED)
  public static double lossWPerMK(
      Hose hose,
      Liquid liquid,
      double flowLPerSec,
      double wortC,
      double roomC,
      double pressureKpa) {
    double within =
        insideMKPerW(hose, liquid, flowLPerSec)
            + wallMKPerW(hose.boreM, hose.outerM, hose.wallWPerMK);
    double outsideC = (wortC + roomC) / 2;
    double loss = 0;
    for (int turn = 0; turn < MOST_TURNS; turn++) {
      double film =
          WallHeat.tubeWPerM2K(hose.outerM, outsideC, roomC, pressureKpa)
              + Radiation.coefficientWPerM2K(hose.emissivityFrac, outsideC, roomC);
      double outward = 1 / (film * Math.PI * hose.outerM);
      loss = 1 / (within + outward);
      double nextC = roomC + (wortC - roomC) * loss * outward;
      if (Math.abs(nextC - outsideC) < 1e-6) {
        break;
      }
      outsideC = nextC;
    }
    return loss;
  }

  /// The same for a silicone hose carrying wort in still air at sea level.
  @Source(key = "churchill-chu-1975-tube", at = "all Rayleigh numbers", trust = Trust.SECOND_HAND)
  @Source(key = "silicone-sheet", at = "plain sheets, 26 C", trust = Trust.READ)
  @Reckoned(
      name = "hose-loss",
      says = "How much heat does a metre of silicone hose lose per kelvin above a still room?",
      equation = "UA' = 1 / (1/(h_i pi d_i) + ln(d_o/d_i)/(2 pi k) + 1/(h_o pi d_o))",
      range = "silicone, still air, liquid like water at mash temperature")
  public static double lossWPerMK(
      double boreM,
      double outerM,
      @Usually(2) double lengthM,
      double flowLPerSec,
      @Usually(66) double wortC,
      @Usually(20) double roomC) {
    return lossWPerMK(
        Hose.silicone(boreM, outerM, lengthM), Liquid.atMash(), flowLPerSec, wortC, roomC, 101.325);
  }

  /// Temperature at the hose's end: `T_out = T_a + (T_in - T_a) exp(-UA' L / (m c))`.
  @Source(key = "energy-balance", at = "heat of a stream in a tube", trust = Trust.COMPUTED)
  @Reckoned(
      name = "hose-outlet",
      says = "How hot does the wort leave the hose?",
      equation = "T_out = T_a + (T_in - T_a) exp(-UA' L / (m c))",
      range = "a flow above 0; refused without one")
  public static double outletC(
      double inletC,
      @Usually(20) double roomC,
      @Usually(0.66) double lossWPerMK,
      double lengthM,
      double flowKgPerSec,
      @Usually(4186) double heatJPerKgK) {
    Require.temperatureC("inlet", inletC);
    Require.temperatureC("room", roomC);
    double streamWPerK =
        Require.above0("flow", flowKgPerSec) * Require.above0("specific heat", heatJPerKgK);
    double lossWPerK =
        Require.notBelow0("loss", lossWPerMK) * Require.notBelow0("hose length", lengthM);
    return roomC + (inletC - roomC) * Math.exp(-lossWPerK / streamWPerK);
  }

  /// How much cooler the wort leaves a silicone hose in still air.
  @Source(key = "churchill-chu-1975-tube", at = "all Rayleigh numbers", trust = Trust.SECOND_HAND)
  @Source(key = "energy-balance", at = "heat of a stream in a tube", trust = Trust.COMPUTED)
  @Reckoned(
      name = "hose-drop",
      says = "How many kelvin does the wort lose in a silicone hose in still air?",
      equation = "drop = (T_in - T_a) (1 - exp(-UA' L / (m c)))",
      range = "silicone, still air, liquid like water at mash temperature, a flow above 0")
  public static double dropK(
      @Usually(0.0127) double boreM,
      @Usually(0.01905) double outerM,
      @Usually(2) double lengthM,
      double flowLPerSec,
      @Usually(66) double wortC,
      @Usually(20) double roomC) {
    Liquid liquid = Liquid.atMash();
    double loss = lossWPerMK(boreM, outerM, lengthM, flowLPerSec, wortC, roomC);
    double flowKgPerSec = flowLPerSec * liquid.densityKgPerM3 / Air.L_PER_M3;
    return wortC - outletC(wortC, roomC, loss, lengthM, flowKgPerSec, liquid.heatJPerKgK);
  }

  /// The same in a draught, whose outside coefficient is given (25 W/(m2 K) is a fair draught).
  @Source(key = "energy-balance", at = "heat of a stream in a tube", trust = Trust.COMPUTED)
  @Source(key = "gnielinski-1976", at = "turbulent flow in tubes", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "hose-drop-in-draught",
      says = "How many kelvin does the wort lose in a silicone hose in a draught?",
      equation = "drop = (T_in - T_a) (1 - exp(-UA' L / (m c))), h_o given",
      range = "silicone, liquid like water at mash temperature, a flow above 0")
  public static double draughtDropK(
      @Usually(0.0127) double boreM,
      @Usually(0.01905) double outerM,
      @Usually(2) double lengthM,
      double flowLPerSec,
      @Usually(66) double wortC,
      @Usually(20) double roomC,
      @Usually(25) double outsideWPerM2K) {
    Hose hose = Hose.silicone(boreM, outerM, lengthM);
    Liquid liquid = Liquid.atMash();
    double outward = 1 / (Require.above0("outside film", outsideWPerM2K) * Math.PI * outerM);
    double loss =
        1
            / (insideMKPerW(hose, liquid, flowLPerSec)
                + wallMKPerW(boreM, outerM, hose.wallWPerMK)
                + outward);
    double flowKgPerSec = flowLPerSec * liquid.densityKgPerM3 / Air.L_PER_M3;
    return wortC - outletC(wortC, roomC, loss, lengthM, flowKgPerSec, liquid.heatJPerKgK);
  }

  /// Time the liquid spends in the hose: volume over flow.
  ///
  /// A change of *temperature* takes about 1.4 times as long, for the hose's own heat (computed for
  /// silicone of this wall).
  @Source(key = "mass-balance", at = "volume over flow", trust = Trust.COMPUTED)
  @Reckoned(
      name = "hose-delay",
      says = "How long does the wort take through the hose?",
      equation = "t = (pi/4) d^2 L / Q; a temperature change takes about 1.4 times that",
      range = "a flow above 0; refused without one")
  public static double delaySec(
      @Usually(0.0127) double boreM, @Usually(2) double lengthM, double flowLPerSec) {
    Require.above0("bore", boreM);
    Require.notBelow0("hose length", lengthM);
    return 1000 * Math.PI / 4 * boreM * boreM * lengthM / Require.above0("flow", flowLPerSec);
  }
}
