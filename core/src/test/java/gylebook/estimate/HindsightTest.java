package gylebook.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.plan.Demo;
import gylebook.rig.Bounds;
import gylebook.rig.DemoRigs;
import gylebook.rig.Origin;
import gylebook.rig.Parameter;
import gylebook.rig.Rig;
import gylebook.rig.Spread;
import gylebook.science.ForecastScore;
import gylebook.simulate.Ahead;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Luck;
import gylebook.simulate.Outcome;
import gylebook.units.Component;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;

/// A day looked at again, on invented days whose truth is known; and what is carried to the next.
///
/// Four days by seed; `-Plong` sixty. What is printed is all there is, met or not.
class HindsightTest {
  private static final boolean LONG = Boolean.getBoolean("long");
  private static final int DAYS = LONG ? 60 : 4;
  private static final int TWINS = LONG ? 150 : 120;

  private static Hindsight hindsight(Rehearsal day, Rig believed, int twins) {
    BrewDay planned = new BrewDay(Demo.copperBitter(), believed, Rehearsal.day().settings());
    return Hindsight.of(
        planned,
        day.belief.instruments(),
        20,
        twins,
        belief -> day.told.forEach(each -> each.accept(belief)),
        belief -> day.told.forEach(each -> each.accept(belief)));
  }

  private static Rehearsal rehearsal(long seed) {
    return new Rehearsal(seed, TWINS, Rehearsal.NONE, true).toTheEnd();
  }

  /// Where a hidden number really lies, in the doubts of what was believed.
  private static double inDoubts(Rehearsal day, String name) {
    String path = name.startsWith("probe.") ? "probes.0" + name.substring(5) : name;
    Parameter believed = (Parameter) Component.at(DemoRigs.household(), path);
    Parameter hidden = (Parameter) Component.at(day.truth.day().rig(), path);
    double real = hidden.at(day.truth.draws(name)[0]);
    return believed.spread() == Spread.LOG_NORMAL
        ? Math.log(real / believed.value()) / believed.doubt()
        : (real - believed.value()) / believed.doubt();
  }

  /// Two things that are hidden are scattered by more than anybody doubts, so a range may hold less
  /// often than it says; these are what the day can see.
  private static final List<String> SEEN =
      List.of(
          "kettle.wallWPerM2K",
          "kettle.evaporationFactor",
          "bag.squeezedKgPerKg",
          "bag.bedKgPerKg",
          "loop.hoseWPerK",
          "loop.mashLPerSec",
          "probe.biasK",
          "probe.lagSec",
          "working.mashFrac");

  @Test
  void whatADayCanSeeIsFoundAndWhatItCannotStays() {
    Map<String, double[]> sums = new TreeMap<>();
    double[] unseenLeft = new double[2];
    for (int seed = 1; seed <= DAYS; seed++) {
      Rehearsal day = rehearsal(seed);
      Hindsight hindsight = hindsight(day, DemoRigs.household(), TWINS);
      for (String name : SEEN) {
        Held held = hindsight.number(name);
        double z = inDoubts(day, name);
        double[] all = sums.computeIfAbsent(name, _ -> new double[4]);
        all[0] += z * z / DAYS;
        all[1] += Math.pow(z - held.mean(), 2) / DAYS;
        all[2] += held.doubt() / DAYS;
        all[3] += held.holds(z) ? 1.0 / DAYS : 0;
      }
      unseenLeft[0] += hindsight.number("working.fermenterLossL").doubt() / DAYS;
      unseenLeft[1] += hindsight.number("kettle.deadL").doubt() / DAYS;
    }
    double before = 0;
    double after = 0;
    double held = 0;
    for (Map.Entry<String, double[]> each : sums.entrySet()) {
      double[] all = each.getValue();
      System.out.printf(
          Locale.ROOT,
          "looked back, %d days, %s: off by %.2f doubts before, %.2f after, held to %.2f; in the"
              + " range %.2f%n",
          DAYS,
          each.getKey(),
          Math.sqrt(all[0]),
          Math.sqrt(all[1]),
          all[2],
          all[3]);
      before += all[0] / SEEN.size();
      after += all[1] / SEEN.size();
      held += all[3] / SEEN.size();
    }
    System.out.printf(
        Locale.ROOT, "nobody can see: %.2f, %.2f left%n", unseenLeft[0], unseenLeft[1]);
    assertThat(after).isLessThan(0.5 * before);
    assertThat(held).isBetween(LONG ? 0.82 : 0.75, LONG ? 0.97 : 1.0);
    assertThat(unseenLeft[0]).isGreaterThan(Findings.SEEN_RATIO);
    assertThat(unseenLeft[1]).isGreaterThan(Findings.SEEN_RATIO);
  }

