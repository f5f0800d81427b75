package gylebook.science;

/// The power that merely holds a kettle at a temperature.
public final class HoldingPower {
  private HoldingPower() {}

  /// What holding takes, and where it goes.
  ///
  /// @param totalW all of it
  /// @param evaporationW carried off by vapour
  /// @param surfaceW given off by the surface or the lid
  /// @param wallW lost through the wall
  /// @param evaporationKgPerSec water that leaves
  public record Holding(
      double totalW,
      double evaporationW,
      double surfaceW,
      double wallW,
      double evaporationKgPerSec) {}

  /// Power that holds an open kettle below the boil.
  ///
  /// `P = A (E h_fg + h_s (T - Ta)) + UA (T - Ta)`. Refused at or above the boiling point. An
  /// element weaker than this at the boiling point never brings the open kettle to the boil.
  @Source(key = "shah-2014", at = "natural convection, quiet pool", trust = Trust.SECOND_HAND)
  @Source(key = "energy-balance", at = "heat of a held kettle", trust = Trust.COMPUTED)
  @Reckoned(
      name = "holding-power-open",
      says = "What power merely holds an open kettle at a temperature?",
      equation = "P = A (E h_fg + h_s (T - Ta)) + UA (T - Ta)",
      range = "below the boiling point, quiet air; refused above")
  public static Holding openW(
      double heldC,
      @Usually(0.42) double diameterM,
      @Usually(20) double roomC,
      @Usually(0.5) double humidityFrac,
      @Usually(101.325) double pressureKpa,
      @Usually(11) double surfaceWPerM2K,
      @Usually(3.68) double wallWPerK) {
    double areaM2 = Math.PI / 4 * Math.pow(Require.above0("diameter", diameterM), 2);
    double steam = areaM2 * Evaporation.openKgPerM2Sec(heldC, roomC, humidityFrac, pressureKpa);
    return holding(
        steam,
        steam * Evaporation.latentJPerKg(heldC),
        areaM2 * Require.notBelow0("surface coefficient", surfaceWPerM2K) * (heldC - roomC),
        Require.notBelow0("wall loss", wallWPerK) * (heldC - roomC));
  }

  /// The same with a lid on: vapour condenses on it and runs back, but for what leaks.
  ///
  /// The lid's own coefficient is taken as 6.5 W/(m2 K). The leaking share is an assumption: 0.06
  /// for a hose slot, up to 0.25 for a loose lid.
  @Source(key = "shah-2014", at = "natural convection, quiet pool", trust = Trust.SECOND_HAND)
  @Source(key = "energy-balance", at = "heat of a held kettle", trust = Trust.COMPUTED)
  @Reckoned(
      name = "holding-power-lid",
      says = "What power holds a kettle at a temperature with its lid on?",
      equation = "P = A (f E h_fg + 6.5 (T - Ta)) + UA (T - Ta)",
      range = "below the boiling point; the leaking share of 0.06 to 0.25 is assumed")
  public static Holding lidW(
      double heldC,
      @Usually(0.42) double diameterM,
      @Usually(20) double roomC,
      @Usually(0.5) double humidityFrac,
      @Usually(101.325) double pressureKpa,
      @Usually(0.06) double leakFrac,
      @Usually(3.68) double wallWPerK) {
    Require.within("leaking share", leakFrac, 0, 1);
    double lidWPerM2K = 6.5;
    Holding open = openW(heldC, diameterM, roomC, humidityFrac, pressureKpa, lidWPerM2K, wallWPerK);
    return holding(
        leakFrac * open.evaporationKgPerSec(),
        leakFrac * open.evaporationW(),
        open.surfaceW(),
        open.wallW());
  }

  private static Holding holding(
      double steamKgPerSec, double evaporationW, double surfaceW, double wallW) {
    return new Holding(
        evaporationW + surfaceW + wallW, evaporationW, surfaceW, wallW, steamKgPerSec);
  }
}
