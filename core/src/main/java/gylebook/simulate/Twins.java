package gylebook.simulate;

import gylebook.rig.Parameter;
import gylebook.science.Require;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/// Many possible brews of one day, all held at the same moment: a column a brew, a row a quantity.
///
/// The day is the planned one; when a leg really ended, and what was really switched on in it, is
/// told from outside. What is not told yet lies ahead and is simulated from where each twin stands.
/// The rows may be corrected by readings between two moves; so may the draws of the rig's numbers,
/// which ride along as rows in standard deviations.
@AnyUnit("columns of every quantity")
public final class Twins {
  private static final int BLOCK = 16;

  private final Columns columns;
  private final ThreadLocal<Hand> hands = ThreadLocal.withInitial(this::newHand);
  private Leg leg;
  private int actionsCount = -1;

  private Twins(Columns columns, Leg leg) {
    this.columns = columns;
    this.leg = leg;
  }

  private Hand newHand() {
    return new Hand(columns);
  }

  /// Twins with cold liquor in the kettle.
  ///
  /// @param day what is brewed, as planned
  /// @param gauges thermometers beside the one that steers
  /// @param seed of the draws
  /// @param count how many
  public static Twins atStart(BrewDay day, List<Gauge> gauges, long seed, int count) {
    Require.within("number of gauges", gauges.size(), 0, Gauge.MOST);
    Require.above0("number of twins", count);
    return atStart(new Columns(day, gauges, seed, count));
  }

  /// The same twins before their day, as they hold the doubtful numbers now.
  public Twins backAtStart() {
    return atStart(columns.backAtStart());
  }

  private static Twins atStart(Columns columns) {
    Twins twins = new Twins(columns, Leg.idle("", 0));
    twins.each(
        j -> {
          Hand hand = twins.hands.get();
          hand.turnTo(j);
          hand.log.clear(false);
          double liquorL = columns.day.settings().liquorL() * hand.lots.liquorFactor;
          hand.state.clockSec = 0;
          Deeds.fill(hand.state, liquorL, hand.member.tapC);
          hand.putBack(j);
        });
    twins.toNextLeg(0);
    return twins;
  }

  /// The same brews once more, to try something on.
  public Twins copy() {
    return on(columns.day);
  }

  /// The first of them once more, for a quick look.
  public Twins first(int firstCount) {
    return new Twins(columns.first(Math.min(firstCount, columns.count)), leg);
  }

  /// The same brews on a day that differs in numbers, not in what is doubted or done.
  public Twins on(BrewDay other) {
    return new Twins(new Columns(columns, other), leg);
  }

  /// The day as planned.
  public BrewDay day() {
    return columns.day;
  }

  /// How many.
  public int count() {
    return columns.count;
  }

  /// Time since the day began.
  public double clockSec() {
    return columns.clockSec;
  }

  /// The leg that is under way, as planned for the first twin; its key is empty after the last.
  public Leg leg() {
    return leg;
  }

  /// When that leg began.
  public double legFromSec() {
    return columns.legFromSec;
  }

  /// Moves all to a time within the leg. What would end the leg by plan does not end it: that is
  /// told by [#ended].
  ///
  /// @param as what is really switched on
  public void advance(double toSec, UnaryOperator<Leg> as) {
    double forSec = toSec - columns.clockSec;
    Require.notBelow0("time to move by", forSec);
    if (forSec > 0 && underWay()) {
      each(
          j -> {
            Hand hand = hands.get();
            hand.takeUp(j);
            Leg now = as.apply(hand.leg(columns.at));
            hand.bumpless(now);
            hand.simulator.stretch(Columns.lasting(now, forSec));
            hand.putBack(j);
          });
    }
    columns.clockSec = toSec;
  }

