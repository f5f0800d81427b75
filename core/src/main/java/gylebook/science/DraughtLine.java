package gylebook.science;

/// The line from keg to tap. It is the length that is changed, never the pressure: that one holds
/// the carbonation.
public final class DraughtLine {
  private static final double GRAVITY_M_PER_SEC2 = 9.80665;
  private static final double LAMINAR_NUMBER = 2300;
  private static final double BLEND_NUMBER = 2100;
  private static final double KPA_PER_PSI = 6.894757293168361;
  private static final double M_PER_FT = 0.3048;

  /// Bore in mm; least and most psi a foot.
  private static final double[][] RULES = {
    {4.7625, 1.8, 3.0}, {6.35, 0.85, 0.85}, {7.9375, 0.10, 0.40}, {9.525, 0.06, 0.20}
  };

  private static final double L_PER_M3 = 1000;
  private static final double MM_PER_M = 1000;
  private static final double UM_PER_M = 1e6;
  private static final double PA_PER_KPA = 1000;

  private DraughtLine() {}

  /// What rules of thumb say.
  ///
  /// @param leastKpaPerM for slippery hose (barrier)
  /// @param mostKpaPerM for soft hose (vinyl)
  public record Rule(double leastKpaPerM, double mostKpaPerM) {}

  /// Pressure lost in a smooth hose.
  ///
  /// `dp/L = f rho v^2/(2 D)`, f = 64/Re below 2100, Colebrook's from 2300, a blend between
  ///
  /// - Valid: flowing beer without froth. Hoses lose 1.6 to 1.8 times as much (rules of thumb): a
  ///   factor to be learnt from one timed pour. Refused for a bore outside 1 to 50 mm.
  /// - Source: Darcy and Weisbach, Colebrook; beer at 3 C from memory.
  @Reckoned(
      name = "draught-line-gradient",
      says = "How much pressure a metre of smooth draught line takes.",
      equation = "dp/L = f rho v^2/(2 D); f = 64/Re below 2100, Colebrook from 2300",
      range = "beer at 3 C when nothing is given; real hose takes 1.0 to 1.9 times as much")
  @Source(key = "darcy-weisbach", trust = Trust.SECOND_HAND)
  @Source(key = "colebrook1939", trust = Trust.SECOND_HAND)
  public static double gradientKpaPerM(
      double boreMm,
      @Usually(0.0591) double flowLPerSec,
      @Usually(0.0024) double viscosityPaSec,
      @Usually(1.010) double beerKgPerL,
      @Usually(1.5) double roughnessUm) {
    double bore = Require.within("bore in mm", boreMm, 1, 50) / MM_PER_M;
    Require.above0("flow in L/s", flowLPerSec);
    Require.above0("viscosity in Pa s", viscosityPaSec);
    Require.within("density of the beer in kg/L", beerKgPerL, 0.5, 2);
    double relative = Require.within("roughness in um", roughnessUm, 0, 200) / UM_PER_M / bore;
    double rho = beerKgPerL * L_PER_M3;
    double v = flowLPerSec / L_PER_M3 / (Math.PI / 4 * bore * bore);
    double reynolds = rho * v * bore / viscosityPaSec;
    return frictionNumber(reynolds, relative) * rho * v * v / (2 * bore) / PA_PER_KPA;
  }

  /// Pressure that a metre of rise takes.
  ///
  /// `rho g`
  ///
  /// - Valid: beer without gas bubbles.
  /// - Source: hydrostatics.
  @Reckoned(
      name = "draught-line-rise",
      says = "How much pressure a metre of rise to the tap takes.",
      equation = "dp/h = rho g",
      range = "beer without bubbles; density 0.5 to 2 kg/L, refused outside")
  @Source(key = "hydrostatics", trust = Trust.COMPUTED)
  public static double riseKpaPerM(@Usually(1.010) double beerKgPerL) {
    double rho = Require.within("density of the beer in kg/L", beerKgPerL, 0.5, 2) * L_PER_M3;
    return rho * GRAVITY_M_PER_SEC2 / PA_PER_KPA;
  }

  /// Pressure that a line takes in all.
  ///
  /// `dp = F L (dp/L)`
  ///
  /// - Valid: as the gradient. Rules of thumb: 3/16 in 68, 1/4 in 19, 5/16 in barrier 2.3 kPa/m, to
  ///   which no factor belongs.
  /// - Source: a product; the rules from a trade association's draught manual.
  @Reckoned(
      name = "draught-line-drop",
      says = "How much pressure a draught line takes in all.",
      equation = "dp = F L (dp/L)",
      range = "F 1 for a rule of thumb, 1.7 (1.0 to 1.9) on a smooth hose's gradient")
  @Source(key = "draught-manual", at = "resistance", trust = Trust.READ)
  public static double dropKpa(
      double lineM,
      @Usually(40.7) double gradientKpaPerM,
      @Span(
              least = 1,
              most = 1.9,
              beyond = "hoses were found to take 1.0 to 1.9 times a smooth pipe")
          @Usually(1)
          double hoseFactor) {
    Require.notBelow0("length of the line in m", lineM);
    Require.notBelow0("gradient in kPa/m", gradientKpaPerM);
    Require.within("factor of the hose", hoseFactor, 0.5, 3);
    return lineM * gradientKpaPerM * hoseFactor;
  }

