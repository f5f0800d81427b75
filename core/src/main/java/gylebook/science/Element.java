package gylebook.science;

/// The heating element: its power on a voltage, its load on the wort.
public final class Element {
  /// Loads that sheaths stand in clean water.
  public static final Validity RANGE =
      new Validity(
          "surface load in W/m²",
          0,
          46_500,
          "a sheath of plain stainless is overloaded above, of heat-resisting alloy from 62 000 on;"
              + " thick mash scorches far below, and oil wants less than 18 600");

  private Element() {}

  /// Power on another voltage than the plate's: `P = P0 (V/V0)^2`, at a constant resistance.
  @Source(key = "ohms-law", at = "power of a resistance", trust = Trust.COMPUTED)
  @Reckoned(
      name = "element-power",
      says = "What power does an element give on a voltage?",
      equation = "P = P0 (V/V0)^2",
      range = "a plate voltage above 0; wiring follows local codes and licensed people")
  public static double powerW(double plateW, double plateV, double mainsV) {
    double share = Require.notBelow0("mains voltage", mainsV) / Require.above0("plate", plateV);
    return Require.notBelow0("plate power", plateW) * share * share;
  }

  /// Share of the power lost when the voltage sags: `1 - (V/V0)^2`. Negative when it rises.
  @Source(key = "ohms-law", at = "power of a resistance", trust = Trust.COMPUTED)
  @Reckoned(
      name = "sag-loss",
      says = "What share of its power does an element lose when the voltage sags?",
      equation = "loss = 1 - (V/V0)^2",
      range = "a voltage of 0 or more; refused otherwise")
  public static double sagLossFrac(@Usually(0.95) double voltageRatio) {
    return 1 - Require.notBelow0("voltage ratio", voltageRatio) * voltageRatio;
  }

  /// Hot resistance by the plate: `R = V0^2 / P0`.
  @Source(key = "ohms-law", at = "power of a resistance", trust = Trust.COMPUTED)
  @Reckoned(
      name = "element-resistance",
      says = "What resistance has an element by its plate?",
      equation = "R = V0^2 / P0",
      range = "everything above 0; refused otherwise")
  public static double resistanceOhm(double plateW, double plateV) {
    return Require.above0("plate voltage", plateV) * plateV / Require.above0("power", plateW);
  }

  /// Heat through a square metre of sheath: `q = P / (pi d L)`.
  ///
  /// Greatest loads read: stainless 304 sheath 30 W/in2 (4.65 W/cm2), 40 Incoloy, 55 copper in
  /// clean water; oil that stands still 10 to 12, that is moved 20 to 22, so flow about doubles
  /// what a liquid bears. Thick mash scorches far below these.
  @Source(key = "sheath-loads", at = "sheath table, to compare with", trust = Trust.READ)
  @Reckoned(
      name = "surface-load",
      says = "How hard does an element's sheath heat each area?",
      equation = "q = P / (pi d L)",
      range = "everything above 0; stainless 304 bears 46 500, Incoloy 62 000 W/m2 in clean water")
  public static double surfaceLoadWPerM2(
      double powerW, @Usually(0.008) double sheathM, double lengthM) {
    return Require.notBelow0("power", powerW)
        / (Math.PI * Require.above0("sheath", sheathM) * Require.above0("length", lengthM));
  }

  /// How much hotter the sheath is than the wort: `dT = q / h`.
  @Source(key = "energy-balance", at = "definition of the film", trust = Trust.COMPUTED)
  @Reckoned(
      name = "sheath-superheat",
      says = "How much hotter than the wort is the element's sheath?",
      equation = "dT = q / h",
      range = "h about 1500 still, 4000 stirred (from memory); below boiling at the sheath")
  public static double superheatK(double loadWPerM2, @Usually(1500) double filmWPerM2K) {
    return Require.notBelow0("load", loadWPerM2) / Require.above0("film", filmWPerM2K);
  }

  /// How much a stream warms as it passes the element: `dT = P / (m c)`.
  @Source(key = "energy-balance", at = "heat of a stream", trust = Trust.COMPUTED)
  @Reckoned(
      name = "stream-rise",
      says = "How much does the stream warm as it passes the element?",
      equation = "dT = P / (Q rho c)",
      range = "a flow above 0; refused without one")
  public static double streamRiseK(
      double powerW,
      double flowLPerSec,
      @Usually(0.98) double densityKgPerL,
      @Usually(4186) double heatJPerKgK) {
    return Require.notBelow0("power", powerW)
        / (Require.above0("flow", flowLPerSec)
            * Require.above0("density", densityKgPerL)
            * Require.above0("heat", heatJPerKgK));
  }
}
