package gylebook.simulate;

import gylebook.science.Circuit;
import gylebook.science.WortDensity;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/// What one thread needs to take up one twin after another, move it, and put it back.
@AnyUnit("looks at every quantity")
final class Hand {
  // As the run-off reckons it: about the middle of a chiller.
  private static final double CHILLER_C = 60;

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
    return Course.changed(columns.day.actions(member, lots), columns.changes, member, lots);
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
    if (!(next.drive() instanceof Leg.Drive.ByHand) && state.integralFrac == 0) {
      double offK = setC(next.drive()) - state.probeC - member.probeBiasK;
      double duty = state.dutyFrac - member.gainFracPerK * offK;
      state.integralFrac = columns.clockSec > columns.legFromSec ? Math.clamp(duty, 0, 1) : 0;
    }
  }

  /// A set point that climbed while the duty was logged is about where the reading is.
  private double setC(Leg.Drive drive) {
    if (drive instanceof Leg.Drive.Rising rising) {
      double fromC = Math.max(state.setC, rising.fromC());
      double readC = state.probeC + member.probeBiasK;
      state.setC = Math.clamp(readC, Math.min(fromC, rising.setC()), rising.setC());
    }
    return drive instanceof Leg.Drive.Automatic held ? held.setC() : state.setC;
  }

  double looks(Sight sight, Leg now) {
    return switch (sight) {
      case RING_M -> Views.outsideM(state, member, running(now));
      case COVER_M -> Views.outsideM(state, member, running(now)) - member.elementTopM;
      case ROOM_M -> member.heightM - Views.restM(state, member);
      case SPARE_SUCTION_M -> Views.suctionM(state, member);
      case GOODS_KG -> state.bagIn ? state.solidsKg() : 0;
      case CHILLED_C -> Chilling.castC(member, state.kettleC, wortJPerLK());
      case ELEMENT_A -> Circuit.currentA(member.elementW, member.mainsV);
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

  private Flows running(Leg now) {
    Flows flows = new Flows();
    flows.weigh(state, member);
    flows.run(state, member, now);
    return flows;
  }

  private double wortJPerLK() {
    double extractFrac = state.extractFrac();
    return Flows.wortJPerKgK(extractFrac) * WortDensity.wortKgPerL(extractFrac, CHILLER_C);
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
