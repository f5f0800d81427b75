package gylebook.plan;

import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import gylebook.simulate.Settings;
import java.util.List;

/// How to brew this beer on this rig.
///
/// @param recipe with the masses to weigh
/// @param rig the rig it is for
/// @param settings what to set
/// @param steps the day's list, in order
/// @param slopes what each unit of deviation does, for the wall sheet
/// @param forecast what will come of it
public record Plan(
    Recipe recipe,
    Rig rig,
    Settings settings,
    List<PlannedStep> steps,
    List<Slope> slopes,
    Forecast forecast) {

  /// Copies the lists.
  public Plan {
    steps = List.copyOf(steps);
    slopes = List.copyOf(slopes);
  }

  /// One line of the day's list.
  ///
  /// @param milestone key of the milestone it leads to
  /// @param does what to do, in words, figures left out
  /// @param key name of its figure, ending in its unit; empty when there is none
  /// @param amountNumber the figure in that unit; NaN when there is none
  public record PlannedStep(String milestone, String does, String key, double amountNumber) {

    /// The same with another amount.
    public PlannedStep withAmount(double newAmountNumber) {
      return new PlannedStep(milestone, does, key, newAmountNumber);
    }

    /// What goes into the boil, with so much of the boil left then; any other step as it is.
    public PlannedStep withBoilLeft(double leftSec) {
      return new PlannedStep(milestone, Steps.withBoilLeft(does, leftSec), key, amountNumber);
    }
  }

  /// One line of the "if you are off by" list: a straight line, valid only near the plan.
  ///
  /// @param what what is off, and which way: "liquor over"
  /// @param offKey by what it is counted, ending in its unit: `liquorL`
  /// @param offNumber off by so much, in that unit
  /// @param withinNumber the line holds up to about so much
  /// @param figureKey what changes, ending in its unit
  /// @param changeNumber by how much, in that unit
  public record Slope(
      String what,
      String offKey,
      double offNumber,
      double withinNumber,
      String figureKey,
      double changeNumber) {}
}
