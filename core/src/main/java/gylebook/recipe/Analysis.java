package gylebook.recipe;

/// A maltster's figures of one lot, or what is usual for its kind.
///
/// @param moistureFrac water in the goods as they come
/// @param extractFrac extract of a fine grind, on dry matter
/// @param extractDoubtFrac one standard deviation of that
/// @param colourEbc colour of its standard wort
/// @param attenuationOffsetFrac attenuation of its wort above or below the usual malt
/// @param stated whether the maltster (or the file) said so, rather than us
public record Analysis(
    double moistureFrac,
    double extractFrac,
    double extractDoubtFrac,
    double colourEbc,
    double attenuationOffsetFrac,
    boolean stated) {

  /// Refuses shares outside 0 to 1 and a negative colour.
  public Analysis {
    share("The moisture", moistureFrac);
    share("The extract", extractFrac);
    if (!(colourEbc >= 0)) {
      throw new IllegalArgumentException("The colour is " + colourEbc + "; it cannot be below 0.");
    }
  }

  private static void share(String what, double valueFrac) {
    if (!(valueFrac >= 0 && valueFrac <= 1)) {
      throw new IllegalArgumentException(
          what + " is " + valueFrac * 100 + " %; it must lie between 0 and 100 %.");
    }
  }
}