  /// Moves a single brew on until a time, or until its leg ends by itself; whether it ended.
  public boolean live(double toSec, UnaryOperator<Leg> as) {
    if (columns.count != 1) {
      throw new IllegalStateException("There are " + columns.count + " brews; one alone can live.");
    }
    Hand hand = hands.get();
    hand.takeUp(0);
    Leg rest = columns.rest(as.apply(hand.leg(columns.at)));
    double forSec = Math.max(0, toSec - columns.clockSec);
    boolean timed = rest.until() instanceof Leg.Until.After;
    boolean over = timed && rest.mostSec() <= forSec;
    double mostSec = Math.min(forSec, rest.mostSec());
    boolean ended =
        hand.simulator.stretch(
            timed ? Columns.lasting(rest, mostSec) : rest.until(rest.until(), mostSec));
    hand.putBack(0);
    columns.clockSec = hand.state.clockSec;
    return over || ended;
  }

  /// The leg under way has ended now; what is done in a moment before the next one is done.
  public void ended() {
    each(
        j -> {
          Hand hand = hands.get();
          hand.takeUp(j);
          hand.simulator.milestone(leg.key());
          hand.putBack(j);
        });
    columns.passed.add(leg.key());
    toNextLeg(columns.at + 1);
  }

  private void toNextLeg(int from) {
    List<Action> first = firstActions();
    int next = from;
    while (next < first.size() && !(first.get(next) instanceof Leg)) {
      next++;
    }
    int end = next;
    each(
        j -> {
          Hand hand = hands.get();
          hand.takeUp(j);
          List<Action> actions = hand.actions();
          hand.simulator.goOn(actions.subList(from, end));
          hand.putBack(j);
        });
    for (Action action : first.subList(from, end)) {
      if (action instanceof Action.Mark mark) {
        columns.passed.add(mark.key());
      }
    }
    columns.at = next;
    columns.legFromSec = columns.clockSec;
    leg = underWay() ? (Leg) first.get(columns.at) : Leg.idle("", 0);
  }

  /// Decides on a change from now on, or does it when it is to be done at once.
  public void change(Change change) {
    switch (change) {
      case Change.Deed deed when deed.after().isEmpty() || !underWay() -> doNow(deed);
      case Change.Deed deed -> decide(deed.after(), change);
      case Change.Lasts lasts -> decide(lasts.key(), change);
      case Change.HopsTimes _ -> columns.changes.add(change);
    }
  }

  private void doNow(Change.Deed deed) {
    each(
        j -> {
          Hand hand = hands.get();
          hand.takeUp(j);
          hand.simulator.deed(Course.of(deed, hand.member, hand.lots));
          hand.putBack(j);
        });
  }

  private void decide(String key, Change change) {
    if (left().stream().noneMatch(a -> a instanceof Leg each && each.key().equals(key))) {
      throw new IllegalArgumentException("Nothing called '" + key + "' lies ahead.");
    }
    columns.changes.add(change);
    actionsCount = -1;
    leg = (Leg) firstActions().get(columns.at);
  }

  /// What is left to do for the first twin, what is left of the leg under way first.
  public List<Action> left() {
    Hand hand = hands.get();
    hand.turnTo(0);
    return hand.left(UnaryOperator.identity());
  }

  private List<Action> firstActions() {
    Hand hand = hands.get();
    hand.turnTo(0);
    return hand.actions();
  }

  /// Whether some leg is left.
  public boolean underWay() {
    return columns.at < firstActionsCount();
  }

  private int firstActionsCount() {
    if (actionsCount < 0) {
      actionsCount = firstActions().size();
    }
    return actionsCount;
  }

  /// When each twin would see the leg under way end by itself.
  public double[] endsSec(UnaryOperator<Leg> as) {
    double[] ends = new double[columns.count];
    each(
        j -> {
          Hand hand = hands.get();
          hand.takeUp(j);
          hand.simulator.stretch(columns.rest(as.apply(hand.leg(columns.at))));
          ends[j] = hand.state.clockSec;
        });
    return ends;
  }

  /// The rest of the day, simulated from where each twin stands.
  ///
  /// @param as what is really switched on, now and from now on
  public Ahead ahead(UnaryOperator<Leg> as) {
    List<Action> first = firstActions();
    List<String> keys = new ArrayList<>(columns.passed);
    for (Action action : first.subList(Math.min(columns.at, first.size()), first.size())) {
      switch (action) {
        case Leg each -> keys.add(each.key());
        case Action.Mark mark -> keys.add(mark.key());
        case Action.Deed _ -> {}
      }
    }
    Ahead ahead = new Ahead(keys, columns.count);
    each(
        j -> {
          Hand hand = hands.get();
          hand.takeUp(j);
          List<Action> left = hand.left(as);
          if (!left.isEmpty()) {
            hand.bumpless((Leg) left.getFirst());
          }
          hand.simulator.goOn(left);
          Harvest.gather(columns.day, hand.member, hand.lots, hand.state, hand.log, hand.out);
          ahead.take(j, hand.out, hand.log);
        });
    return ahead;
  }

