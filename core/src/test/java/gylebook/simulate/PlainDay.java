package gylebook.simulate;

import gylebook.units.AnyUnit;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/// A day of [PlainModel] under any integrator: classic Runge-Kutta in small even steps, or one of
/// Hipparchus' with its own search for events. What is done in a moment ([Deeds]) is shared with
/// the simulator; everything that takes time is not.
@AnyUnit("moves vectors of every quantity")
public final class PlainDay {
  /// Moves the vector over time until the model's gap closes; gives the time reached.
  @FunctionalInterface
  public interface Mover {
    /// From one time towards another; `y` is overwritten.
    double movedSec(PlainModel model, double fromSec, double[] y, double toSec);
  }

  private final Mover mover;
  private final boolean tabled;
  private final Flows flows = new Flows();
  private int evaluations;

  /// A day under this mover, every rate by its formula.
  public PlainDay(Mover mover) {
    this(mover, false);
  }

  /// A day under this mover; with tables it is cheaper by what tables are worth.
  public PlainDay(Mover mover, boolean tabled) {
    this.mover = mover;
    this.tabled = tabled;
  }

  /// Runge's and Kutta's fourth order in steps of one length; the step that an event falls into is
  /// halved until it is found.
  public static Mover evenSteps(double stepSec) {
    return (model, fromSec, y, toSec) -> {
      double nowSec = fromSec;
      boolean before = model.gapNumber(y) < 0;
      while (nowSec < toSec - 1e-9) {
        double wantedSec = Math.min(stepSec, toSec - nowSec);
        double[] next = rungeKutta(model, y, wantedSec);
        boolean after = model.gapNumber(next) >= 0;
        if (before && after) {
          double shortSec = 0;
          for (int i = 0; i < 40; i++) {
            double middleSec = (shortSec + wantedSec) / 2;
            if (model.gapNumber(rungeKutta(model, y, middleSec)) >= 0) {
              wantedSec = middleSec;
            } else {
              shortSec = middleSec;
            }
          }
          next = rungeKutta(model, y, wantedSec);
          System.arraycopy(next, 0, y, 0, y.length);
          return nowSec + wantedSec;
        }
        before = !after;
        System.arraycopy(next, 0, y, 0, y.length);
        nowSec += wantedSec;
      }
      return nowSec;
    };
  }

  private static double[] rungeKutta(PlainModel model, double[] y, double stepSec) {
    double[] k1 = model.computeDerivatives(0, y);
    double[] k2 = model.computeDerivatives(0, sum(y, stepSec / 2, k1));
    double[] k3 = model.computeDerivatives(0, sum(y, stepSec / 2, k2));
    double[] k4 = model.computeDerivatives(0, sum(y, stepSec, k3));
    double[] next = new double[y.length];
    for (int i = 0; i < y.length; i++) {
      next[i] = y[i] + stepSec / 6 * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]);
    }
    return next;
  }

  private static double[] sum(double[] y, double stepSec, double[] slope) {
    double[] at = new double[y.length];
    for (int i = 0; i < y.length; i++) {
      at[i] = y[i] + stepSec * slope[i];
    }
    return at;
  }

  /// An integrator of Hipparchus; its events stop it.
  ///
  /// @param integrator which
  /// @param checkSec how far apart events are looked for
  /// @param foundSec how exactly they are found
  public static Mover by(ODEIntegrator integrator, double checkSec, double foundSec) {
    return (model, fromSec, y, toSec) -> {
      integrator.clearEventDetectors();
      integrator.addEventDetector(new Gap(model, checkSec, foundSec));
      ODEStateAndDerivative end = integrator.integrate(model, new ODEState(fromSec, y), toSec);
      System.arraycopy(end.getPrimaryState(), 0, y, 0, y.length);
      return end.getTime();
    };
  }

  private record Gap(PlainModel model, double checkSec, double foundSec)
      implements ODEEventDetector {
    @Override
    public AdaptableInterval getMaxCheckInterval() {
      return (state, forward) -> checkSec;
    }

    @Override
    public int getMaxIterationCount() {
      return 200;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
      return new BracketingNthOrderBrentSolver(0, foundSec, 0, 5);
    }

    @Override
    public ODEEventHandler getHandler() {
      return (state, detector, increasing) -> increasing ? Action.STOP : Action.CONTINUE;
    }

    @Override
    public double g(ODEStateAndDerivative state) {
      return model.gapNumber(state.getPrimaryState());
    }
  }

  /// Runs the actions; the state and the milestones of the log are overwritten.
  public void run(
      List<gylebook.simulate.Action> actions, Member member, BrewState state, DayLog log) {
    Deeds deeds = new Deeds(flows);
    log.clear(false);
    int hops = hops(actions);
    evaluations = 0;
    for (gylebook.simulate.Action action : actions) {
      switch (action) {
        case Leg leg -> leg(leg, new PlainModel(member, hops, tabled), state);
        case gylebook.simulate.Action.Deed deed -> deeds.apply(deed, state, member);
      }
      if (action instanceof Leg leg) {
        flows.weigh(state, member);
        log.milestone(leg.key(), state, member, flows);
      } else if (action instanceof gylebook.simulate.Action.Mark mark) {
        log.milestone(mark.key(), state, member, flows);
      }
    }
  }

  /// Evaluations of the right-hand side in the last run.
  public int evaluations() {
    return evaluations;
  }

  private static int hops(List<gylebook.simulate.Action> actions) {
    return (int)
        actions.stream().filter(a -> a instanceof gylebook.simulate.Action.AddHops).count();
  }

  private void leg(Leg leg, PlainModel model, BrewState state) {
    double mostSec = leg.until() instanceof Leg.Until.After after ? after.holdSec() : leg.mostSec();
    double endSec = state.clockSec + mostSec;
    if (leg.drive() instanceof Leg.Drive.ByHand) {
      state.integralFrac = 0;
    }
    model.turnTo(leg, state);
    double[] y = model.read(state);
    double nowSec = state.clockSec;
    double risesSec = model.risesSec(y);
    model.switchBoil(y);
    // An event is passed when its gap is closed to a part in ten million.
    while (nowSec < endSec - 1e-6 && model.legGapNumber(y) < -1e-7) {
      double toSec = risesSec > 0 ? Math.min(endSec, nowSec + risesSec) : endSec;
      nowSec = mover.movedSec(model, nowSec, y, toSec);
      risesSec = model.risesSec(y);
      model.switchBoil(y);
    }
    state.clockSec = nowSec;
    model.write(y, state);
    evaluations += model.evaluations();
  }
}
