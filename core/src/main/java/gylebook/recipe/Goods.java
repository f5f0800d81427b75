package gylebook.recipe;

import gylebook.units.Entered;

/// One line of the grist: malt, flaked grain, sugar, extract.
///
/// @param name what the packet says
/// @param lot the brewer's own mark for this sack; may be empty
/// @param kind what it is
/// @param massKg how much of it
/// @param analysis its figures
/// @param use where it goes in
public record Goods(
    String name, String lot, Kind kind, Entered massKg, Analysis analysis, Use use) {

  /// What a line of the grist is.
  public enum Kind {
    BASE_MALT("base malt", 0.045, 0.80, 0.015),
    CARAMEL_MALT("caramel malt", 0.055, 0.76, 0.02),
    ROASTED("roasted", 0.03, 0.70, 0.03),
    FLAKED("flaked grain", 0.09, 0.75, 0.03),
    OTHER_GRAIN("grain", 0.10, 0.70, 0.04),
    SUGAR("sugar", 0.0, 1.0, 0.005),
    DRY_EXTRACT("dry malt extract", 0.03, 1.0, 0.01),
    LIQUID_EXTRACT("liquid malt extract", 0.20, 1.0, 0.02),
    FRUIT("fruit", 0.85, 0.60, 0.10);

    private final String words;
    private final double moistureFrac;
    private final double extractFrac;
    private final double extractDoubtFrac;

    Kind(String words, double moistureFrac, double extractFrac, double extractDoubtFrac) {
      this.words = words;
      this.moistureFrac = moistureFrac;
      this.extractFrac = extractFrac;
      this.extractDoubtFrac = extractDoubtFrac;
    }

    /// The same in words for the page.
    public String words() {
      return words;
    }

    /// What is usual for the kind when nobody gives figures: common practice, no source.
    public Analysis usual() {
      return new Analysis(moistureFrac, extractFrac, extractDoubtFrac, 0, 0, false);
    }

    /// Whether it has to be mashed to give extract.
    public boolean mashed() {
      return switch (this) {
        case BASE_MALT, CARAMEL_MALT, ROASTED, FLAKED, OTHER_GRAIN -> true;
        case SUGAR, DRY_EXTRACT, LIQUID_EXTRACT, FRUIT -> false;
      };
    }
  }

  /// Where a line of the grist goes in.
  public enum Use {
    MASH("in the mash"),
    BOIL("in the boil"),
    FERMENTER("in the fermenter");

    private final String words;

    Use(String words) {
      this.words = words;
    }

    /// The same in words for the page.
    public String words() {
      return words;
    }
  }

  /// The same line with another mass.
  public Goods withMass(Entered newMassKg) {
    return new Goods(name, lot, kind, newMassKg, analysis, use);
  }
}
