package gylebook.recipe;

import gylebook.science.TapWater;
import gylebook.units.Entered;
import java.util.List;
import java.util.Locale;

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
      double bicarbonateMgPerL) {
    private static final double BICARBONATE_MG_PER_MEQ = 61.017;
    private static final double CARBONATE_MG_PER_MEQ = 50.043;
    private static final double SAMPLE_PH = 7;
    private static final int ROUND_COUNT = 8;

    /// What a reverse-osmosis filter leaves of this water, by the meter behind it: never nothing.
    ///
    /// Each ion is taken to pass in the same share (assumed; membranes hold calcium and sulphate
    /// back better than sodium and bicarbonate, which matters little at 10 to 50 µS/cm).
    ///
    /// @param meterUsPerCm what the conductivity meter reads behind the filter, at 25 C
    public Ions filteredTo(double meterUsPerCm) {
      double tapUsPerCm = conductanceUsPerCm();
      if (!(meterUsPerCm >= 0 && meterUsPerCm < tapUsPerCm)) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "The meter reads %.1f µS/cm behind the filter; this water has %.1f before it.",
                meterUsPerCm,
                tapUsPerCm));
      }
      double passedFrac = meterUsPerCm / tapUsPerCm;
      for (int round = 0; round < ROUND_COUNT; round++) {
        // Ions move more freely in thinner water: the share is a little below the straight line.
        double gotUsPerCm = shareOf(passedFrac).conductanceUsPerCm();
        passedFrac *= gotUsPerCm > 0 ? meterUsPerCm / gotUsPerCm : 0;
      }
      return shareOf(passedFrac);
    }

    /// The conductance of this water at 25 C; chloride is what balances the charges.
    public double conductanceUsPerCm() {
      double alkalinityMgPerL = bicarbonateMgPerL / BICARBONATE_MG_PER_MEQ * CARBONATE_MG_PER_MEQ;
      return TapWater.analysed(
              calciumMgPerL,
              magnesiumMgPerL,
              sodiumMgPerL,
              sulphateMgPerL,
              alkalinityMgPerL,
              SAMPLE_PH)
          .conductanceUsPerCm();
    }

    private Ions shareOf(double shareFrac) {
      return new Ions(
          calciumMgPerL * shareFrac,
          magnesiumMgPerL * shareFrac,
          sodiumMgPerL * shareFrac,
          chlorideMgPerL * shareFrac,
          sulphateMgPerL * shareFrac,
          bicarbonateMgPerL * shareFrac);
    }
  }

  /// The same water with other additions.
  public Liquor withAdditions(List<Addition> newAdditions) {
    return new Liquor(name, ions, newAdditions);
  }

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