  /// Length of line that balances a keg's pressure.
  ///
  /// `L = (p - rho g h - p_tap)/(F dp/L)`
  ///
  /// - Valid: as the gradient; refused where the rise alone takes more than the keg has.
  /// - Source: a balance.
  @Reckoned(
      name = "draught-line-length",
      says = "How long a draught line must be to balance a keg's pressure.",
      equation = "L = (p - rho g h - p_tap)/(F dp/L)",
      range = "F 1.7 (1.0 to 1.9) on a smooth hose's gradient, to be learnt from a timed pour")
  @Source(key = "darcy-weisbach", trust = Trust.SECOND_HAND)
  @Source(key = "hydrostatics", trust = Trust.COMPUTED)
  public static double lengthM(
      double kegKpa,
      @Usually(0.5) double riseM,
      @Usually(0) double tapKpa,
      @Usually(40.7) double gradientKpaPerM,
      @Span(
              least = 1,
              most = 1.9,
              beyond = "hoses were found to take 1.0 to 1.9 times a smooth pipe")
          @Usually(1.7)
          double hoseFactor,
      @Usually(1.010) double beerKgPerL) {
    Require.within("factor of the hose", hoseFactor, 0.5, 3);
    double left = leftKpa(kegKpa, riseM, tapKpa, beerKgPerL);
    return left / (Require.above0("gradient in kPa/m", gradientKpaPerM) * hoseFactor);
  }

  /// What one timed pour teaches about the hose: how much more it takes than a smooth one.
  ///
  /// `F = (p - rho g h - p_tap)/(L dp/L)`, the gradient at the flow of the pour
  ///
  /// - Valid: one steady pour without froth, timed into a jug. 1.0 to 1.9 is usual; refused outside
  ///   0.5 to 3: then the bore, the length or the pressure is not what was said.
  /// - Source: the balance, solved for the factor.
  @Reckoned(
      name = "draught-line-factor",
      says = "How much more pressure a hose takes than a smooth one, from one timed pour.",
      equation = "F = (p - rho g h - p_tap)/(L dp/L)",
      range = "one steady pour without froth; 1.0 to 1.9 is usual, refused outside 0.5 to 3")
  @Source(key = "darcy-weisbach", trust = Trust.SECOND_HAND)
  @Source(key = "hydrostatics", trust = Trust.COMPUTED)
  public static double hoseFactor(
      double kegKpa,
      @Usually(0.5) double riseM,
      @Usually(0) double tapKpa,
      double lineM,
      @Usually(40.7) double gradientKpaPerM,
      @Usually(1.010) double beerKgPerL) {
    double left = leftKpa(kegKpa, riseM, tapKpa, beerKgPerL);
    double smooth = Require.above0("gradient in kPa/m", gradientKpaPerM);
    return Require.within(
        "factor of the hose", left / (Require.above0("line in m", lineM) * smooth), 0.5, 3);
  }

  /// What the trade reckons a metre of hose takes, without any physics.
  ///
  /// A table of bores
  ///
  /// - Valid: 3/16, 1/4, 5/16 and 3/8 in (4.8, 6.4, 7.9, 9.5 mm), by 0.4 mm; refused otherwise. It
  ///   is 0.6 to 2.5 times a smooth pipe's: neither is right for a given hose.
  /// - Source: a trade association's draught manual and other rules of the trade.
  @Reckoned(
      name = "draught-line-rule",
      says = "What the trade's rules of thumb say a metre of draught line takes.",
      equation = "3/16 in 41 to 68, 1/4 in 19, 5/16 in 2.3 to 9.0, 3/8 in 1.4 to 4.5 kPa/m",
      range = "these four bores at 59 mL/s; refused otherwise")
  @Source(key = "draught-manual", at = "resistance", trust = Trust.READ)
  public static Rule rule(double boreMm) {
    for (double[] row : RULES) {
      if (Math.abs(boreMm - row[0]) <= 0.4) {
        return new Rule(row[1] * KPA_PER_PSI / M_PER_FT, row[2] * KPA_PER_PSI / M_PER_FT);
      }
    }
    throw new IllegalArgumentException(
        "bore is " + boreMm + " mm; the rules know 4.76, 6.35, 7.94 and 9.53 mm only.");
  }

  private static double leftKpa(double kegKpa, double riseM, double tapKpa, double beerKgPerL) {
    Require.within("rise in m", riseM, -20, 20);
    Require.notBelow0("pressure at the tap in kPa", tapKpa);
    Require.within("pressure of the keg in kPa", kegKpa, 0, 1000);
    return Require.notBelow0(
        "pressure left for the line in kPa", kegKpa - riseM * riseKpaPerM(beerKgPerL) - tapKpa);
  }

  /// Between the two laws nobody knows; the blend only keeps the answer from jumping.
  private static double frictionNumber(double reynoldsNumber, double roughRatio) {
    if (reynoldsNumber < BLEND_NUMBER) {
      return 64 / reynoldsNumber;
    }
    double turbulent = turbulentNumber(Math.max(reynoldsNumber, LAMINAR_NUMBER), roughRatio);
    double along = Math.min(1, (reynoldsNumber - BLEND_NUMBER) / (LAMINAR_NUMBER - BLEND_NUMBER));
    return (1 - along) * 64 / reynoldsNumber + along * turbulent;
  }

  private static double turbulentNumber(double reynoldsNumber, double roughRatio) {
    double x =
        Root.between(
            0.5, 20, y -> y + 2 * Math.log10(roughRatio / 3.7 + 2.51 * y / reynoldsNumber));
    return 1 / (x * x);
  }
}
