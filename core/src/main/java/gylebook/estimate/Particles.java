package gylebook.estimate;

import gylebook.science.Require;
import gylebook.science.Source;
import gylebook.science.Trust;

/// Weighted guesses: how many of them really count, and which to go on with.
final class Particles {
  private Particles() {}

  /// `1/sum(w^2)` of weights that sum to 1: so many equal guesses are worth as much.
  @Source(key = "arulampalam-2002", at = "effective sample size", trust = Trust.SECOND_HAND)
  static double effectiveCount(double[] weightFrac) {
    double sum = 0;
    double squares = 0;
    for (double each : weightFrac) {
      sum += Require.notBelow0("weight", each);
      squares += each * each;
    }
    return Require.above0("sum of weights", sum) * sum / squares;
  }

  /// Systematic resampling: `n` even places from one draw against the cumulative weights.
  ///
  /// @param firstFrac the first place, from 0 to below `1/n`
  @Source(key = "arulampalam-2002", at = "systematic resampling", trust = Trust.SECOND_HAND)
  static int[] resampled(double[] weightFrac, double firstFrac) {
    int count = weightFrac.length;
    Require.within("first place", firstFrac, 0, 1.0 / count);
    int[] chosen = new int[count];
    double cumulative = weightFrac[0];
    int at = 0;
    for (int i = 0; i < count; i++) {
      double place = firstFrac + (double) i / count;
      while (place > cumulative && at < count - 1) {
        cumulative += weightFrac[++at];
      }
      chosen[i] = at;
    }
    return chosen;
  }

  /// Weights from logarithms of likelihoods, safe against underflow; they sum to 1.
  static double[] shareFrac(double[] logRatio) {
    double most = Double.NEGATIVE_INFINITY;
    for (double each : logRatio) {
      most = Math.max(most, each);
    }
    double[] weightFrac = new double[logRatio.length];
    double sum = 0;
    for (int i = 0; i < weightFrac.length; i++) {
      weightFrac[i] = Math.exp(logRatio[i] - most);
      sum += weightFrac[i];
    }
    for (int i = 0; i < weightFrac.length; i++) {
      weightFrac[i] /= sum;
    }
    return weightFrac;
  }
}
