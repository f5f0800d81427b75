package gylebook.device;

/// A field of a form with which no instrument can be tied.
public final class Unfit extends Exception {
  private static final long serialVersionUID = 1;

  private final String field;
  private final String value;

  Unfit(String field, String value, String maybe) {
    super(maybe);
    this.field = field;
    this.value = value;
  }

  /// Which field.
  public String field() {
    return field;
  }

  /// What stood in it.
  public String value() {
    return value;
  }
}
