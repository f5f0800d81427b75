package gylebook.testing;

import gylebook.units.AnyUnit;
import org.hipparchus.ode.ExpandableODE;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/// Rates solved by a general-purpose library, as a second way to what the science solves itself.
@AnyUnit("states, times and rates of any unit")
public final class Integrated {
  private static final double TOLERANCE = 1e-11;

  private Integrated() {}

  /// How fast a state changes.
  @FunctionalInterface
  public interface Rates {
    double[] at(double time, double[] state);
  }

  /// The state after a time, by Dormand and Prince's pair of orders 8 and 5(3).
  ///
  /// @param mostStep so that no kink is stepped over
  public static double[] after(double time, double mostStep, double[] start, Rates rates) {
    OrdinaryDifferentialEquation law =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return start.length;
          }

          @Override
          public double[] computeDerivatives(double now, double[] state) {
            return rates.at(now, state);
          }
        };
    return new DormandPrince853Integrator(1e-9, mostStep, TOLERANCE, TOLERANCE)
        .integrate(new ExpandableODE(law), new ODEState(0, start), time)
        .getPrimaryState();
  }
}
