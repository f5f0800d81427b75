package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.ReferenceRows;
import gylebook.units.ExtractScale;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/// Beers and ales of three breweries, 1911-12, distilled and evaporated by the US Department of
/// Agriculture (Tolman and Riley, Bulletin 493, 1917, tables I-IV; public domain): fourteen beers
/// of 11 to 13 P, and fourteen ales of 15 to 19 P from another table of it, typed anew.
///
/// Their gravities are at 15.6/15.6 C and are brought to 20/20 here; their extract table reads 2.2
/// % high against Plato's. A second reckoning of the same laws, made outside this project on a
/// larger part of the tables, came to 0.12 (bias 0.06) and 0.07 P, the shortcut to 0.18 (bias
/// 0.13): that is the bar. Here the ales give 0.103 (bias 0.026) and 0.050 P, and all 28 together
/// 0.125 (bias 0.055) and 0.059 P, the shortcut 0.179 (bias 0.139): the second reckoning again, as
/// near as 28 can tell (an even chance moves their 0.125 by 0.017). The fourteen beers alone do not
/// meet the bar: 0.144 (bias 0.083) and 0.067 P.
///
/// Where the 0.024 of the beers come from, worked once more by hand from the table alone:
///
/// - Not from reading the table otherwise: gravities taken as they stand, or brought to 20/20 by
///   sucrose with the brewers' cubic or without, all lie between 0.137 and 0.159. Extract meets its
///   bar in each of them, so it is alcohol against wort that is apart.
/// - Not from the laws: a beer's measured alcohol and extract give its spindle reading back to 0.05
///   P, and a regression that knows nothing of these laws misses each beer on the same side.
/// - From the worts. There are not fourteen of them but four brewings' worth: beers of one brewing
///   differ by 0.06 among themselves, the brewings by 0.13 (+0.16, -0.11, +0.15, +0.10).
/// - The mean from the yield. The bulletin's authors divide the loss of solids by the alcohol and
///   find 2.14 for all their beers and 2.12 for all their ales, 2.10 and 2.08 in degrees of Plato;
///   Balling's law in the same terms wants 2.05, so more alcohol. Nothing tells whether yeast,
///   rinsings or the distilling took it, and a survey of lager at Carlsberg (Nielsen and others,
///   14.3 P) found a little more than Balling's, so nothing is corrected.
class MeasuredBeersTest {
  private static final double THEIR_EXTRACT_RATIO = 0.979;
  private static final double THEIR_C = 15.5556;
  private static final double WATER_G_PER_ML = 0.99904;

  private record Beer(
      double original,
      double apparent,
      double alcoholPercent,
      double realExtract,
      double wortSg,
      double beerSg) {}

  private record Miss(double alcoholRms, double alcoholBias, double extractRms) {}

  /// The bar, on ales that nothing here was shaped by, and on all together.
  @Test
  void theLawsSolvedTogetherMeetTheBarOnTheAlesAndOnAll() {
    Miss ales = miss(ales(), Alcohol::fromExtracts);
    Miss all = miss(all(), Alcohol::fromExtracts);
    assertThat(ales.alcoholRms()).isLessThan(0.12);
    assertThat(all.alcoholRms()).isLessThan(0.126);
    for (Miss miss : List.of(ales, all)) {
      assertThat(Math.abs(miss.alcoholBias())).isLessThan(0.06);
      assertThat(miss.extractRms()).isLessThan(0.07);
    }
  }

  /// The second reckoning's figures of the shortcut, 0.18 and a bias of 0.13, come out on these 28:
  /// they are much the same beers.
  @Test
  void theShortcutsMissIsThatOfTheOtherReckoning() {
    Miss shortcut = miss(all(), AlcoholShortcut::fixedShare);
    assertThat(shortcut.alcoholRms()).isCloseTo(0.18, within(0.005));
    assertThat(shortcut.alcoholBias()).isCloseTo(0.13, within(0.01));
  }

  /// The bulletin's authors divide the solids lost by the alcohol, both in 100 cc, and print 2.14
  /// as the mean of all their beers and 2.12 of their ales, by their own extract.
  @Test
  void theBulletinsOwnYieldExplainsTheBias() {
    assertThat(solidsPerAlcohol(beers(), MeasuredBeersTest::byTheLaws))
        .isCloseTo(2.05, within(0.01));
    assertThat(solidsPerAlcohol(ales(), MeasuredBeersTest::byTheLaws))
        .isCloseTo(2.05, within(0.01));
    double beersRatio = solidsPerAlcohol(beers(), MeasuredBeersTest::measured);
    double alesRatio = solidsPerAlcohol(ales(), MeasuredBeersTest::measured);
    assertThat(beersRatio).isCloseTo(2.14 * THEIR_EXTRACT_RATIO, within(0.02));
    assertThat(alesRatio).isCloseTo(2.12 * THEIR_EXTRACT_RATIO, within(0.02));
  }