  /// Each reading counts with so many times its variance as there are rounds: told to a normal
  /// belief about a number that is read itself, that is the same as once (Emerick and Reynolds
  /// 2013; for a linear law it is exact).
  @Test
  void roundsOfWeakReadingsAreWorthOneReading() {
    double[] once = new double[40];
    Arrays.setAll(once, j -> 3 + 2 * Luck.z(7, "a number", j));
    double[] rounds = once.clone();
    double noise2 = 0.49;
    SquareRootFilter.correct(
        List.of(once), once.clone(), SquareRootFilter.met(once, 4.2, noise2), false);
    for (int i = 0; i < 4; i++) {
      SquareRootFilter.correct(
          List.of(rounds), rounds.clone(), SquareRootFilter.met(rounds, 4.2, 4 * noise2), false);
    }
    assertThat(Held.of(rounds).mean()).isCloseTo(Held.of(once).mean(), within());
    assertThat(Held.of(rounds).doubt()).isCloseTo(Held.of(once).doubt(), within());
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(1e-9);
  }

  @Test
  void theSameDayTeachesTheSameToTheLastBit() {
    Rehearsal day = new Rehearsal(4, 40, Rehearsal.NONE, true).toTheEnd();
    assertThat(Findings.of(hindsight(day, DemoRigs.household(), 40), DemoRigs.household(), "x"))
        .isEqualTo(
            Findings.of(hindsight(day, DemoRigs.household(), 40), DemoRigs.household(), "x"));
  }

  /// Days on one rig, each planned with what the days before it taught; weather, tap, malt and
  /// hands are another every day. The last plan is nearer to what comes than the first.
  @Test
  void aRigThatLearnsIsForecastBetter() {
    int rigs = LONG ? 24 : 3;
    int days = LONG ? 3 : 2;
    Map<String, double[]> scores = new LinkedHashMap<>();
    for (int r = 1; r <= rigs; r++) {
      Rig hidden = frozen(600 + r);
      Rig believed = DemoRigs.household();
      for (int d = 0; d < days; d++) {
        Rehearsal day = new Rehearsal(100L * r + d, TWINS, believed, hidden).toTheEnd();
        Ahead forecast =
            Belief.atStart(
                    new BrewDay(Demo.copperBitter(), believed, Rehearsal.day().settings()),
                    day.belief.instruments(),
                    20,
                    TWINS)
                .ahead();
        score(scores, forecast, day.came(), d, rigs);
        Hindsight hindsight = hindsight(day, believed, TWINS);
        believed = Findings.carried(believed, Findings.of(hindsight, believed, "day " + (d + 1)));
        assertThat(Bounds.fault(believed)).isEmpty();
      }
    }
    double first = 0;
    double last = 0;
    for (Map.Entry<String, double[]> each : scores.entrySet()) {
      System.out.printf(
          Locale.ROOT,
          "score of the plan, %d rigs, by day: %s %s%n",
          rigs,
          each.getKey(),
          Arrays.toString(each.getValue()));
      first += 1.0 / scores.size();
      last += each.getValue()[days - 1] / each.getValue()[0] / scores.size();
    }
    assertThat(last).isLessThan((LONG ? 0.75 : 0.9) * first);
  }

  private static final List<Outcome> SCORED =
      List.of(
          Outcome.TO_BOIL,
          Outcome.BOIL_OFF_RATE,
          Outcome.PRE_BOIL_COLD,
          Outcome.GRAIN_MEAN,
          Outcome.PRE_BOIL_STRENGTH,
          Outcome.POST_BOIL_COLD);

  private static void score(
      Map<String, double[]> scores, Ahead forecast, Ahead came, int day, int rigs) {
    for (Outcome outcome : SCORED) {
      double[] byDay = scores.computeIfAbsent(outcome.key(), _ -> new double[3]);
      byDay[day] +=
          ForecastScore.membersNumber(forecast.outcome(outcome), came.outcome(outcome)[0]) / rigs;
    }
  }

  /// A rig with numbers that are the same every day.
  private static Rig frozen(long seed) {
    Rig rig =
        HiddenRig.of(
            DemoRigs.household(), RandomGeneratorFactory.of("L64X128MixRandom").create(seed));
    for (Finding each : everyNumber()) {
      Parameter doubtful = (Parameter) Component.at(rig, each.path());
      double real = doubtful.at(Luck.z(seed, each.path(), 0));
      rig = Component.with(rig, each.path(), Parameter.exact(real));
    }
    return rig;
  }

