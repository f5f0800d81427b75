package gylebook.simulate;

/// What is done to the brew. A plan, a replay and a what-if are lists of these.
public sealed interface Action permits Leg, Action.Deed {

  /// What is done in a moment.
  sealed interface Deed extends Action {}

  /// The malt goes in.
  ///
  /// @param grainKg malt as it comes
  /// @param moistureFrac water in it
  /// @param extractFrac extract of a fine grind, on dry matter
  /// @param grainC as it comes from the store
  /// @param wettingFactor its heat of wetting against the table
  record DoughIn(
      double grainKg, double moistureFrac, double extractFrac, double grainC, double wettingFactor)
      implements Deed {}

  /// The bag comes out, with the wort that it keeps.
  ///
  /// @param keptKgPerKg wort kept by a kilogram of malt
  record BagOut(double keptKgPerKg) implements Deed {}

  /// Liquor is added to the kettle.
  ///
  /// @param waterKg how much
  /// @param waterC how warm
  record TopUp(double waterKg, double waterC) implements Deed {}

  /// Extract or sugar is added.
  ///
  /// @param extractKg dry extract
  /// @param waterKg water that comes with it
  /// @param fermentableFrac share of it that yeast can use
  record AddExtract(double extractKg, double waterKg, double fermentableFrac) implements Deed {}

  /// Hops are added; pools are kept apart by addition.
  ///
  /// @param hopNumber which addition, counted from 0
  /// @param alphaMg alpha acid in it
  /// @param wortKg wort that these hops will hold back
  record AddHops(int hopNumber, double alphaMg, double wortKg) implements Deed {}

  /// Wort is taken out of the kettle and kept by; the bag is out.
  ///
  /// @param wortL as it stands, hot
  record TakeOut(double wortL) implements Deed {}

  /// Liquor is added in the fermenter.
  ///
  /// @param waterKg how much
  /// @param waterC how warm
  record Dilute(double waterKg, double waterC) implements Deed {}

  /// A milestone of no length.
  ///
  /// @param key its name
  record Mark(String key) implements Deed {}
}
