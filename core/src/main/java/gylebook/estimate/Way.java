package gylebook.estimate;

import gylebook.simulate.Change;
import gylebook.units.AnyUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

/// One way to put a day right: what any amount of it changes, and how much is possible.
///
/// @param kind what is done
/// @param raises goals that it brings up
/// @param lowers goals that it brings down
/// @param amountKey name of its amount, ending in its unit
/// @param shown what to call an amount counted from nothing done
/// @param stepNumber nobody measures it finer
/// @param mostNumber no more than this is possible; 0 when nothing is
/// @param binds what limits that
/// @param changes what an amount changes
@AnyUnit("an amount has the unit that its key names")
record Way(
    Lever.Kind kind,
    Set<Goal> raises,
    Set<Goal> lowers,
    String amountKey,
    DoubleUnaryOperator shown,
    double stepNumber,
    double mostNumber,
    Lever.Limit binds,
    DoubleFunction<List<Change>> changes) {

  private static final double FINE_NUMBER = 1e6;

  boolean helps(Levers.Off off) {
    return (off.missRatio() < 0 ? raises : lowers).contains(off.goal());
  }

  /// An amount as it would be measured, and no more than is possible.
  double measured(double amount) {
    double steps = Math.rint(amount / stepNumber);
    double most = Math.floor(mostNumber / stepNumber + 1e-9);
    double counted = Math.clamp(steps, 0, Math.max(0, most)) * stepNumber;
    return Math.rint(counted * FINE_NUMBER) / FINE_NUMBER;
  }

  /// What became of trying it.
  sealed interface Tried {
    /// Adds it where it belongs.
    void put(List<Lever> offered, List<Levers.Refused> refused);

    /// It can be done.
    record Offered(Lever lever) implements Tried {
      @Override
      public void put(List<Lever> offered, List<Levers.Refused> refused) {
        offered.add(lever);
      }
    }

    /// It cannot be done.
    record Not(Levers.Refused why) implements Tried {
      @Override
      public void put(List<Lever> offered, List<Levers.Refused> refused) {
        refused.add(why);
      }
    }
  }

  Tried refused(Lever.Limit because) {
    return new Tried.Not(new Levers.Refused(kind, because));
  }

  Tried offered(double amount, Levers.Off towards, boolean meets, Lever.Comes comes, double miss) {
    return new Tried.Offered(
        new Lever(
            kind,
            changes.apply(amount),
            amountKey,
            shown.applyAsDouble(amount),
            Optional.of(towards.goal()),
            meets,
            meets ? Optional.empty() : Optional.of(binds),
            comes,
            miss));
  }
}
