package gylebook.estimate;

import gylebook.simulate.Twins;
import java.util.Arrays;
import java.util.function.UnaryOperator;

/// Beliefs at some point of their day, told nothing but that legs ended when half the twins thought
/// so.
final class UnderWay {
  private UnderWay() {}

  /// The belief when the leg of this key is under way.
  static Belief at(Belief belief, String key) {
    while (!belief.leg().key().equals(key)) {
      belief.ended(middleEndSec(belief.twins()));
    }
    return belief;
  }

  private static double middleEndSec(Twins twins) {
    double[] endsSec = twins.endsSec(UnaryOperator.identity());
    Arrays.sort(endsSec);
    return endsSec[endsSec.length / 2];
  }
}
