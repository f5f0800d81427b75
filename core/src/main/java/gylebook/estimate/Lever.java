package gylebook.estimate;

import gylebook.plan.Band;
import gylebook.simulate.Ahead;
import gylebook.simulate.Change;
import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// Something that can still be done about a day that runs off its plan, with what would come of it.
///
/// @param kind what is done
/// @param changes the same as data: what to give to [Belief#change]
/// @param amountKey name of its amount, ending in its unit; empty when there is none
/// @param amountNumber how much, in that unit; NaN when there is none
/// @param towards what the amount was solved for; empty when nothing is done
/// @param meets whether the middle then meets what is wanted of that
/// @param binds what keeps it from meeting it; empty when nothing does
/// @param comes what would come of it, from the same draws as every other lever
/// @param missNumber how far the middles then lie from all that is wanted, in tolerances
@AnyUnit("an amount has the unit that its key names")
public record Lever(
    Kind kind,
    List<Change> changes,
    String amountKey,
    double amountNumber,
    Optional<Goal> towards,
    boolean meets,
    Optional<Limit> binds,
    Comes comes,
    double missNumber) {

  /// Copies the list.
  public Lever {
    changes = List.copyOf(changes);
  }

  /// What can be done.
  public enum Kind {
    BOIL_ON("Boil on.", Undo.PARTLY, "Liquor can be added back; what it does to the hops stays."),
    STOP_EARLY("Stop the boil early.", Undo.PARTLY, "Before it is chilled it can boil again."),
    DILUTE("Add liquor.", Undo.PARTLY, "Only by boiling it away again; in the fermenter, never."),
    ADD_EXTRACT("Add dry malt extract.", Undo.NEVER, "What is dissolved stays."),
    ADD_SUGAR("Add sugar.", Undo.NEVER, "What is dissolved stays."),
    HOLD_BACK("Take wort out before it boils.", Undo.PARTLY, "As long as you keep it hot."),
    FEWER_LITRES("Leave the rest in the kettle.", Undo.PARTLY, "Until the kettle is emptied."),
    LONGER_REST("Rest the mash longer.", Undo.NEVER, "What has dissolved stays."),
    LONGER_STAND("Let it stand hot longer.", Undo.NEVER, "What the hops gave stays."),
    MORE_HOPS("Weigh more of the hops to come.", Undo.PARTLY, "Until they are in."),
    FEWER_HOPS("Weigh less of the hops to come.", Undo.PARTLY, "More can be added later."),
    HOPS_EARLIER("Add the hops to come earlier.", Undo.NEVER, "What they gave stays."),
    HOPS_LATER("Add the hops to come later.", Undo.PARTLY, "Until then."),
    ACCEPT("Leave it as it is.", Undo.EASILY, "Nothing is done.");

    private final String says;
    private final Undo undo;
    private final String undoSays;

    Kind(String says, Undo undo, String undoSays) {
      this.says = says;
      this.undo = undo;
      this.undoSays = undoSays;
    }

    /// The same in words.
    public String says() {
      return says;
    }

    /// Whether it can be undone.
    public Undo undo() {
      return undo;
    }

    /// How it can be undone, or why not.
    public String undoSays() {
      return undoSays;
    }
  }

  /// Whether something can be undone.
  public enum Undo {
    EASILY("It can be undone."),
    PARTLY("It can be undone in part, or for a while."),
    NEVER("It cannot be undone.");

    private final String says;

    Undo(String says) {
      this.says = says;
    }

    /// The same in words.
    public String says() {
      return says;
    }
  }

  /// What binds a lever, or rules it out.
  public enum Limit {
    KETTLE_FULL("The kettle has no room for more."),
    FERMENTER_FULL("The fermenter has no room for more."),
    ELEMENT_BARE("With less wort the element would come too near the surface."),
    TOO_STRONG("More would make a syrup, beyond what the formulas and most yeasts are good for."),
    TIME_PAST("It is too late for that."),
    NO_HOPS("No hops are left to go in."),
    NOTHING_LEFT("No more than that is left."),
    ENOUGH("More than that is no remedy any more."),
    HARDLY_HELPS("It would hardly change anything.");

    private final String says;

    Limit(String says) {
      this.says = says;
    }

    /// The same in words.
    public String says() {
      return says;
    }
  }

  /// What would come of the day: each 5, 50 and 95 in 100.
  ///
  /// @param strengthPlato of the wort in the fermenter; extract added is counted
  /// @param fermenterL litres there
  /// @param bitternessMgPerL of the beer
  /// @param colourEbc of the beer; colour of extract that is added is not counted
  /// @param endSec when the kettle is empty, since the day began
  /// @param energyJ what the element draws over the day
  public record Comes(
      Band strengthPlato,
      Band fermenterL,
      Band bitternessMgPerL,
      Band colourEbc,
      Band endSec,
      Band energyJ) {

    static Comes of(Ahead ahead) {
      return new Comes(
          band(ahead.outcome(Outcome.STRENGTH)),
          band(ahead.outcome(Outcome.FERMENTER)),
          band(ahead.outcome(Outcome.BITTERNESS)),
          band(ahead.outcome(Outcome.COLOUR)),
          band(ahead.outcome(Outcome.DAY)),
          band(ahead.outcome(Outcome.ENERGY)));
    }

    /// The band of a goal.
    public Band of(Goal goal) {
      return switch (goal) {
        case STRENGTH -> strengthPlato;
        case LITRES -> fermenterL;
        case BITTERNESS -> bitternessMgPerL;
        case COLOUR -> colourEbc;
      };
    }

    /// How far the middles lie from what is wanted, in tolerances.
    double missNumber(Wanted wanted) {
      return Arrays.stream(Goal.values())
          .mapToDouble(goal -> Math.abs(of(goal).middle() - wanted.of(goal)) / goal.tolerance())
          .map(off -> off * off)
          .sum();
    }
  }

  static Band band(double[] column) {
    double[] sorted = column.clone();
    Arrays.sort(sorted);
    return new Band(
        Held.quantile(sorted, 0.05), Held.quantile(sorted, 0.5), Held.quantile(sorted, 0.95));
  }
}
