package gylebook.simulate;

import gylebook.science.Require;

/// What is done otherwise than planned, from where the brew stands. A what-if and a decision are
/// the same data.
public sealed interface Change {

  /// Something is put in or taken out.
  sealed interface Deed extends Change {
    /// Milestone after which it is done; empty for at once.
    String after();
  }

  /// A leg that ends by the clock lasts longer, or shorter.
  ///
  /// @param key milestone at its end
  /// @param bySec longer by this; below 0 shorter, and never below nothing
  record Lasts(String key, double bySec) implements Change {
    /// Refuses what is no time.
    public Lasts {
      Require.within(
          "time by which a leg lasts longer", bySec, -BrewDay.LONGEST_SEC, BrewDay.LONGEST_SEC);
    }
  }

  /// All hops that are still to go in on the hot side are weighed otherwise.
  ///
  /// @param factor times as much as planned
  record HopsTimes(double factor) implements Change {
    /// Refuses less than nothing.
    public HopsTimes {
      Require.notBelow0("factor of the hops", factor);
    }
  }

  /// Cold liquor goes into the kettle.
  ///
  /// @param after milestone after which; empty for at once
  /// @param liquorL how much, cold
  record Pours(String after, double liquorL) implements Deed {
    /// Refuses less than nothing.
    public Pours {
      Require.notBelow0("liquor to add", liquorL);
    }
  }

  /// Boiled and cooled liquor goes into the fermenter when the kettle has run off.
  ///
  /// @param liquorL how much, cold
  record Dilutes(double liquorL) implements Deed {
    /// Refuses less than nothing.
    public Dilutes {
      Require.notBelow0("liquor to add", liquorL);
    }

    @Override
    public String after() {
      return "cast";
    }
  }

  /// Extract or sugar goes into the kettle.
  ///
  /// @param after milestone after which; empty for at once
  /// @param goodsKg as weighed
  /// @param moistureFrac water in it
  /// @param fermentableFrac share of its extract that yeast can use
  record Sweetens(String after, double goodsKg, double moistureFrac, double fermentableFrac)
      implements Deed {
    /// Refuses less than nothing.
    public Sweetens {
      Require.notBelow0("extract to add", goodsKg);
      Require.within("its moisture", moistureFrac, 0, 1);
      Require.within("its fermentable share", fermentableFrac, 0, 1);
    }
  }

  /// Wort is taken out of the kettle and kept by.
  ///
  /// @param after milestone after which; empty for at once
  /// @param wortL as it stands, hot
  record TakesOut(String after, double wortL) implements Deed {
    /// Refuses less than nothing.
    public TakesOut {
      Require.notBelow0("wort to take out", wortL);
    }
  }
}
