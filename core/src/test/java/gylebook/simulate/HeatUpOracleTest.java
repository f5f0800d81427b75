package gylebook.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.science.Evaporation;
import gylebook.science.LatentHeat;
import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/// An open kettle of water heated at full power to the boil: the simulator against the same balance
/// written down plainly and solved by Hipparchus' adaptive integrator (Dormand-Prince 8(5,3),
/// 1e-10), without tables, chains or clamps.
class HeatUpOracleTest {
  private static final double WATER_KG = 40;
  private static final double START_C = 15;

  /// `C dT/dt = P - UA (T - Tw) - surface`, `Cw dTw/dt = UA (T - Tw) - UAroom (Tw - Troom)`, and
  /// the water that has left as steam.
  private static final class PlainBalance implements OrdinaryDifferentialEquation {
    private final Member member;

    PlainBalance(Member member) {
      this.member = member;
    }

    @Override
    public int getDimension() {
      return 3;
    }

    @Override
    public double[] computeDerivatives(double t, double[] y) {
      double steamKgPerSec =
          member.surfaceM2
              * member.steamKgPerSecFactor
              * Evaporation.openKgPerM2Sec(
                  Math.min(y[0], member.waterBoilsC - 1),
                  member.roomC,
                  member.roomHumidityFrac,
                  member.pressureKpa);
      double surfaceW =
          steamKgPerSec * LatentHeat.latentJPerKg(Math.min(y[0], member.waterBoilsC - 1))
              + member.lidOffWPerK * (y[0] - member.roomC);
      double wallW = member.wortToWallWPerK * (y[0] - y[1]);
      double roomW = member.wallWPerK * (y[1] - member.roomC);
      double capacityJPerK = (WATER_KG - y[2]) * Flows.WATER_J_PER_KG_K;
      return new double[] {
        (member.elementW - wallW - surfaceW) / capacityJPerK,
        (wallW - roomW) / member.steelJPerK,
        steamKgPerSec
      };
    }
  }

  private static double[] plainAt(Member member, double sec) {
    DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-6, 15, 1e-10, 1e-10);
    ODEState start = new ODEState(0, new double[] {START_C, START_C, 0});
    return integrator.integrate(new PlainBalance(member), start, sec).getPrimaryState();
  }

  @Test
  void theTimeToTheBoilIsThatOfThePlainBalance() {
    Member member = ReferenceBrew.member();
    double boilsC = member.boilsC(0);
    double plainSec =
        new BrentSolver(1e-4).solve(200, sec -> plainAt(member, sec)[0] - boilsC, 1500, 4500);
    BrewState state = ReferenceBrew.start();
    DayLog log = new DayLog(0, 0);
    Leg heat = ReferenceBrew.byHand("boil", 1, Leg.Pump.OFF, new Leg.Until.Boils());
    new Simulator().run(List.of(heat), member, state, log, false);
    double simulatedSec = log.at("boil", DayLog.Column.AT_SEC);
    // A second or two in fifty minutes: the step, the table a kelvin apart, 2 mK at the event.
    assertThat(simulatedSec).isCloseTo(plainSec, within(4.0));
    assertThat(state.steamKg).isCloseTo(plainAt(member, plainSec)[2], within(0.01));
    assertThat(state.wallC).isCloseTo(plainAt(member, plainSec)[1], within(0.05));
  }
}
