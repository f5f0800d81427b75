package gylebook.estimate;

import gylebook.recipe.Boil;
import gylebook.recipe.Hop;
import gylebook.science.WortDensity;
import gylebook.simulate.Ahead;
import gylebook.simulate.BrewDay;
import gylebook.simulate.DayLog;
import gylebook.simulate.Outcome;
import gylebook.simulate.Settings;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;

/// Ways to put a day right: each solved for its amount and simulated, with the same luck, from
/// where every twin stands.
///
/// Boil and hops are simulated through. What is added to the finished wort is a balance of masses
/// in every twin: `E' = E + dE`, `M' = M + dM`, strength `E'/M'`, litres `M'/rho(E'/M', 20 C)`;
/// bitterness and colour are spread over the new litres. A lever whose time has passed is not
/// offered; one that cannot come to the aim says so.
@AnyUnit("columns of every quantity")
public final class Levers {
  // How far a lever is followed, and what is worth pulling one for (our judgement).
  private static final double MOST_MORE_SEC = 3600;
  private static final double LEAST_BOIL_SEC = 600;
  private static final double MOST_HOPS_FACTOR = 3;
  private static final double LEAST_HOPS_FACTOR = 0.2;
  private static final double WORTH_PLATO = 0.15;
  private static final double WORTH_RATIO = 0.04;
  private static final double SCALE_C = 20;
  private static final double PERCENT = 100;
  private static final int HALVINGS = 7;
  private static final List<Outcome> SHOWN =
      List.of(
          Outcome.STRENGTH,
          Outcome.FERMENTER,
          Outcome.BITTERNESS,
          Outcome.COLOUR,
          Outcome.DAY,
          Outcome.ENERGY);

  private final Belief belief;
  private final double wantedPlato;
  private final double wantedMgPerL;
  private final Map<Outcome, double[]> asItIs;

  private Levers(Belief belief, double wantedPlato, double wantedMgPerL) {
    this.belief = belief;
    this.wantedPlato = wantedPlato;
    this.wantedMgPerL = wantedMgPerL;
    this.asItIs = columns(belief.ahead());
  }

  /// What can be done now, to accept first.
  ///
  /// @param belief as it stands
  /// @param wantedPlato strength that was planned
  /// @param wantedMgPerL bitterness that was planned; not above 0 when none was
  public static List<Lever> of(Belief belief, double wantedPlato, double wantedMgPerL) {
    return new Levers(belief, wantedPlato, wantedMgPerL).offered();
  }

  private List<Lever> offered() {
    List<Lever> levers = new ArrayList<>();
    double offPlato = mean(Outcome.STRENGTH) - wantedPlato;
    boolean onAim = Math.abs(offPlato) <= WORTH_PLATO;
    levers.add(lever(Lever.Kind.ACCEPT, "", Double.NaN, asItIs, onAim));
    if (!onAim && boilAhead()) {
      levers.add(boil(offPlato));
    }
    if (offPlato > WORTH_PLATO) {
      levers.add(added(Lever.Kind.DILUTE, "liquorL", this::diluted, litresToAim()));
    }
    if (offPlato < -WORTH_PLATO && boilAhead()) {
      levers.add(added(Lever.Kind.ADD_EXTRACT, "extractKg", this::sweetened, extractToAimKg()));
    }
    hops().ifPresent(levers::add);
    return levers;
  }

  private boolean boilAhead() {
    String key = belief.leg().key();
    boolean after = key.startsWith("stand") || key.startsWith("stood") || key.equals("knockOut");
    return belief.underWay() && !after && !key.equals("chilled") && !key.equals("cast");
  }

  private double mean(Outcome outcome) {
    return SquareRootFilter.mean(column(asItIs, outcome));
  }

