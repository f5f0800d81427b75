package gylebook.science;

/// The upright tube through the bed whose crest limits the head on it.
///
/// What runs down it neither rinses nor heats the grain, and a falling stream entrains air.
public final class Overflow {
  private static final double WEIR_NUMBER = 0.414;

  private Overflow() {}

  /// Highest crest above the rest level that still overflows before the element is bare.
  ///
  /// `(h_rest - h_cover) A_out / A_in`; take off the overflow head at the pump's flow. 0 when the
  /// element is bare at rest.
  @Source(key = "mass-balance", at = "conserved volume", trust = Trust.COMPUTED)
  @Reckoned(
      name = "overflow-crest",
      says = "How high above the rest level may an overflow tube's crest stand?",
      equation = "crest = (h_rest - h_cover) A_out / A_in, less the overflow head",
      range = "upright walls; 0 when the element is bare at rest already")
  public static double highestCrestM(
      double restM,
      double coverM,
      @Usually(0.113) double insideM2,
      @Usually(0.0255) double outsideM2) {
    double head = Levels.largestHeadM(restM, coverM, insideM2, outsideM2);
    return Levels.insideRiseM(head, insideM2, outsideM2);
  }

  /// Head between inside and outside when the tube just overflows: `crest (A_in + A_out)/A_out`.
  @Source(key = "mass-balance", at = "conserved volume", trust = Trust.COMPUTED)
  @Reckoned(
      name = "overflow-bed-head",
      says = "What head drives the bed when the overflow tube begins to run?",
      equation = "dh = crest (A_in + A_out) / A_out",
      range = "upright walls; areas above 0; refused otherwise")
  public static double bedHeadM(
      double crestM, @Usually(0.113) double insideM2, @Usually(0.0255) double outsideM2) {
    return Require.notBelow0("crest", crestM) / Levels.insideRiseM(1, insideM2, outsideM2);
  }

  /// Head at which the rim stops acting as a weir and the bore as an orifice: `Cd (D/4) / 0.414`.
  @Source(key = "swmm-notes", at = "orifice and weir notes", trust = Trust.READ)
  @Reckoned(
      name = "overflow-changeover",
      says = "At what head does an overflow tube run full?",
      equation = "h = Cd (D/4) / 0.414",
      range = "an upright tube; everything above 0; refused otherwise")
  public static double changeoverM(
      @Usually(0.020) double boreM, @Usually(0.6) double dischargeFrac) {
    return Require.above0("discharge coefficient", dischargeFrac)
        * Require.above0("bore", boreM)
        / (4 * WEIR_NUMBER);
  }

  /// Head over the crest that a flow needs.
  ///
  /// A weir, `Q = 0.414 sqrt(2g) pi D h^1.5`, up to the change-over; above it an orifice, `Q = Cd
  /// (pi D^2/4) sqrt(2 g h)`. Both agree where they meet.
  @Source(key = "swmm-notes", at = "orifice and weir notes", trust = Trust.READ)
  @Reckoned(
      name = "overflow-head",
      says = "How high does the liquid stand over an overflow tube at a flow?",
      equation = "weir Q = 0.414 sqrt(2g) pi D h^1.5, then orifice Q = Cd (pi D^2/4) sqrt(2 g h)",
      range = "an upright tube with a free fall; bore above 0; refused otherwise")
  public static double headM(
      double flowLPerSec, @Usually(0.020) double boreM, @Usually(0.6) double dischargeFrac) {
    double flow = 1e-3 * Require.notBelow0("flow", flowLPerSec);
    double changeover = changeoverM(boreM, dischargeFrac);
    double root = Math.sqrt(2 * Air.GRAVITY_M_PER_SEC2);
    double asWeir = Math.pow(flow / (WEIR_NUMBER * root * Math.PI * boreM), 2.0 / 3);
    if (asWeir <= changeover) {
      return asWeir;
    }
    double speed = flow / (dischargeFrac * Math.PI / 4 * boreM * boreM);
    return speed * speed / (root * root);
  }

  /// Flow that an overflow tube carries at a head over its crest: the same read backwards.
  @Source(key = "swmm-notes", at = "orifice and weir notes", trust = Trust.READ)
  @Reckoned(
      name = "overflow-flow",
      says = "How much does an overflow tube carry at a head?",
      equation = "weir Q = 0.414 sqrt(2g) pi D h^1.5, then orifice Q = Cd (pi D^2/4) sqrt(2 g h)",
      range = "an upright tube with a free fall; 0 below the crest")
  public static double flowLPerSec(
      double headM, @Usually(0.020) double boreM, @Usually(0.6) double dischargeFrac) {
    double changeover = changeoverM(boreM, dischargeFrac);
    if (!(Require.finite("head", headM) > 0)) {
      return 0;
    }
    double root = Math.sqrt(2 * Air.GRAVITY_M_PER_SEC2);
    double flow =
        headM <= changeover
            ? WEIR_NUMBER * root * Math.PI * boreM * headM * Math.sqrt(headM)
            : dischargeFrac * Math.PI / 4 * boreM * boreM * root * Math.sqrt(headM);
    return 1000 * flow;
  }

  /// Share of the pump's flow that runs down the tube past the grain.
  ///
  /// The bed takes what its largest head can press through; `1 - Q_bed/Q`.
  @Source(key = "mass-balance", at = "two parallel ways", trust = Trust.COMPUTED)
  @Reckoned(
      name = "overflow-bypass",
      says = "What share of the pumped wort runs past the grain?",
      equation = "share = max(0, 1 - (dh_max/dh) ), dh the head the whole flow would need",
      range = "0 while the bed takes the whole flow")
  public static double bypassFrac(double wholeFlowHeadM, double largestHeadM) {
    Require.notBelow0("head for the whole flow", wholeFlowHeadM);
    Require.notBelow0("largest head", largestHeadM);
    return wholeFlowHeadM <= largestHeadM ? 0 : 1 - largestHeadM / wholeFlowHeadM;
  }
}
