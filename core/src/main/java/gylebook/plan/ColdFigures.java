package gylebook.plan;

import gylebook.recipe.Ferment;
import gylebook.recipe.Recipe;
import gylebook.recipe.Yeast;
import gylebook.rig.Parameter;
import gylebook.rig.Site;
import gylebook.science.Atmosphere;
import gylebook.science.FermentationCurve;
import gylebook.science.Oxygen;
import gylebook.science.Pitching;
import gylebook.science.RoomGas;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Ensemble;
import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;
import gylebook.units.ExtractScale;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/// What the fermenter asks for and gives off: cells, oxygen, carbon dioxide. Of the simulated days'
/// wort, with doubts of their own where no day has drawn any.
@AnyUnit("columns of every quantity; each key names its unit")
final class ColdFigures {
  /// Living cells by the habit of the trade, in thousand millions.
  static final String CELLS_WANTED = "cellsWantedNumber";

  /// Those the dried yeast of the recipe brings.
  static final String CELLS_BROUGHT = "cellsBroughtNumber";

  /// Dried yeast that brings them.
  static final String DRIED = "driedYeastWantedG";

  static final String OXYGEN = "oxygenFromAirMgPerL";
  static final String GAS = "fermentGasKg";
  static final String PEAK = "fermentGasPeakLPerHr";
  static final String ROOM = "closedRoomM3";

  // Cooler than this the trade pitches twice as much (common practice, no source).
  static final double LAGER_BELOW_C = 15;
  static final double ALE_COUNT_PER_ML = 0.75e6;
  static final double LAGER_COUNT_PER_ML = 1.5e6;
  private static final double GIGA_COUNT = 1e9;
  private static final double G_PER_KG = 1000;
  // Six dried yeasts held 8 to 18e9 a gram, makers vouch for less: 10 (6 to 16)e9, 9 in 10.
  private static final double HELD_COUNT_PER_G = 10e9;
  private static final double HELD_DOUBT_RATIO = 0.3;
  // Strewn in 0.75 (0.5 to 0.95) live on, 9 in 10.
  private static final double ALIVE_FRAC = 0.75;
  private static final double ALIVE_DOUBT_FRAC = 0.14;
  private static final double RATE_DOUBT_RATIO = 0.35;
  private static final double WEAK_PER_PLATO = 0.0105;
  private static final double STRONG_PER_PLATO = 0.0205;
  private static final double WATER_KG_PER_L = 0.9982;

  private final Recipe recipe;
  private final Site site;
  private final Ensemble ensemble;
  private final Movers movers;
  private final long seed;
  private final List<Figure> figures = new ArrayList<>();

  private ColdFigures(BrewDay day, Ensemble ensemble, Movers movers, long seed) {
    this.recipe = day.recipe();
    this.site = day.rig().site();
    this.ensemble = ensemble;
    this.movers = movers;
    this.seed = seed;
  }

  static List<Figure> of(BrewDay day, Ensemble ensemble, Movers movers, long seed) {
    ColdFigures cold = new ColdFigures(day, ensemble, movers, seed);
    cold.cells();
    cold.oxygen();
    cold.gas();
    return List.copyOf(cold.figures);
  }

  /// The rate that habit asks for at a pitching temperature.
  static double rateCountPerMl(Yeast yeast) {
    return yeast.pitchC().inside() < LAGER_BELOW_C ? LAGER_COUNT_PER_ML : ALE_COUNT_PER_ML;
  }

  static boolean dried(Yeast yeast) {
    String form = yeast.form().toLowerCase(Locale.ROOT);
    return form.startsWith("dry") || form.startsWith("dried");
  }

  /// Dried yeast by mass; a packet's mass is not known.
  static double driedG(Yeast yeast) {
    if (!dried(yeast)) {
      return Double.NaN;
    }
    return switch (yeast.amountNumber().unit().quantity()) {
      case MASS -> G_PER_KG * yeast.amountNumber().inside();
      case SMALL_MASS -> yeast.amountNumber().inside();
      default -> Double.NaN;
    };
  }

  private void add(String key, double[] column, Explained explained) {
    Figure.Why why =
        new Figure.Why(
            explained.equation(), explained.inputs(), explained.sources(), movers.of(column));
    figures.add(new Figure(key, explained.says(), Bands.of(column), why));
  }

