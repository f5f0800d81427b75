package gylebook.estimate;

import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;
import java.util.Map;

/// One way to put a day right, and what comes of it.
///
/// @param kind what is done
/// @param key by what its amount is counted, ending in its unit; empty when there is no amount
/// @param amountNumber how much, in that unit; NaN when there is none
/// @param outcomes what is held to come, with the same luck as everything else
/// @param reaches whether the middle comes to the aim
@AnyUnit("amounts and outcomes of every quantity")
public record Lever(
    Kind kind, String key, double amountNumber, Map<Outcome, Held> outcomes, boolean reaches) {

  /// Copies the outcomes.
  public Lever {
    outcomes = Map.copyOf(outcomes);
  }

  /// What can be done.
  public enum Kind {
    ACCEPT("Carry on and accept it", true),
    BOIL_ON("Boil on, longer than planned", true),
    STOP_EARLY("Stop the boil early", true),
    DILUTE("Add boiled, cooled liquor in the fermenter", false),
    ADD_EXTRACT("Stir in dry extract (counted as dry matter) before the boil ends", false),
    HOPS("Change the hops that are still to go in", true);

    private final String says;
    private final boolean undoable;

    Kind(String says, boolean undoable) {
      this.says = says;
      this.undoable = undoable;
    }

    /// The same in words.
    public String says() {
      return says;
    }

    /// Whether it can be taken back until it is done.
    public boolean undoable() {
      return undoable;
    }
  }
}
