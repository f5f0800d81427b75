package gylebook.science;

/// Liquid levels inside and outside the bag while the pump draws wort through the bed.
///
/// The volume is conserved. The ring outside the bag is small, so the *outside*, where the element
/// stands, takes nearly the whole fall.
public final class Levels {
  private Levels() {}

  /// How far the level outside the bag falls below rest: `dh A_in / (A_in + A_out)`.
  @Source(key = "mass-balance", at = "conserved volume", trust = Trust.COMPUTED)
  @Reckoned(
      name = "level-fall-outside",
      says = "How far does the level outside the bag fall?",
      equation = "fall = dh A_in / (A_in + A_out)",
      range = "upright walls; areas above 0; refused otherwise")
  public static double outsideFallM(
      double headM, @Usually(0.113) double insideM2, @Usually(0.0255) double outsideM2) {
    return Require.notBelow0("head", headM) * insideFrac(insideM2, outsideM2);
  }

  /// How far the level inside the bag rises above rest: `dh A_out / (A_in + A_out)`.
  @Source(key = "mass-balance", at = "conserved volume", trust = Trust.COMPUTED)
  @Reckoned(
      name = "level-rise-inside",
      says = "How far does the level inside the bag rise?",
      equation = "rise = dh A_out / (A_in + A_out)",
      range = "upright walls; areas above 0; refused otherwise")
  public static double insideRiseM(
      double headM, @Usually(0.113) double insideM2, @Usually(0.0255) double outsideM2) {
    return Require.notBelow0("head", headM) * (1 - insideFrac(insideM2, outsideM2));
  }

  /// Liquid left above the element's cover line; below 0 the element is bare.
  @Source(key = "mass-balance", at = "conserved volume", trust = Trust.COMPUTED)
  @Reckoned(
      name = "element-cover",
      says = "How much liquid is left above the element's cover line?",
      equation = "left = h_rest - dh A_in / (A_in + A_out) - h_cover",
      range = "upright walls; below 0 the element is bare: heat off, then pump off")
  public static double coverLeftM(
      double restM,
      double coverM,
      double headM,
      @Usually(0.113) double insideM2,
      @Usually(0.0255) double outsideM2) {
    return Require.notBelow0("rest level", restM)
        - outsideFallM(headM, insideM2, outsideM2)
        - Require.notBelow0("cover", coverM);
  }

  /// The largest head before the element is bare: the same read backwards.
  @Source(key = "mass-balance", at = "conserved volume", trust = Trust.COMPUTED)
  @Reckoned(
      name = "largest-bed-head",
      says = "How much head may the bed build up before the element is bare?",
      equation = "dh = (h_rest - h_cover) (A_in + A_out) / A_in",
      range = "0 when the element is bare at rest already")
  public static double largestHeadM(
      double restM,
      double coverM,
      @Usually(0.113) double insideM2,
      @Usually(0.0255) double outsideM2) {
    double spare = Require.notBelow0("rest level", restM) - Require.notBelow0("cover", coverM);
    return Math.max(0, spare) / insideFrac(insideM2, outsideM2);
  }

  private static double insideFrac(double insideM2, double outsideM2) {
    Require.above0("area inside the bag", insideM2);
    Require.above0("area outside the bag", outsideM2);
    return insideM2 / (insideM2 + outsideM2);
  }
}