  /// More boil makes it stronger, less makes it weaker; how much is found by halving.
  private Lever boil(double offPlato) {
    double holdSec = day().recipe().boil().holdSec().inside();
    boolean on = offPlato < 0;
    double mostSec = on ? MOST_MORE_SEC : -Math.max(0, holdSec - leastHoldSec());
    DoubleFunction<Map<Outcome, double[]>> tried = sec -> simulated(this::same, holdSec + sec);
    double sec = found(tried, Outcome.STRENGTH, wantedPlato, 0, mostSec);
    Map<Outcome, double[]> came = tried.apply(sec);
    double missPlato = SquareRootFilter.mean(column(came, Outcome.STRENGTH)) - wantedPlato;
    return lever(
        on ? Lever.Kind.BOIL_ON : Lever.Kind.STOP_EARLY,
        on ? "longerSec" : "shorterSec",
        Math.abs(sec),
        came,
        Math.abs(missPlato) <= WORTH_PLATO);
  }

  /// What was boiled already cannot be taken back.
  private double leastHoldSec() {
    boolean boiling =
        belief.leg().key().startsWith("hop.") || belief.leg().key().equals("flameOut");
    if (!boiling) {
      return LEAST_BOIL_SEC;
    }
    double flameOutSec =
        SquareRootFilter.mean(belief.ahead().milestone("flameOut", DayLog.Column.AT_SEC));
    double leftSec = Math.max(0, flameOutSec - belief.clockSec());
    return day().recipe().boil().holdSec().inside() - leftSec;
  }

  private Settings same(Settings settings) {
    return settings;
  }

  /// More or less of the hops that are still to come.
  private Optional<Lever> hops() {
    double miss = mean(Outcome.BITTERNESS) - wantedMgPerL;
    boolean worth = wantedMgPerL > 0 && Math.abs(miss) > WORTH_RATIO * wantedMgPerL;
    if (!worth || !hopsAhead()) {
      return Optional.empty();
    }
    double holdSec = day().recipe().boil().holdSec().inside();
    DoubleFunction<Map<Outcome, double[]>> tried =
        factor -> simulated(set -> hopped(set, factor), holdSec);
    double mostFactor = miss < 0 ? MOST_HOPS_FACTOR : LEAST_HOPS_FACTOR;
    double factor = found(tried, Outcome.BITTERNESS, wantedMgPerL, 1, mostFactor);
    Map<Outcome, double[]> came = tried.apply(factor);
    double left = SquareRootFilter.mean(column(came, Outcome.BITTERNESS)) - wantedMgPerL;
    boolean reaches = Math.abs(left) <= WORTH_RATIO * wantedMgPerL;
    return Optional.of(lever(Lever.Kind.HOPS, "hopsFactor", factor, came, reaches));
  }

  private boolean hopsAhead() {
    List<String> ahead = belief.ahead().keys();
    int here = ahead.indexOf(belief.leg().key());
    List<Hop> hops = day().recipe().hops();
    for (int i = 0; i < hops.size(); i++) {
      boolean inBoil = hops.get(i).when() instanceof Hop.When.InBoil;
      if (inBoil && here >= 0 && ahead.indexOf("hop." + i) >= here) {
        return true;
      }
    }
    return false;
  }

  private static Settings hopped(Settings set, double factor) {
    return new Settings(
        set.liquorL(),
        set.strikeC(),
        set.mashOffsetK(),
        set.gristFactor(),
        set.hopFactor() * factor,
        set.boilDutyFrac(),
        set.topUpL());
  }

  private Map<Outcome, double[]> simulated(UnaryOperator<Settings> set, double holdSec) {
    BrewDay day = day();
    Boil boil = day.recipe().boil();
    Entered hold = Entered.of(holdSec, Quantity.TIME.inside());
    Boil changed = new Boil(hold, boil.evaporationLPerSec(), boil.dutyFrac());
    BrewDay other =
        new BrewDay(day.recipe().withBoil(changed), day.rig(), set.apply(day.settings()));
    return columns(belief.supposing(other, belief.instruments(), leg -> leg).ahead());
  }

  private BrewDay day() {
    return belief.twins().day();
  }

