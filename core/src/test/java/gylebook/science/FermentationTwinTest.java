package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.science.InventedFerments.Ferment;
import gylebook.science.InventedFerments.Kind;
import gylebook.science.InventedFerments.Score;
import gylebook.science.InventedFerments.Told;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/// What the fit of a fermentation is worth on ferments whose truth is known (seeds 1 up to the
/// number of brews). The bar, for beers that others measured: with a third of the readings the rest
/// within 1.0 P, with half within 0.6 P, the final extract within 0.3 P, root mean square; and no
/// reading makes the forecast worse on average. As to the final extract we read: with all readings.
class FermentationTwinTest {
  private static final int BREWS = 120;
  private static final int THIRD = 3;
  private static final int HALF = 5;
  private static final Told RIGHT = new Told(0, 0);
  private static final List<Told> WRONG =
      List.of(new Told(1, 0), new Told(-1, 0), new Told(0, 0.5), new Told(0, -0.5));
  private static final Map<Asked, List<Score>> KNOWN = new ConcurrentHashMap<>();

  // Other models take long to be carried out; told wrong they are tried with `-Plong`.
  private static final List<Told> TOLD =
      Boolean.getBoolean("long")
          ? List.of(RIGHT, WRONG.get(0), WRONG.get(1), WRONG.get(2))
          : List.of(RIGHT);

  private record Asked(Kind kind, Told told) {}

  private static List<Score> scores(Kind kind, Told told) {
    return KNOWN.computeIfAbsent(
        new Asked(kind, told),
        asked -> {
          List<Score> scores = InventedFerments.scores(kind, told, BREWS);
          System.out.println(asked + ", seeds 1 to " + BREWS);
          for (int count = 0; count < scores.size(); count++) {
            System.out.println("  " + count + " readings: " + scores.get(count));
          }
          return scores;
        });
  }

  /// Where truth and belief are of one kind, ranges must hold as often as they say and no reading
  /// may make it worse; an even chance moves the share of 360 ranges by 0.02, more where they hang
  /// together.
  @Test
  void onItsOwnFermentsTheBarIsMetAndRangesHold() {
    for (Kind kind : List.of(Kind.PRIORS, Kind.COLD_PITCH)) {
      List<Score> scores = scores(kind, RIGHT);
      bar(scores, 0.30);
      for (int count = 1; count <= InventedFerments.READ; count++) {
        assertThat(scores.get(count).endPlato())
            .isLessThan(1.02 * scores.get(count - 1).endPlato());
        assertThat(scores.get(count).endHeldFrac()).isBetween(0.73, 0.90);
      }
      for (int count = 1; count <= 6; count++) {
        assertThat(scores.get(count).latePlato()).isLessThan(scores.get(count - 1).latePlato());
        assertThat(scores.get(count).lateHeldFrac()).isBetween(0.74, 0.90);
      }
    }
  }

  private static void bar(List<Score> scores, double endPlato) {
    bar(scores, 0.6, endPlato);
  }

  private static void bar(List<Score> scores, double halfPlato, double endPlato) {
    assertThat(scores.get(THIRD).restPlato()).isLessThan(1.0);
    assertThat(scores.get(HALF).restPlato()).isLessThan(halfPlato);
    assertThat(scores.get(InventedFerments.READ).endPlato()).isLessThan(endPlato);
  }

  /// Over all kinds together, two of which are run by models of another form: the last third, which
  /// is the same moments for any number of readings, is met the better with each reading, and the
  /// final extract no worse.
  @Test
  void noReadingMakesTheForecastWorseOnAverage() {
    for (int count = 1; count <= InventedFerments.READ; count++) {
      if (count <= 6) {
        assertThat(overAll(Score::latePlato, count))
            .as("last third with " + count)
            .isLessThan(overAll(Score::latePlato, count - 1));
      }
      assertThat(overAll(Score::endPlato, count))
          .as("end with " + count)
          .isLessThan(1.02 * overAll(Score::endPlato, count - 1));
    }
    assertThat(overAll(Score::restPlato, THIRD)).isLessThan(1.0);
    assertThat(overAll(Score::restPlato, HALF)).isLessThan(0.6);
    assertThat(overAll(Score::endPlato, InventedFerments.READ)).isLessThan(0.3);
  }

  private static double overAll(ToDoubleFunction<Score> asked, int count) {
    return Math.sqrt(
        Arrays.stream(Kind.values())
            .mapToDouble(kind -> asked.applyAsDouble(scores(kind, RIGHT).get(count)))
            .map(each -> each * each)
            .average()
            .orElseThrow());
  }