  private static double solidsPerAlcohol(List<Beer> beers, Function<Beer, Alcohol.Strength> from) {
    double sum = 0;
    for (Beer beer : beers) {
      Alcohol.Strength strength = from.apply(beer);
      double wortG = beer.original() * beer.wortSg();
      double beerG = strength.realExtractPlato() * beer.beerSg();
      sum += (wortG - beerG) / (100 * strength.byMassFrac() * beer.beerSg());
    }
    return sum / beers.size();
  }

  private static Alcohol.Strength byTheLaws(Beer beer) {
    return Alcohol.fromExtracts(beer.original(), beer.apparent());
  }

  private static Alcohol.Strength measured(Beer beer) {
    return new Alcohol.Strength(beer.alcoholPercent() / 100, 0, beer.realExtract());
  }

  @Test
  void theLawsSolvedTogetherComeWithinTheScatterOfTheMeasurements() {
    Miss miss = miss(Alcohol::fromExtracts);
    assertThat(miss.alcoholRms()).isLessThan(0.15);
    assertThat(Math.abs(miss.alcoholBias())).isLessThan(0.09);
    assertThat(miss.extractRms()).isLessThan(0.07);
  }

  @Test
  void theScatterIsInTheMeasurementsAndNotInTheLaws() {
    double spindleSquares = 0;
    double wortSquares = 0;
    double sameSide = 0;
    List<Beer> beers = beers();
    for (Beer beer : beers) {
      double alcohol = beer.alcoholPercent() / 100;
      double spindle = Tabarie.apparentPlato(alcohol, beer.realExtract()) - beer.apparent();
      double wort = Balling.originalPlato(alcohol, beer.realExtract()) - beer.original();
      spindleSquares += spindle * spindle;
      wortSquares += wort * wort;
      double ours = Alcohol.fromExtracts(beer.original(), beer.apparent()).byMassFrac() - alcohol;
      double regression =
          Cutaia2009.strength(beer.original(), beer.apparent()).byMassFrac() - alcohol;
      sameSide += ours * regression > 0 ? 1 : 0;
    }
    assertThat(Math.sqrt(spindleSquares / beers.size())).isLessThan(0.06);
    assertThat(Math.sqrt(wortSquares / beers.size())).isBetween(0.25, 0.36);
    assertThat(sameSide).isEqualTo(beers.size());
  }

  /// Four brewings, as the worts' gravities tell them apart.
  @Test
  void theBrewingsDifferMoreThanTheBeersOfOneBrewing() {
    Map<Integer, List<Double>> brewings = new TreeMap<>();
    for (Beer beer : beers()) {
      Alcohol.Strength ours = Alcohol.fromExtracts(beer.original(), beer.apparent());
      brewings
          .computeIfAbsent(brewing(beer.original()), _ -> new ArrayList<>())
          .add(100 * ours.byMassFrac() - beer.alcoholPercent());
    }
    assertThat(brewings).hasSize(4);
    double withinSquares = 0;
    List<Double> means = new ArrayList<>();
    for (List<Double> misses : brewings.values()) {
      double mean = mean(misses);
      means.add(mean);
      withinSquares += misses.stream().mapToDouble(each -> Math.pow(each - mean, 2)).sum();
    }
    double within = Math.sqrt(withinSquares / (beers().size() - 4));
    double middle = mean(means);
    double between =
        Math.sqrt(means.stream().mapToDouble(each -> Math.pow(each - middle, 2)).sum() / 3);
    assertThat(within).isLessThan(0.07);
    assertThat(between).isGreaterThan(1.7 * within);
    assertThat(Math.abs(middle - 0.06)).isLessThan(between / Math.sqrt(4));
  }

  private static double mean(List<Double> of) {
    return of.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }

  private static int brewing(double originalPlato) {
    return originalPlato > 12.5 ? 1 : originalPlato > 11.8 ? 2 : originalPlato > 11.3 ? 3 : 4;
  }

