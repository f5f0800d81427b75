package gylebook.science;

import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/// How far yeast can take a wort, by the temperature it was mashed at.
///
/// Four measured points (J. Chandrasekhar, quoted by E. Wray 2014): 65 C 82 %, 70 C 70 %, 75 C 50
/// %, 80 C 30 %, apparent, after a 60 min single infusion of 90 % lager malt and 10 % dextrin malt
/// at 3:1. Another malt lies within about 3 points; the offset is learnt per malt and rig.
public final class Attenuation {
  /// What the fit tends to in a cool mash. Not measured: the asymptote of the curve.
  static final double ASYMPTOTE_FRAC = 0.93367;

  private static final double MIDDLE_C = 75.869;
  private static final double WIDTH_K = 5.4578;

  /// Below this the curve is held: no point supports it.
  static final double EDGE_C = 62;

  /// The temperatures for which the curve is meant.
  public static final Validity RANGE =
      new Validity(
          "mash temperature in C",
          EDGE_C,
          80,
          "below 62 C the limit of attenuation is held at its value there, above 80 C the fitted"
              + " curve goes on without a measured point");

  private Attenuation() {}

  /// The limit of apparent attenuation after 60 min of single infusion.
  ///
  /// `A = 0.93367/(1 + exp((T - 75.869)/5.4578))`
  ///
  /// - Valid: 62 to 80 C (65 to 80 C measured); held at its edge below 62 C; goes on above 80 C.
  @Source(key = "wray2014", at = "four points of J. Chandrasekhar", trust = Trust.READ)
  @Reckoned(
      name = "attenuation-limit",
      says = "How far a wort can attenuate that was mashed for an hour at one temperature.",
      equation = "A = 0.93367/(1 + exp((T - 75.869)/5.4578))",
      range = "62 to 80 C; held below 62 C; malts differ by about 0.03")
  public static double limitFrac(double mashC) {
    Require.within("mash temperature in C", mashC, 0, 110);
    return curveFrac(Math.max(mashC, EDGE_C));
  }

  static double curveFrac(double mashC) {
    return ASYMPTOTE_FRAC / (1 + Math.exp((mashC - MIDDLE_C) / WIDTH_K));
  }

  /// The temperature of one rest that gives most fermentable extract: starch converted times limit.
  ///
  /// Hamilton & Lewis 1974 found about 62.5 C. In this model the answer is the edge of the
  /// attenuation curve unless the rest is short: below it the limit is held flat.
  @Source(key = "wray2014", at = "four points of J. Chandrasekhar", trust = Trust.READ)
  @Source(key = "rittenauer2021", at = "abstract", trust = Trust.READ)
  @Reckoned(
      name = "best-single-rest",
      says = "The one mash temperature that yields most fermentable extract.",
      equation = "max of X(T, t) A(T)",
      range = "rests of 10 to 120 min; searched from 55 to 80 C")
  public static double bestMashC(@Usually(60) double heldMin) {
    Require.within("rest in min", heldMin, 10, 120);
    var search = new BrentOptimizer(1e-9, 1e-9);
    return search
        .optimize(
            new UnivariateObjectiveFunction(
                t -> Gelatinisation.convertedFrac(t, heldMin) * limitFrac(t)),
            GoalType.MAXIMIZE,
            new SearchInterval(55, 80, EDGE_C),
            MaxEval.unlimited())
        .getPoint();
  }

  /// The apparent limit from the sugars of a wort.
  ///
  /// Real limit is the share of the extract that yeast eats; apparent is real/0.8192 near 12 P.
  @Source(key = "balling", at = "factor near 12 P", trust = Trust.MEMORY)
  @Reckoned(
      name = "attenuation-from-sugars",
      says = "The limit of apparent attenuation from the fermentable sugars of a wort.",
      equation = "A = (simple sugars + maltose + maltotriose)/extract/0.8192",
      range = "near 12 P; masses in the same wort")
  public static double apparentFrac(
      double simpleSugarG, double maltoseG, double maltotrioseG, double extractG) {
    Require.notBelow0("simple sugars in g", simpleSugarG);
    Require.notBelow0("maltose in g", maltoseG);
    Require.notBelow0("maltotriose in g", maltotrioseG);
    Require.above0("extract in g", extractG);
    double fermentableG = simpleSugarG + maltoseG + maltotrioseG;
    Require.within("fermentable sugars in g", fermentableG, 0, extractG);
    return fermentableG / extractG / REAL_PER_APPARENT_RATIO;
  }

  private static final double REAL_PER_APPARENT_RATIO = 0.8192;
}
