package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.testing.ReferenceRows;
import gylebook.units.ExtractScale;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;

/// Fourteen beers of three breweries, 1911-12, distilled and evaporated by the US Department of
/// Agriculture (Bulletin 493, 1917, tables I-IV).
///
/// Their gravities are at 15.6/15.6 C; their extract table reads 2.2 % high against Plato's. The
/// bars are those reached by a second reckoning, outside this project, of the same laws.
class MeasuredBeersTest {
  private static final double THEIR_EXTRACT_RATIO = 0.979;
  private static final double WATER_G_PER_ML = 0.99904;

  private record Beer(
      double original, double apparent, double alcoholPercent, double realExtract) {}

  private record Miss(double alcoholRms, double alcoholBias, double extractRms) {}

  @Test
  void theLawsSolvedTogetherComeWithinTheScatterOfTheMeasurements() {
    Miss miss = miss(Alcohol::fromExtracts);
    assertThat(miss.alcoholRms()).isLessThan(0.125);
    assertThat(Math.abs(miss.alcoholBias())).isLessThan(0.065);
    assertThat(miss.extractRms()).isLessThan(0.075);
  }

  @Test
  void theShortcutIsWorse() {
    Miss ours = miss(Alcohol::fromExtracts);
    Miss shortcut = miss(AlcoholShortcut::fixedShare);
    assertThat(shortcut.alcoholRms()).isGreaterThan(1.3 * ours.alcoholRms());
    assertThat(shortcut.extractRms()).isGreaterThan(1.5 * ours.extractRms());
  }

  private static Miss miss(BiFunction<Double, Double, Alcohol.Strength> law) {
    double alcoholSquares = 0;
    double alcoholSum = 0;
    double extractSquares = 0;
    List<Beer> beers = beers();
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
    List<Beer> beers = new ArrayList<>();
    for (List<String> cells : ReferenceRows.cells("measured-beers.csv")) {
      double wort = Double.parseDouble(cells.get(1));
      double beer = Double.parseDouble(cells.get(4));
      double gPer100Ml = beer * WATER_G_PER_ML;
      beers.add(
          new Beer(
              ExtractScale.platoFromSg(wort),
              ExtractScale.platoFromSg(beer),
              Double.parseDouble(cells.get(5)) / gPer100Ml,
              Double.parseDouble(cells.get(6)) * THEIR_EXTRACT_RATIO / gPer100Ml));
    }
    return beers;
  }
}