  /// A beer that is read until it stands: the last reading comes half as late again as the moment
  /// at which 2 % are left.
  @Test
  void onceItStandsTheEndIsToldWithinTheBarOnEveryKind() {
    for (Kind kind : Kind.values()) {
      double squares = 0;
      for (int seed = 1; seed <= BREWS; seed++) {
        Ferment ferment = InventedFerments.ferment(kind, RIGHT, 1.5, seed);
        squares += Math.pow(end(ferment, ferment.readings()) - ferment.endPlato(), 2) / BREWS;
      }
      assertThat(Math.sqrt(squares)).as(kind.name()).isLessThan(0.25);
    }
  }

  /// A reading of the hour of pitching says nothing of the rest: nothing has fermented yet. A curve
  /// that begins 4 % of the fall below takes it for slowness.
  @Test
  void aReadingAtPitchingSaysNothingOfTheRest() {
    FermentationFit.Brew brew = FermentationFit.Brew.of(12, 0);
    double none = FermentationFit.ahead(brew, List.of(), 40).extractPlato();
    List<FermentationReading> atOnce = List.of(new FermentationReading(0, 12));
    assertThat(FermentationFit.ahead(brew, atOnce, 40).extractPlato())
        .isCloseTo(none, within(1e-6));
    var plain =
        new FermentationFit.Brew(
            12, 0, 0.77, 0.04, new FermentationFit.Form(0.8, 0.25, 0.05, false));
    double plainNone = FermentationFit.ahead(plain, List.of(), 40).extractPlato();
    assertThat(FermentationFit.ahead(plain, atOnce, 40).extractPlato())
        .isGreaterThan(plainNone + 0.3);
  }

  /// A temperature that is 1 K wrong, or a start half a degree wrong that is held for sure within
  /// 0.15 P, costs little.
  @Test
  void aWrongTemperatureOrStartCostsLittle() {
    for (Told told : WRONG) {
      List<Score> scores = scores(Kind.PRIORS, told);
      bar(scores, 0.30);
      for (int count = 1; count <= InventedFerments.READ; count++) {
        assertThat(scores.get(count).endPlato())
            .isLessThan(1.03 * scores.get(count - 1).endPlato());
        assertThat(scores.get(count).endHeldFrac()).isBetween(0.70, 0.92);
      }
      for (int count = THIRD; count <= 6; count++) {
        assertThat(scores.get(count).lateHeldFrac()).isBetween(0.70, 0.92);
      }
    }
  }

  /// Another model's ferments, right and wrong told. What does not hold is in the bounds: one
  /// reading alone, in its lag, costs a tenth; its abrupt end leaves late ranges too narrow; read
  /// only just past it the end is not told within 0.3 P; and a start told half a degree wrong costs
  /// the bar at half.
  @Test
  void onALagAndAnAbruptEndTheRestMeetsTheBar() {
    for (Told told : TOLD) {
      List<Score> scores = scores(Kind.LATENT_YEAST, told);
      bar(scores, told.strongerPlato() == 0 ? 0.6 : 0.75, 0.36);
      double none = scores.get(0).latePlato();
      assertThat(scores.get(1).latePlato()).isLessThan((told.equals(RIGHT) ? 1.12 : 1.2) * none);
      for (int count = 2; count <= 6; count++) {
        assertThat(scores.get(count).latePlato()).isLessThan(none);
        assertThat(scores.get(count).lateHeldFrac())
            .isGreaterThan(told.strongerPlato() == 0 ? 0.6 : 0.45);
      }
      for (int count = 1; count <= InventedFerments.READ; count++) {
        assertThat(scores.get(count).endPlato()).isLessThan(1.03 * scores.get(0).endPlato());
        assertThat(scores.get(count).endHeldFrac()).isGreaterThan(0.73);
      }
    }
  }

  /// No lag and a slow tail. Until the fourth reading the tail is not seen and the final extract is
  /// told up to a tenth worse than without readings; what comes next is not.
  @Test
  void onASlowTailTheBarIsMet() {
    for (Told told : TOLD) {
      List<Score> scores = scores(Kind.THREE_SUGARS, told);
      bar(scores, 0.3);
      double allowed = told.equals(RIGHT) ? 1.1 : 1.2;
      for (int count = 1; count <= InventedFerments.READ; count++) {
        assertThat(scores.get(count).endPlato()).isLessThan(allowed * scores.get(0).endPlato());
        assertThat(scores.get(count).endHeldFrac()).isGreaterThan(0.65);
      }
      for (int count = 1; count <= 6; count++) {
        assertThat(scores.get(count).latePlato())
            .isLessThan((told.equals(RIGHT) ? 1.02 : 1.2) * scores.get(0).latePlato());
        assertThat(scores.get(count).lateHeldFrac()).isGreaterThan(0.75);
      }
    }
  }

