package gylebook.recipe;

import gylebook.science.TapWater;
import gylebook.units.Entered;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/// Brewing water: what comes out of the tap (or the filter) and what is added to it.
///
/// @param name what the brewer calls it
/// @param ions what is dissolved before anything is added
/// @param additions salts and acids
/// @param meterUsPerCm what a conductivity meter reads in it, behind the filter where there is one;
///   absent: it is as analysed
public record Liquor(
    String name, Ions ions, List<Addition> additions, Optional<Entered> meterUsPerCm) {

  /// A water that is as its analysis says.
  public Liquor(String name, Ions ions, List<Addition> additions) {
    this(name, ions, additions, Optional.empty());
  }

  /// Copies the additions.
  public Liquor {
    additions = List.copyOf(additions);
    if (meterUsPerCm.isPresent()) {
      Ions.readable(meterUsPerCm.get().inside());
    }
  }

  /// What is dissolved before anything is added: the analysis, or what a meter leaves of it.
  public Ions source() {
    return meterUsPerCm.map(read -> Metered.of(ions, read.inside())).orElse(ions);
  }

  /// What a meter leaves of an analysis takes some thirty milliseconds, and every simulated day
  /// asks for the same: the last answer is remembered.
  private record Metered(Ions analysis, double meterUsPerCm, Ions found) {
    private static volatile @Nullable Metered last;

    static Ions of(Ions analysis, double meterUsPerCm) {
      Metered known = last;
      if (known != null
          && known.meterUsPerCm() == meterUsPerCm
          && known.analysis().equals(analysis)) {
        return known.found();
      }
      Ions found = analysis.asMetered(meterUsPerCm);
      last = new Metered(analysis, meterUsPerCm, found);
      return found;
    }
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
    private static final double CLOSE_RATIO = 1e-4;
    // Ten times a hard tap water; above that lies sea water.
    private static final double MOST_US_PER_CM = 5000;
    private static final Ions NONE = new Ions(0, 0, 0, 0, 0, 0);

    /// A middling tap water: assumed, only its proportions are used.
    private static final Ions MIDDLING = new Ions(50, 8, 20, 30, 40, 140);

    /// The water as a conductivity meter finds it today: each ion in the same share of this
    /// analysis. Behind a reverse-osmosis filter that share is small, and never nothing.
    ///
    /// That all ions pass a filter alike is assumed; membranes hold calcium and sulphate back
    /// better than sodium and bicarbonate, which matters little at 10 to 50 µS/cm. Where nothing is
    /// known of the water, a middling tap water lends its shares.
    ///
    /// @param meterUsPerCm what the meter reads, at 25 C
    public Ions asMetered(double meterUsPerCm) {
      readable(meterUsPerCm);
      return unknown() ? MIDDLING.sharedTo(meterUsPerCm) : sharedTo(meterUsPerCm);
    }

    /// Whether nothing at all is said to be dissolved.
    public boolean unknown() {
      return equals(NONE);
    }

    private static void readable(double meterUsPerCm) {
      if (!(meterUsPerCm >= 0 && meterUsPerCm <= MOST_US_PER_CM)) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "The meter reads %.0f µS/cm; water to brew with lies between 0 and %.0f.",
                meterUsPerCm,
                MOST_US_PER_CM));
      }
    }

    private Ions sharedTo(double meterUsPerCm) {
      double shareFrac = meterUsPerCm / conductanceUsPerCm();
      double offRatio = 1;
      for (int round = 0; round < ROUND_COUNT && Math.abs(offRatio) > CLOSE_RATIO; round++) {
        // Ions move more freely in thinner water: the share is a little below the straight line.
        double gotUsPerCm = shareOf(shareFrac).conductanceUsPerCm();
        offRatio = meterUsPerCm / gotUsPerCm - 1;
        shareFrac *= 1 + offRatio;
      }
      return shareOf(shareFrac);
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
    return new Liquor(name, ions, newAdditions, meterUsPerCm);
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