  /// What is seen of each twin while all is as planned.
  public double[] sees(Sight sight) {
    return sees(sight, UnaryOperator.identity());
  }

  /// What is seen of each twin.
  ///
  /// @param as what is really switched on
  public double[] sees(Sight sight, UnaryOperator<Leg> as) {
    return switch (sight) {
      case WORT_C -> columns.row("kettleC").clone();
      case GRAIN_C -> grain();
      case SUCTION_C -> columns.row("stubC").clone();
      case RETURN_C -> columns.row("hoseC").clone();
      case DUTY_FRAC -> columns.row("dutyFrac").clone();
      case DUTY_SEC -> columns.row("dutySec").clone();
      case READ_C -> shown();
      case BOILS_C, HOT_L, COLD_L, WORT_PLATO, MIXED_PLATO, FLOW_L_PER_SEC -> looked(sight, as);
      case RING_M, COVER_M, ROOM_M, SPARE_SUCTION_M, CHILLED_C -> looked(sight, as);
      case GOODS_KG, ELEMENT_A -> looked(sight, as);
    };
  }

  private double[] shown() {
    int index = columns.doubts.indexOf("probe.biasK");
    double[] seen = columns.row("probeC").clone();
    Parameter bias = probeBias();
    Arrays.setAll(seen, j -> seen[j] + bias.at(index < 0 ? 0 : columns.draws[index][j]));
    return seen;
  }

  private double[] grain() {
    double[] bagIn = columns.row("bagIn");
    double[] bed = columns.row("bedC");
    double[] kettle = columns.row("kettleC");
    double[] seen = new double[columns.count];
    Arrays.setAll(seen, j -> bagIn[j] > 0 ? bed[j] : kettle[j]);
    return seen;
  }

  private double[] looked(Sight sight, UnaryOperator<Leg> as) {
    double[] seen = new double[columns.count];
    Leg now = as.apply(leg);
    each(
        j -> {
          Hand hand = hands.get();
          hand.takeUp(j);
          seen[j] = hand.looks(sight, now);
        });
    return seen;
  }

  /// What a gauge shows in each twin, its own bias left out.
  public double[] gauge(int number) {
    return columns.row("gauge." + number).clone();
  }

  /// Names of the doubtful numbers, in the order of their rows.
  public List<String> doubts() {
    return columns.doubts;
  }

  /// The draws of one doubtful number in standard deviations, live.
  public double[] draws(String name) {
    int index = columns.doubts.indexOf(name);
    if (index < 0) {
      throw new IllegalArgumentException("Nothing called '" + name + "' is in doubt.");
    }
    return columns.draws[index];
  }

  /// Every row that a reading may correct, live: draws, state, and what was noted so far.
  public List<double[]> correctable() {
    return columns.correctable();
  }

  /// Brings corrected rows back to what can be: no mass below nothing.
  public void settle() {
    columns.settle();
  }

  /// Lets the twins drift apart by what the model leaves out.
  public void wander(double kettleK, double bedK) {
    columns.wander(kettleK, bedK);
  }

  private void each(IntConsumer one) {
    int blocks = (columns.count + BLOCK - 1) / BLOCK;
    if (blocks == 1) {
      IntStream.range(0, columns.count).forEach(one);
      return;
    }
    IntStream.range(0, blocks)
        .parallel()
        .forEach(
            block ->
                IntStream.range(block * BLOCK, Math.min(columns.count, (block + 1) * BLOCK))
                    .forEach(one));
  }

  /// The steering thermometer of the day, as the model reads it.
  public Parameter probeBias() {
    return Member.steering(columns.day.rig()).biasK();
  }
}