  /// What a small fault in the wort does: a bar of 0.12 is met when the wort that fermented was 0.2
  /// P thinner than the one that was gauged, as it would be after rinsing and pitching.
  @Test
  void aWortGaugedALittleTooHeavyWouldExplainIt() {
    Miss thinner = miss((original, apparent) -> Alcohol.fromExtracts(original - 0.2, apparent));
    assertThat(thinner.alcoholRms()).isLessThan(0.12);
    assertThat(Math.abs(thinner.alcoholBias())).isLessThan(0.02);
  }

  /// The other reckoning's bias of 0.06 is within one standard error of ours, and what is left
  /// round our own mean is below its 0.12: no shift of the laws could do better on these fourteen.
  @Test
  void roundTheirOwnMeanTheBeersScatterAsInTheOtherReckoning() {
    Miss miss = miss(Alcohol::fromExtracts);
    double bias = miss.alcoholBias();
    double scatter = Math.sqrt(miss.alcoholRms() * miss.alcoholRms() - bias * bias);
    assertThat(scatter).isLessThan(0.12);
    assertThat(Math.abs(bias - 0.06)).isLessThan(scatter / Math.sqrt(beers().size()));
  }

  @Test
  void theShortcutIsWorse() {
    Miss ours = miss(Alcohol::fromExtracts);
    Miss shortcut = miss(AlcoholShortcut::fixedShare);
    assertThat(shortcut.alcoholRms()).isGreaterThan(1.25 * ours.alcoholRms());
    assertThat(shortcut.extractRms()).isGreaterThan(1.8 * ours.extractRms());
  }

  private static Miss miss(BiFunction<Double, Double, Alcohol.Strength> law) {
    return miss(beers(), law);
  }

  private static Miss miss(List<Beer> beers, BiFunction<Double, Double, Alcohol.Strength> law) {
    double alcoholSquares = 0;
    double alcoholSum = 0;
    double extractSquares = 0;
    assertThat(beers).hasSizeGreaterThan(10);
    for (Beer beer : beers) {
      Alcohol.Strength found = law.apply(beer.original(), beer.apparent());
      double alcohol = 100 * found.byMassFrac() - beer.alcoholPercent();
      double extract = found.realExtractPlato() - beer.realExtract();
      alcoholSquares += alcohol * alcohol;
      alcoholSum += alcohol;
      extractSquares += extract * extract;
    }
    int n = beers.size();
    return new Miss(Math.sqrt(alcoholSquares / n), alcoholSum / n, Math.sqrt(extractSquares / n));
  }

  private static List<Beer> beers() {
    return table("measured-beers.csv");
  }

  private static List<Beer> ales() {
    return table("measured-ales.csv");
  }

  private static List<Beer> all() {
    List<Beer> all = new ArrayList<>(beers());
    all.addAll(ales());
    return all;
  }

  private static List<Beer> table(String file) {
    List<Beer> beers = new ArrayList<>();
    for (List<String> cells : ReferenceRows.cells(file)) {
      double wort = Double.parseDouble(cells.get(1));
      double beer = Double.parseDouble(cells.get(4));
      double alcohol = Double.parseDouble(cells.get(5));
      double extract = Double.parseDouble(cells.get(6)) * THEIR_EXTRACT_RATIO;
      double gPer100Ml = beer * WATER_G_PER_ML;
      beers.add(
          new Beer(
              ExtractScale.platoFromSg(extractSg(extractShare(wort), 20)),
              ExtractScale.platoFromSg(beer + shift(alcohol / 100, extract / 100)),
              alcohol / gPer100Ml,
              extract / gPer100Ml,
              wort,
              beer));
    }
    return beers;
  }

  /// How much the gravity rises from 15.6/15.6 to 20/20 C, by what is in a millilitre.
  private static double shift(double alcohol, double extract) {
    double p =
        Root.between(0, 1, x -> x * EthanolWater.densityKgPerM3(x, THEIR_C) / 1000 - alcohol);
    double w = Root.between(0, 0.5, x -> x * WortDensity.wortKgPerL(x, THEIR_C) - extract);
    return EthanolWater.mixtureSg(p, 20, 20)
        - EthanolWater.mixtureSg(p, THEIR_C, THEIR_C)
        + extractSg(w, 20)
        - extractSg(w, THEIR_C);
  }

  private static double extractShare(double sg) {
    return WortDensity.extractFrac(sg * WaterDensity.waterKgPerL(THEIR_C), THEIR_C);
  }

  private static double extractSg(double share, double atC) {
    return WortDensity.wortKgPerL(share, atC) / WaterDensity.waterKgPerL(atC);
  }
}
