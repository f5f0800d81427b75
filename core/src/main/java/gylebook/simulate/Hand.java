package gylebook.simulate;

import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/// What one thread needs to take up one twin after another, move it, and put it back.
@AnyUnit("looks at every quantity")
final class Hand {
  private final Columns columns;
  final Doubts numbers;
  final Member member = new Member();
  final Lots lots = new Lots();
  final BrewState state = new BrewState();
  final DayLog log = new DayLog(0, 0);
  final Simulator simulator = new Simulator();
  final double[] out = new double[Outcome.values().length];

  void turnTo(int twin) {
    numbers.give(columns.draws);
    numbers.turnTo(twin);
    member.read(columns.day.rig(), numbers);
    lots.read(columns.day.recipe(), columns.day.settings(), numbers);
    member.read(columns.gauges, numbers);
  }

  void takeUp(int twin) {
    turnTo(twin);
    for (int i = 0; i < columns.kinds.size(); i++) {
      columns.kinds.get(i).set().accept(state, columns.state[i][twin]);
    }
    log.clear(false);
    log.takeUp(columns.log, twin, columns.passed, columns.clockSec);
    simulator.takeUp(member, state, log);
  }

  void putBack(int twin) {
    for (int i = 0; i < columns.kinds.size(); i++) {
      columns.state[i][twin] = columns.kinds.get(i).get().applyAsDouble(state);
    }
    log.keep(columns.log, twin);
  }

  List<Action> actions() {
    return columns.day.actions(member, lots);
  }

  Leg leg(int number) {
    return (Leg) actions().get(number);
  }

  /// What lies ahead of this twin.
  List<Action> left(UnaryOperator<Leg> as) {
    List<Action> all = actions();
    List<Action> left = new ArrayList<>();
    for (int i = columns.at; i < all.size(); i++) {
      Action action = all.get(i) instanceof Leg each ? as.apply(each) : all.get(i);
      left.add(i == columns.at ? columns.rest((Leg) action) : action);
    }
    return left;
  }

  /// A controller that takes over from a logged duty starts from it, without a bump.
  void bumpless(Leg next) {
    if (next.drive() instanceof Leg.Drive.Automatic automatic && state.integralFrac == 0) {
      double offK = automatic.setC() - state.probeC - member.probeBiasK;
      double duty = state.dutyFrac - member.gainFracPerK * offK;
      state.integralFrac = columns.clockSec > columns.legFromSec ? Math.clamp(duty, 0, 1) : 0;
    }
  }

  double looks(Sight sight) {
    return switch (sight) {
      case BOILS_C -> member.boilsC(state.extractFrac());
      case HOT_L -> Views.hotL(state, member);
      case COLD_L -> Views.coldL(state);
      case WORT_PLATO -> strength();
      case MIXED_PLATO -> Views.PLATO_PER_FRAC * state.extractFrac();
      case FLOW_L_PER_SEC -> member.mashLPerSec;
      case READ_C, WORT_C, GRAIN_C, SUCTION_C, RETURN_C, DUTY_FRAC, DUTY_SEC ->
          throw new IllegalArgumentException("A row of its own: " + sight);
    };
  }

  private double strength() {
    Flows flows = new Flows();
    flows.weigh(state, member);
    return Views.wortPlato(state, flows);
  }

  Hand(Columns columns) {
    this.columns = columns;
    this.numbers = new Doubts(columns.seed);
  }
}
