package gylebook.simulate;

/// The revision of the model. A fixed plan names the one it was made with.
public final class Engine {
  private Engine() {}

  /// Raised whenever the same inputs give other numbers.
  public static final String REVISION = "5";
}
