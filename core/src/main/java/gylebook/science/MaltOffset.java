package gylebook.science;

/// How a malt differs from the attenuation curve, learnt from forced-ferment tests.
///
/// The curve is one grist's; malts and rigs lie within about 0.03 of it. A forced ferment (plenty
/// of fresh yeast, warm, shaken, until nothing changes) shows the wort's own limit whatever the
/// yeast in the fermenter does; that, and not a stuck beer, teaches the offset.
public final class MaltOffset {
  private MaltOffset() {}

  /// The offset after one more test.
  ///
  /// @param offsetRatio to add to the curve for this malt on this rig
  /// @param doubtFrac its standard deviation
  /// @param curveFrac what the curve says without it
  /// @param nextFrac what to expect of the same mash next time
  /// @param nextDoubtFrac standard deviation of the next test about that
  public record Learnt(
      double offsetRatio,
      double doubtFrac,
      double curveFrac,
      double nextFrac,
      double nextDoubtFrac) {}

  /// The offset of a malt after one forced-ferment test.
  ///
  /// `o' = o + K (measured - curve - o)`, `K = P/(P + R)`, `P' = (1 - K) P`; P and R are squared
  /// doubts. The answer of one test goes in as the belief before the next.
  ///
  /// - Valid: rests of the attenuation curve; normal, independent errors. Refused for doubts of 0
  ///   or above 0.3 and for a limit outside 0.2 to 1.
  @Source(key = "kalman-1960", at = "scalar form", trust = Trust.SECOND_HAND)
  @Source(key = "wray2014", at = "four points of J. Chandrasekhar", trust = Trust.READ)
  @Reckoned(
      name = "malt-offset",
      says = "How far does a malt's attenuation lie from the curve, after a forced-ferment test?",
      equation = "o' = o + K (measured - curve - o), K = P/(P + R), P' = (1 - K) P",
      range = "62 to 80 C; a doubt of 0.03 before the first test; refused for doubts of 0")
  public static Learnt learnt(
      @Span(least = 62, most = 80, beyond = "the attenuation curve has no measured point there")
          double mashC,
      double measuredFrac,
      @Usually(60) double heldMin,
      @Usually(0.01) double measuredDoubtFrac,
      @Usually(0) double offsetBeforeRatio,
      @Usually(0.03) double offsetDoubtFrac) {
    Require.within("measured attenuation limit as a share", measuredFrac, 0.2, 1);
    Require.within("offset before", offsetBeforeRatio, -0.5, 0.5);
    double r = squaredRatio("doubt of the test as a share", measuredDoubtFrac);
    double p = squaredRatio("doubt of the offset as a share", offsetDoubtFrac);
    double curve = Fermentability.afterRestFrac(mashC, heldMin);
    double gain = p / (p + r);
    double offset = offsetBeforeRatio + gain * (measuredFrac - curve - offsetBeforeRatio);
    double left = (1 - gain) * p;
    return new Learnt(
        offset, Math.sqrt(left), curve, Math.clamp(curve + offset, 0, 1), Math.sqrt(left + r));
  }

  private static double squaredRatio(String what, double doubtFrac) {
    Require.above0(what, doubtFrac);
    return Math.pow(Require.within(what, doubtFrac, 0, 0.3), 2);
  }
}