  /// Without the model's error, as a hydrometer alone would have it, ranges are too narrow late.
  @Test
  void anInstrumentsDoubtAloneIsTooSure() {
    int late = 0;
    int lateAlone = 0;
    for (int seed = 1; seed <= BREWS; seed++) {
      Ferment ferment = InventedFerments.ferment(Kind.PRIORS, RIGHT, seed);
      var alone =
          new FermentationFit.Brew(12, 0.15, 0.77, 0.04, new FermentationFit.Form(0.4, 0, 0, true));
      for (int i = 6; i < InventedFerments.READ; i++) {
        late += held(ferment, ferment.brew(), i) ? 1 : 0;
        lateAlone += held(ferment, alone, i) ? 1 : 0;
      }
    }
    assertThat(late / (3.0 * BREWS)).isBetween(0.74, 0.88);
    assertThat(lateAlone / (3.0 * BREWS)).isLessThan(0.67);
  }

  private static boolean held(Ferment ferment, FermentationFit.Brew brew, int index) {
    FermentationFit.Ahead ahead =
        FermentationFit.ahead(
            brew, ferment.readings().subList(0, 6), ferment.points().get(index).clockHr());
    double miss = ahead.extractPlato() - ferment.points().get(index).beerPlato();
    return Math.abs(miss) < 1.2816 * ahead.doubtPlato();
  }

  /// One reading wrong by 2 to 6 P, anywhere: it is flagged, and the end stays where it is without
  /// it. Honest readings are hardly ever flagged.
  @Test
  void aWildReadingHardlyBendsTheCurve() {
    double bent = 0;
    double missed = 0;
    double missedWithout = 0;
    int flagged = 0;
    int falselyFlagged = 0;
    for (int seed = 1; seed <= BREWS; seed++) {
      Ferment ferment = InventedFerments.ferment(Kind.PRIORS, RIGHT, seed);
      RandomGenerator random = InventedFerments.random(1000 + seed);
      int which = random.nextInt(InventedFerments.READ);
      double off = random.nextDouble(2, 6) * (random.nextBoolean() ? 1 : -1);
      List<FermentationReading> wild = new ArrayList<>(ferment.readings());
      FermentationReading right = wild.remove(which);
      var without = FermentationFit.fitted(ferment.brew(), wild);
      wild.add(new FermentationReading(right.clockHr(), right.extractPlato() + off));
      var with = FermentationFit.fitted(ferment.brew(), wild);
      bent += Math.pow(with.finalPlato() - without.finalPlato(), 2) / BREWS;
      missed += Math.pow(with.finalPlato() - ferment.endPlato(), 2) / BREWS;
      missedWithout += Math.pow(without.finalPlato() - ferment.endPlato(), 2) / BREWS;
      flagged += with.farOff() ? 1 : 0;
      falselyFlagged += FermentationFit.fitted(ferment.brew(), ferment.readings()).farOff() ? 1 : 0;
    }
    System.out.printf(
        "wild: bent %.3f P, missed %.3f P, without %.3f P, flagged %d and %d of %d%n",
        Math.sqrt(bent),
        Math.sqrt(missed),
        Math.sqrt(missedWithout),
        flagged,
        falselyFlagged,
        BREWS);
    assertThat(Math.sqrt(bent)).isLessThan(0.12);
    assertThat(Math.sqrt(missed)).isLessThan(1.1 * Math.sqrt(missedWithout));
    assertThat(flagged).isGreaterThan(BREWS * 9 / 10);
    assertThat(falselyFlagged).isLessThan(BREWS / 15);
  }

  /// The further off, the less it says: none bends the curve without limit.
  @Test
  void theFurtherOffTheLessItBends() {
    Ferment ferment = InventedFerments.ferment(Kind.PRIORS, RIGHT, 5);
    List<FermentationReading> good = ferment.readings();
    double without = FermentationFit.fitted(ferment.brew(), good.subList(0, 8)).finalPlato();
    double before = Double.POSITIVE_INFINITY;
    for (double off : new double[] {3, 6, 12, 24}) {
      List<FermentationReading> wild = new ArrayList<>(good);
      wild.set(8, new FermentationReading(good.get(8).clockHr(), good.get(8).extractPlato() + off));
      double bent = Math.abs(FermentationFit.fitted(ferment.brew(), wild).finalPlato() - without);
      assertThat(bent).isLessThan(before);
      before = bent;
    }
    assertThat(before).isLessThan(0.05);
  }

  @Test
  void theOrderOfReadingsDecidesNothing() {
    for (int seed = 1; seed <= 20; seed++) {
      Ferment ferment = InventedFerments.ferment(Kind.THREE_SUGARS, RIGHT, seed);
      List<FermentationReading> readings = new ArrayList<>(ferment.readings());
      readings.set(4, new FermentationReading(readings.get(4).clockHr(), 11.5));
      var inTime = FermentationFit.fitted(ferment.brew(), readings);
      Collections.shuffle(readings, new Random(seed));
      assertThat(FermentationFit.fitted(ferment.brew(), readings)).isEqualTo(inTime);
    }
  }

