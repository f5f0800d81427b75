package gylebook.rig;

/// The shape of a doubt.
public enum Spread {
  /// Symmetric; the doubt is a standard deviation in the unit of the value.
  NORMAL,
  /// Positive for ever; the doubt is a standard deviation of the logarithm.
  LOG_NORMAL
}