  /// Where the middle of an outcome comes to what is wanted, between nothing and the most.
  private static double found(
      DoubleFunction<Map<Outcome, double[]>> tried,
      Outcome outcome,
      double wanted,
      double nothing,
      double most) {
    double from = nothing;
    double to = most;
    double fromMiss = SquareRootFilter.mean(column(tried.apply(from), outcome)) - wanted;
    double toMiss = SquareRootFilter.mean(column(tried.apply(to), outcome)) - wanted;
    if (fromMiss * toMiss > 0) {
      // Even all of it does not come to the aim; what comes nearest is offered.
      return Math.abs(toMiss) < Math.abs(fromMiss) ? most : nothing;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (from + to) / 2;
      double miss = SquareRootFilter.mean(column(tried.apply(middle), outcome)) - wanted;
      if (miss * fromMiss > 0) {
        from = middle;
      } else {
        to = middle;
      }
    }
    return (from + to) / 2;
  }

  private double wortKg() {
    double extractFrac = mean(Outcome.STRENGTH) / PERCENT;
    return mean(Outcome.FERMENTER) * WortDensity.wortKgPerL(extractFrac, SCALE_C);
  }

  private double litresToAim() {
    double extractFrac = mean(Outcome.STRENGTH) / PERCENT;
    double waterKg = wortKg() * (extractFrac / (wantedPlato / PERCENT) - 1);
    return waterKg / WortDensity.wortKgPerL(0, SCALE_C);
  }

  private double extractToAimKg() {
    double wantedFrac = wantedPlato / PERCENT;
    return wortKg() * (wantedFrac - mean(Outcome.STRENGTH) / PERCENT) / (1 - wantedFrac);
  }

  private Lever added(
      Lever.Kind kind, String key, DoubleFunction<Map<Outcome, double[]>> with, double amount) {
    return lever(kind, key, amount, with.apply(amount), true);
  }

  private Map<Outcome, double[]> diluted(double liquorL) {
    return blended(liquorL * WortDensity.wortKgPerL(0, SCALE_C), 0);
  }

  private Map<Outcome, double[]> sweetened(double extractKg) {
    return blended(extractKg, extractKg);
  }

  private Map<Outcome, double[]> blended(double moreKg, double moreExtractKg) {
    Map<Outcome, double[]> came = new EnumMap<>(Outcome.class);
    asItIs.forEach((outcome, column) -> came.put(outcome, column.clone()));
    for (int j = 0; j < column(came, Outcome.STRENGTH).length; j++) {
      double extractFrac = column(asItIs, Outcome.STRENGTH)[j] / PERCENT;
      double beforeL = column(asItIs, Outcome.FERMENTER)[j];
      double beforeKg = beforeL * WortDensity.wortKgPerL(extractFrac, SCALE_C);
      double afterFrac = (beforeKg * extractFrac + moreExtractKg) / (beforeKg + moreKg);
      double afterL = WortDensity.wortL(beforeKg + moreKg, afterFrac, SCALE_C);
      column(came, Outcome.STRENGTH)[j] = PERCENT * afterFrac;
      column(came, Outcome.FERMENTER)[j] = afterL;
      column(came, Outcome.BITTERNESS)[j] *= beforeL / afterL;
      column(came, Outcome.COLOUR)[j] *= beforeL / afterL;
    }
    return came;
  }

  private static double[] column(Map<Outcome, double[]> columns, Outcome outcome) {
    return Objects.requireNonNull(columns.get(outcome), "every shown outcome has a column");
  }

  private static Map<Outcome, double[]> columns(Ahead ahead) {
    Map<Outcome, double[]> columns = new EnumMap<>(Outcome.class);
    SHOWN.forEach(outcome -> columns.put(outcome, ahead.outcome(outcome)));
    return columns;
  }

  private static Lever lever(
      Lever.Kind kind,
      String key,
      double amountNumber,
      Map<Outcome, double[]> columns,
      boolean reaches) {
    Map<Outcome, Held> held = new EnumMap<>(Outcome.class);
    columns.forEach(
        (outcome, column) -> {
          if (Arrays.stream(column).allMatch(Double::isFinite)) {
            held.put(outcome, Held.of(column));
          }
        });
    return new Lever(kind, key, amountNumber, held, reaches);
  }
}