  private double[] column(IntToDoubleFunction ofDay) {
    double[] column = new double[ensemble.days()];
    Arrays.setAll(column, ofDay);
    return column;
  }

  /// Draws of one doubt of the simulated days; zeros where they have none.
  private double[] draws(String doubt) {
    int index = ensemble.doubts().indexOf(doubt);
    return index < 0 ? new double[ensemble.days()] : ensemble.draws(index);
  }

  private double wortL(int day) {
    return Math.max(0, ensemble.outcome(Outcome.FERMENTER)[day]);
  }

  private double wortPlato(int day) {
    return Math.clamp(ensemble.outcome(Outcome.STRENGTH)[day], 0, 30);
  }

  private void cells() {
    Yeast yeast = recipe.yeast();
    double rate = rateCountPerMl(yeast);
    double[] wanted =
        column(day -> Pitching.cellsCount(wortL(day), wortPlato(day), rate) / GIGA_COUNT);
    add(CELLS_WANTED, wanted, ExplainedCold.cellsWanted(rate));
    if (!dried(yeast)) {
      return;
    }
    RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    double[] livingPerG =
        column(
            _ ->
                HELD_COUNT_PER_G
                    * Math.exp(HELD_DOUBT_RATIO * random.nextGaussian())
                    * Math.clamp(ALIVE_FRAC + ALIVE_DOUBT_FRAC * random.nextGaussian(), 0.3, 1)
                    / GIGA_COUNT);
    double yeastG = driedG(yeast);
    if (yeastG > 0) {
      add(CELLS_BROUGHT, column(day -> yeastG * livingPerG[day]), ExplainedCold.cellsBrought());
    }
    add(DRIED, column(day -> wanted[day] / livingPerG[day]), ExplainedCold.driedWanted());
  }

  private void oxygen() {
    RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    double pitchC = Math.clamp(recipe.yeast().pitchC().inside(), 0, 40);
    double[] airKpa = airKpa();
    double[] column =
        column(
            day ->
                Oxygen.wortMgPerL(
                    pitchC,
                    wortPlato(day),
                    airKpa[day],
                    random.nextDouble(WEAK_PER_PLATO, STRONG_PER_PLATO)));
    add(OXYGEN, column, ExplainedCold.oxygen());
  }

  private double[] airKpa() {
    double middleKpa =
        site.stationKpa()
            .map(Parameter::value)
            .orElseGet(() -> Atmosphere.stationKpa(site.altitudeM().value()));
    double[] weather = draws("site.weatherKpa");
    return column(day -> Math.clamp(middleKpa + weather[day], 50, 110));
  }

  private void gas() {
    double roomC = Math.clamp(site.roomC().value(), -20, 60);
    double warmestC = warmestC();
    double[] airKpa = airKpa();
    double[] pace = draws("model.fermentRateFactor");
    List<RoomGas.GivenOff> given = new ArrayList<>();
    for (int day = 0; day < ensemble.days(); day++) {
      double wortKg = wortL(day) * ExtractScale.sgFromPlato(wortPlato(day)) * WATER_KG_PER_L;
      double end = ensemble.outcome(Outcome.FINAL)[day];
      double drop = Math.clamp(wortPlato(day) - end, 0, 40);
      double rateAt20 = FermentationCurve.RATE_PER_HR * Math.exp(RATE_DOUBT_RATIO * pace[day]);
      double rate = FermentationCurve.ratePerHr(warmestC, rateAt20, FermentationCurve.Q10_FACTOR);
      given.add(RoomGas.givenOff(wortKg, drop, rate, roomC, airKpa[day]));
    }
    double limitPpm = RoomGas.limits().averagePpm();
    add(GAS, column(day -> given.get(day).gasKg()), ExplainedCold.gas());
    add(PEAK, column(day -> given.get(day).peakLPerHr()), ExplainedCold.gasPeak());
    add(
        ROOM,
        column(day -> RoomGas.closedRoomM3(given.get(day).gasKg(), limitPpm, roomC, airKpa[day])),
        ExplainedCold.room());
  }

  /// The warmest of the ferment: the pace there is the most that it can come to.
  private double warmestC() {
    double warmestC = recipe.yeast().pitchC().inside();
    for (Ferment.Step step : recipe.ferment().steps()) {
      warmestC = Math.max(warmestC, Math.max(step.startC().inside(), step.endC().inside()));
    }
    return Math.clamp(warmestC, 0, 40);
  }
}