  private static List<Finding> everyNumber() {
    Belief start = Belief.atStart(Rehearsal.day(), Rehearsal.instruments(), 20, 3);
    return Findings.of(new Hindsight(start, start, start), DemoRigs.household(), "");
  }

  @Test
  void whatIsLearntIsForgottenALittleAndWhatIsNotSeenStays() {
    Rig rig = DemoRigs.household();
    Rehearsal day = rehearsal(3);
    Hindsight hindsight = hindsight(day, rig, TWINS);
    List<Finding> findings = Findings.of(hindsight, rig, "the third day");
    Finding steam = named(findings, "kettle.evaporationFactor");
    assertThat(steam.seen()).isTrue();
    assertThat(steam.after().origin()).isEqualTo(Origin.LEARNT);
    assertThat(steam.after().basis()).isEqualTo("the third day");
    assertThat(steam.after().doubt())
        .isCloseTo(1.03 * steam.leftRatio() * steam.before().doubt(), within());
    assertThat(steam.after().value())
        .isCloseTo(
            steam.before().at(hindsight.number("kettle.evaporationFactor").mean()), within());
    Finding dead = named(findings, "kettle.deadL");
    assertThat(dead.seen()).isFalse();
    assertThat(dead.after()).isEqualTo(dead.before());

    Rig learnt = Findings.carried(rig, findings);
    assertThat(learnt.kettle().evaporationFactor()).isEqualTo(steam.after());
    assertThat(learnt.kettle().deadL()).isEqualTo(rig.kettle().deadL());
    assertThat(learnt.site()).isEqualTo(rig.site());
    assertThat(Findings.carried(learnt, findings)).as("taken twice").isEqualTo(learnt);
  }

  @Test
  void aNumberThatWasLearntAndIsNotSeenAgainIsHeldALittleLessSurely() {
    Rig rig = DemoRigs.household();
    Parameter known = rig.kettle().deadL();
    Parameter learnt =
        new Parameter(known.value(), known.doubt(), known.spread(), Origin.LEARNT, "day 1", "");
    Rig taught = Component.with(rig, "kettle.deadL", learnt);
    Belief nothingRead =
        Belief.atStart(
            new BrewDay(Demo.copperBitter(), taught, Rehearsal.day().settings()),
            Rehearsal.instruments(),
            20,
            TWINS);
    List<Finding> findings =
        Findings.of(new Hindsight(nothingRead, nothingRead, nothingRead), taught, "day 2");
    Finding dead = named(findings, "kettle.deadL");
    assertThat(dead.seen()).isFalse();
    assertThat(dead.after().doubt()).isCloseTo(1.03 * learnt.doubt(), within());
    assertThat(dead.after().basis()).isEqualTo("day 1");
    assertThat(findings).noneMatch(Finding::seen);
  }

  /// What somebody typed since the day was planned counts more than what the day said.
  @Test
  void aNumberThatWasChangedSinceIsLeftAlone() {
    Rig rig = DemoRigs.household();
    List<Finding> findings = Findings.of(hindsight(rehearsal(3), rig, TWINS), rig, "the third day");
    Parameter typed = rig.kettle().evaporationFactor().typedAs(0.8, 0.1, Origin.MEASURED, "0.8");
    Rig changed = Component.with(rig, "kettle.evaporationFactor", typed);
    Rig learnt = Findings.carried(changed, findings);
    assertThat(learnt.kettle().evaporationFactor()).isEqualTo(typed);
    assertThat(learnt.kettle().wallWPerM2K()).isNotEqualTo(rig.kettle().wallWPerM2K());
  }

  private static Finding named(List<Finding> findings, String path) {
    return findings.stream().filter(each -> each.path().equals(path)).findFirst().orElseThrow();
  }

  /// Where the two ways of looking part, the doubt holds both.
  @Test
  void theDoubtTakesInThatTwoWaysOfLookingPart() {
    Belief start = Belief.atStart(Rehearsal.day(), Rehearsal.instruments(), 20, 50);
    Belief moved = start.copy();
    double[] row = moved.twins().draws("kettle.evaporationFactor");
    for (int j = 0; j < row.length; j++) {
      row[j] += 4;
    }
    Held alone = Held.of(start.twins().draws("kettle.evaporationFactor"));
    Held both = new Hindsight(start, start, moved).number("kettle.evaporationFactor");
    assertThat(both.mean()).isCloseTo(2 / alone.doubt(), within());
    // Two equal heaps whose middles lie 4 apart: the variance of one and 2 squared.
    assertThat(both.doubt()).isCloseTo(Math.sqrt(1 + 4 / alone.doubt() / alone.doubt()), within());
  }
}
