package gylebook.estimate;

/// One supposition with the belief that holds it, and what the likeliest way to it is worth.
///
/// What is wrong may have begun at any moment, and may be over: so the likeliest way leads through
/// other suppositions, and the belief is that of the way.
final class Supposed {
  private final Supposition what;
  private Belief belief;
  // Logarithm of what the way was worth when this belief was made.
  private double beganRatio;

  private Supposed(Supposition what, Belief belief, double beganRatio) {
    this.what = what;
    this.belief = belief;
    this.beganRatio = beganRatio;
  }

  /// Held since the bank was set up.
  static Supposed since(Supposition what, Belief origin) {
    return new Supposed(what, what.held(origin), Math.log(what.priorNumber()));
  }

  Supposed copy() {
    return new Supposed(what, belief.copy(), beganRatio);
  }

  Supposition what() {
    return what;
  }

  Belief belief() {
    return belief;
  }

  /// Logarithm of what the way is worth by all that was read on it.
  double logRatio() {
    return beganRatio + belief.logLikelihood();
  }

  /// It holds from now on only, after another.
  ///
  /// @param chanceFrac how likely one followed the other since it was asked last
  void beginAfter(Supposed other, double chanceFrac) {
    double worthRatio = other.logRatio() + Math.log(chanceFrac);
    belief = what.held(other.belief);
    beganRatio = worthRatio;
  }

  /// Whether this is likelier to have followed another just now than to have held before.
  boolean likelierAfter(Supposed other, double chanceFrac) {
    return logRatio() < other.logRatio() + Math.log(chanceFrac);
  }
}