  /// A float that lies a degree off throughout, read each six hours, and three readings of the
  /// hydrometer: with it the end is found no worse than without, and its offset is not the beer's.
  @Test
  void aFloatsOffsetIsNotTheBeers() {
    double with = 0;
    double without = 0;
    double taken = 0;
    for (int seed = 1; seed <= BREWS; seed++) {
      Ferment ferment = InventedFerments.ferment(Kind.PRIORS, RIGHT, seed);
      RandomGenerator random = InventedFerments.random(2000 + seed);
      List<FermentationReading> spindle =
          List.of(ferment.readings().get(2), ferment.readings().get(4), ferment.readings().get(6));
      List<FermentationReading> both = new ArrayList<>(spindle);
      List<FermentationReading> asSpindle = new ArrayList<>(spindle);
      for (int i = 0; i < InventedFerments.READ; i++) {
        double read = ferment.points().get(i).beerPlato() + 1.5 + 0.5 * random.nextGaussian();
        double at = ferment.points().get(i).clockHr();
        both.add(new FermentationReading(at, read, FermentationReading.Instrument.FLOAT));
        asSpindle.add(
            new FermentationReading(at, read, 0.5, FermentationReading.Instrument.HYDROMETER));
      }
      with += Math.pow(end(ferment, both) - ferment.endPlato(), 2);
      without += Math.pow(end(ferment, spindle) - ferment.endPlato(), 2);
      taken += Math.pow(end(ferment, asSpindle) - ferment.endPlato(), 2);
    }
    System.out.printf(
        "float: with %.3f P, without %.3f P, as a hydrometer %.3f P%n",
        Math.sqrt(with / BREWS), Math.sqrt(without / BREWS), Math.sqrt(taken / BREWS));
    assertThat(with).isLessThan(without);
    assertThat(with).isLessThan(0.7 * taken);
  }

  private static double end(Ferment ferment, List<FermentationReading> readings) {
    return FermentationFit.fitted(ferment.brew(), readings).finalPlato();
  }

  /// A float that says the same thing hourly is not taken for as many witnesses: the model's error
  /// is common to neighbours.
  @Test
  void manyReadingsOfOneHourAreNotAsManyWitnesses() {
    FermentationFit.Brew brew = FermentationFit.Brew.of(12, 0.15);
    List<FermentationReading> once = new ArrayList<>();
    List<FermentationReading> often = new ArrayList<>();
    for (int hr = 12; hr <= 96; hr += 12) {
      double curve = FermentationCurve.extractPlato(12, 2.76, 20, hr, 0.1, 3.2, 1);
      once.add(new FermentationReading(hr, curve));
      for (int i = 0; i < 12; i++) {
        often.add(new FermentationReading(hr + 0.05 * i, curve));
      }
    }
    double one = FermentationFit.fitted(brew, once).finalDoubtPlato();
    double many = FermentationFit.fitted(brew, often).finalDoubtPlato();
    assertThat(many).isBetween(0.6 * one, one);
  }

  /// Of the ferments it calls over with 95 % chance, as many are.
  @Test
  void theChanceThatLittleIsLeftIsWorthWhatItSays() {
    for (Kind kind : Kind.values()) {
      littleLeft(kind);
    }
  }

  private static void littleLeft(Kind kind) {
    double said = 0;
    int sure = 0;
    int right = 0;
    int little = 0;
    for (int seed = 1; seed <= BREWS; seed++) {
      Ferment ferment = InventedFerments.ferment(kind, RIGHT, 2, seed);
      for (int i = 3; i < InventedFerments.READ; i++) {
        double chance =
            FermentationFit.ahead(
                    ferment.brew(),
                    ferment.readings().subList(0, i + 1),
                    ferment.points().get(i).clockHr())
                .littleLeftChanceFrac();
        boolean isLittle = ferment.points().get(i).leftFrac() < 0.02;
        said += chance;
        little += isLittle ? 1 : 0;
        sure += chance > 0.95 ? 1 : 0;
        right += chance > 0.95 && isLittle ? 1 : 0;
      }
    }
    System.out.printf(
        kind + ": little left: said %.1f, was %d of %d; sure %d, right %d%n",
        said,
        little,
        6 * BREWS,
        sure,
        right);
    assertThat(said / little).isCloseTo(1, within(0.25));
    assertThat(sure).isGreaterThan(BREWS / 4);
    assertThat(right).isGreaterThanOrEqualTo((int) (0.9 * sure));
  }
}
