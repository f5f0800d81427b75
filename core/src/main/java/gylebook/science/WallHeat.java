package gylebook.science;

/// Heat that leaves through the kettle's wall and its flat surfaces to still air.
///
/// A draught about doubles these figures and a jacket divides them by three to five (common
/// practice, no source): the rig learns its own.
public final class WallHeat {
  private WallHeat() {}

  /// Dimensionless heat transfer of a vertical wall (Churchill and Chu).
  ///
  /// `Nu = (0.825 + 0.387 Ra^(1/6) / (1 + (0.492/Pr)^(9/16))^(8/27))^2`, Ra = Gr Pr, for all Ra up
  /// to 1e12; beyond it still answers, as an extrapolation.
  @Source(key = "churchill-chu-1975-wall", at = "all Rayleigh numbers", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "natural-convection-wall",
      says = "How strong is natural convection at a vertical wall (Nusselt number)?",
      equation = "Nu = (0.825 + 0.387 Ra^(1/6) / (1 + (0.492/Pr)^(9/16))^(8/27))^2, Ra = Gr Pr",
      range = "Gr Pr up to 1e12; extrapolates above")
  public static double verticalNusseltNumber(
      @Span(
              least = 0,
              most = 1.4e12,
              beyond = "the law was measured up to a Rayleigh number of 1e12; it goes on")
          double grashofNumber,
      @Usually(0.71) double prandtlNumber) {
    return nusseltNumber(0.825, 0.492, grashofNumber * prandtlNumber, prandtlNumber);
  }

  /// The same for a horizontal tube, such as the hose.
  ///
  /// `Nu = (0.60 + 0.387 Ra^(1/6) / (1 + (0.559/Pr)^(9/16))^(8/27))^2`, for all Ra up to 1e12.
  @Source(key = "churchill-chu-1975-tube", at = "all Rayleigh numbers", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "natural-convection-tube",
      says = "How strong is natural convection around a horizontal tube (Nusselt number)?",
      equation = "Nu = (0.60 + 0.387 Ra^(1/6) / (1 + (0.559/Pr)^(9/16))^(8/27))^2, Ra = Gr Pr",
      range = "Gr Pr up to 1e12; extrapolates above")
  public static double tubeNusseltNumber(
      @Span(
              least = 0,
              most = 1.4e12,
              beyond = "the law was measured up to a Rayleigh number of 1e12; it goes on")
          double grashofNumber,
      @Usually(0.71) double prandtlNumber) {
    return nusseltNumber(0.60, 0.559, grashofNumber * prandtlNumber, prandtlNumber);
  }

  /// Convection at a bare upright wall, per area and kelvin; radiation comes on top.
  @Source(key = "churchill-chu-1975-wall", at = "all Rayleigh numbers", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "wall-convection",
      says = "How much heat does still air take off an upright wall per area and kelvin?",
      equation = "h = Nu k / L, air at the mean of wall and room",
      range = "still air, walls of centimetres to metres; a draught doubles it")
  public static double verticalWPerM2K(
      @Usually(0.35) double heightM,
      double wallC,
      @Usually(20) double roomC,
      @Usually(101.325) double pressureKpa) {
    Require.above0("height", heightM);
    double rayleigh = Air.rayleighNumber(heightM, wallC, roomC, pressureKpa);
    return filmWPerM2K(
        nusseltNumber(0.825, 0.492, rayleigh, Air.PRANDTL_NUMBER), heightM, wallC, roomC);
  }

  /// Convection around a horizontal tube, per area and kelvin; radiation comes on top.
  @Source(key = "churchill-chu-1975-tube", at = "all Rayleigh numbers", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "tube-convection",
      says = "How much heat does still air take off a horizontal tube per area and kelvin?",
      equation = "h = Nu k / D, air at the mean of surface and room",
      range = "still air; a draught doubles it")
  public static double tubeWPerM2K(
      double diameterM,
      double surfaceC,
      @Usually(20) double roomC,
      @Usually(101.325) double pressureKpa) {
    Require.above0("diameter", diameterM);
    double rayleigh = Air.rayleighNumber(diameterM, surfaceC, roomC, pressureKpa);
    return filmWPerM2K(
        nusseltNumber(0.60, 0.559, rayleigh, Air.PRANDTL_NUMBER), diameterM, surfaceC, roomC);
  }

  /// Convection from a round flat surface, hot side up (a lid, a water surface), without
  /// evaporation.
  ///
  /// `Nu = 0.54 Ra^(1/4)` up to Ra 1e7 and `0.15 Ra^(1/3)` above, length = area / rim = diameter/4.
  /// Held for Ra 1e4 to 1e11; outside it extrapolates. Beware a printed rule `0.22 dT^(1/3)` that
  /// goes about with SI units: it makes sense only in Btu/(h ft2 F).
  @Source(key = "bergman-2011", at = "horizontal plates", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "top-convection",
      says = "How much heat does still air take off a lid or a flat top per area and kelvin?",
      equation = "Nu = 0.54 Ra^(1/4) to 1e7, then 0.15 Ra^(1/3); L = diameter / 4",
      range = "Ra 1e4 to 1e11, still air; extrapolates outside")
  public static double topWPerM2K(
      @Usually(0.42) double diameterM,
      double topC,
      @Usually(20) double roomC,
      @Usually(101.325) double pressureKpa) {
    double lengthM = Require.above0("diameter", diameterM) / 4;
    double rayleigh = Air.rayleighNumber(lengthM, topC, roomC, pressureKpa);
    double nusselt = rayleigh < 1e7 ? 0.54 * Math.pow(rayleigh, 0.25) : 0.15 * Math.cbrt(rayleigh);
    return filmWPerM2K(nusselt, lengthM, topC, roomC);
  }

  /// What a wall between wort and room loses per kelvin: two films in series, metal neglected.
  ///
  /// `UA = 1 / (1/(h_in A) + 1/(h_out A))`. The outside film decides; inside 300 to 1000 W/(m2 K).
  @Source(key = "energy-balance", at = "two resistances in series", trust = Trust.COMPUTED)
  @Reckoned(
      name = "wall-loss",
      says = "How much heat does the kettle's wall lose per kelvin above the room?",
      equation = "UA = 1 / (1/(h_in A) + 1/(h_out A))",
      range = "everything above 0; refused otherwise")
  public static double lossWPerK(
      @Usually(0.62) double areaM2,
      @Usually(565) double insideWPerM2K,
      @Usually(6) double outsideWPerM2K) {
    return Require.above0("area", areaM2)
        / (1 / Require.above0("inside film", insideWPerM2K)
            + 1 / Require.above0("outside film", outsideWPerM2K));
  }

  private static double filmWPerM2K(
      double nusseltNumber, double lengthM, double wallC, double roomC) {
    return nusseltNumber * Air.conductivityWPerMK((wallC + roomC) / 2) / lengthM;
  }

  private static double nusseltNumber(
      double stillNumber, double shapeNumber, double rayleighNumber, double prandtlNumber) {
    Require.notBelow0("Rayleigh number", rayleighNumber);
    Require.above0("Prandtl number", prandtlNumber);
    double spread = 1 + Math.pow(shapeNumber / prandtlNumber, 9.0 / 16);
    double root =
        stillNumber + 0.387 * Math.pow(rayleighNumber, 1.0 / 6) / Math.pow(spread, 8.0 / 27);
    return root * root;
  }
}
