package gylebook.recipe;

import gylebook.units.Entered;
import java.util.List;

/// Brewing water: what comes out of the tap (or the filter) and what is added to it.
///
/// @param name what the brewer calls it
/// @param ions what is dissolved before anything is added
/// @param additions salts and acids
public record Liquor(String name, Ions ions, List<Addition> additions) {

  /// Copies the additions.
  public Liquor {
    additions = List.copyOf(additions);
  }

  /// Dissolved ions.
  ///
  /// @param calciumMgPerL Ca
  /// @param magnesiumMgPerL Mg
  /// @param sodiumMgPerL Na
  /// @param chlorideMgPerL Cl
  /// @param sulphateMgPerL SO4
  /// @param bicarbonateMgPerL HCO3
  public record Ions(
      double calciumMgPerL,
      double magnesiumMgPerL,
      double sodiumMgPerL,
      double chlorideMgPerL,
      double sulphateMgPerL,
      double bicarbonateMgPerL) {}

  /// One salt or acid.
  ///
  /// @param name in the brewer's words, kept as given
  /// @param agent what it is chemically; UNKNOWN when the words do not say
  /// @param amountNumber mass (g) or, for a liquid acid, volume (L)
  /// @param into where it goes
  public record Addition(String name, Agent agent, Entered amountNumber, Into into) {}

  /// Where a salt or acid goes.
  public enum Into {
    MASH,
    KETTLE
  }

  /// The chemistry of an addition.
  public enum Agent {
    GYPSUM("gypsum"),
    CALCIUM_CHLORIDE_DIHYDRATE("calcium chloride dihydrate"),
    CALCIUM_CHLORIDE_ANHYDROUS("calcium chloride, anhydrous"),
    EPSOM_SALT("Epsom salt"),
    MAGNESIUM_CHLORIDE("magnesium chloride hexahydrate"),
    TABLE_SALT("table salt"),
    BAKING_SODA("baking soda"),
    CHALK("chalk"),
    SLAKED_LIME("slaked lime"),
    LACTIC_ACID("lactic acid"),
    PHOSPHORIC_ACID("phosphoric acid"),
    UNKNOWN("not known to us");

    private final String words;

    Agent(String words) {
      this.words = words;
    }

    /// The same in words for the page.
    public String words() {
      return words;
    }
  }
}
