package gylebook.simulate;

import gylebook.recipe.Hop;
import gylebook.science.Alcohol;
import gylebook.science.Attenuation;
import gylebook.science.Circuit;
import gylebook.science.Colour;
import gylebook.science.HopUtilisation;
import gylebook.science.WortDensity;
import gylebook.units.AnyUnit;
import gylebook.units.ExtractScale;
import java.util.List;

/// Turns the end of a simulated day into the numbers that come out of it.
@AnyUnit("fills a row of every outcome, each with its own unit")
final class Harvest {
  private static final double NOTHING_KG = 1e-6;
  private static final List<Outcome> OF_THE_BEER =
      List.of(
          Outcome.CAST,
          Outcome.FERMENTER,
          Outcome.STRENGTH,
          Outcome.BREWHOUSE,
          Outcome.COLOUR,
          Outcome.ATTENUATION,
          Outcome.FINAL,
          Outcome.ALCOHOL,
          Outcome.KEG,
          Outcome.FERMENT_END,
          Outcome.PACKED,
          Outcome.PACKED_OVER,
          Outcome.PACKAGED_GAS,
          Outcome.PRIMING,
          Outcome.ISO_IN_WORT,
          Outcome.ISO_IN_BEER,
          Outcome.BITTERNESS,
          Outcome.TINSETH);
  // Below this there is no alcohol to solve for.
  private static final double LEAST_FERMENTED_PLATO = 1e-3;
  private static final double MOST_PLATO = 40;

  // What a maker says of a yeast belongs to a wort mashed at 66 C for an hour (assumed): there the
  // curve of the mash has its limit, and the yeast is better or worse than that.
  private static final double USUAL_MASH_C = 66;
  private static final double USUAL_LIMIT_FRAC = Attenuation.limitFrac(USUAL_MASH_C);

  private final BrewDay day;
  private final Member member;
  private final Lots lots;
  private final BrewState state;
  private final DayLog log;
  private final double[] out;

  private Harvest(
      BrewDay day, Member member, Lots lots, BrewState state, DayLog log, double[] out) {
    this.day = day;
    this.member = member;
    this.lots = lots;
    this.state = state;
    this.log = log;
    this.out = out;
  }

  /// Fills the row of one member.
  static void gather(
      BrewDay day, Member member, Lots lots, BrewState state, DayLog log, double[] out) {
    Harvest harvest = new Harvest(day, member, lots, state, log, out);
    harvest.mash();
    harvest.liquor();
    harvest.kettle();
    if (state.castWaterKg + state.castExtractKg > NOTHING_KG) {
      harvest.beer();
      harvest.bitterness();
    } else {
      harvest.nothingRanOff();
    }
    harvest.rig();
  }

  private void put(Outcome outcome, double value) {
    out[outcome.ordinal()] = value;
  }

  private void mash() {
    put(Outcome.LIQUOR, day.settings().liquorL() * lots.liquorFactor);
    put(Outcome.HEAT_UP, log.at("strikeReady", DayLog.Column.AT_SEC));
    put(Outcome.DOUGH_IN, log.at("doughedIn", DayLog.Column.GRAIN_C));
    put(Outcome.GRAIN_MEAN, log.grainMeanC / Math.max(1, log.grainMeanSec));
    boolean rests = !day.recipe().rests().isEmpty();
    put(Outcome.GRAIN_HELD, log.at(rests ? "rest.0" : "settled", DayLog.Column.GRAIN_C));
    put(Outcome.FIRST_WORT, log.at("mashDone", DayLog.Column.WORT_PLATO));
    double leftKg = state.bagUndissolvedKg - lots.maltKg * (1 - lots.maltMoistureFrac);
    put(Outcome.CONVERSION, lots.maltPotentialKg > 0 ? -leftKg / lots.maltPotentialKg : 0);
  }

  private void liquor() {
    TreatedLiquor liquor = lots.liquor;
    put(Outcome.MASH_PH, liquor.mashPh);
    put(Outcome.RESIDUAL, liquor.mashResidualMeqPerL());
    put(Outcome.MASH_CALCIUM, liquor.mashMgPerL[TreatedLiquor.CALCIUM]);
    put(Outcome.MASH_MAGNESIUM, liquor.mashMgPerL[TreatedLiquor.MAGNESIUM]);
    put(Outcome.MASH_SODIUM, liquor.mashMgPerL[TreatedLiquor.SODIUM]);
    put(Outcome.MASH_CHLORIDE, liquor.mashMgPerL[TreatedLiquor.CHLORIDE]);
    put(Outcome.MASH_SULFATE, liquor.mashMgPerL[TreatedLiquor.SULFATE]);
    put(Outcome.MASH_BICARBONATE, liquor.mashBicarbonateMgPerL());
    put(Outcome.WHOLE_CALCIUM, liquor.wholeMgPerL[TreatedLiquor.CALCIUM]);
    put(Outcome.WHOLE_MAGNESIUM, liquor.wholeMgPerL[TreatedLiquor.MAGNESIUM]);
    put(Outcome.WHOLE_SODIUM, liquor.wholeMgPerL[TreatedLiquor.SODIUM]);
    put(Outcome.WHOLE_CHLORIDE, liquor.wholeMgPerL[TreatedLiquor.CHLORIDE]);
    put(Outcome.WHOLE_SULFATE, liquor.wholeMgPerL[TreatedLiquor.SULFATE]);
    put(Outcome.WHOLE_BICARBONATE, liquor.wholeBicarbonateMgPerL());
    put(Outcome.CAST_SHIFT, liquor.castShiftPh());
  }

  private void kettle() {
    double preBoilL = log.at("boilReached", DayLog.Column.COLD_L);
    double preBoilPlato = log.at("boilReached", DayLog.Column.WORT_PLATO);
    double extractKg =
        preBoilL * WortDensity.wortKgPerL(preBoilPlato / 100, 20) * preBoilPlato / 100;
    put(Outcome.KETTLE_YIELD, lots.maltPotentialKg > 0 ? extractKg / lots.maltPotentialKg : 0);
    put(Outcome.PRE_BOIL_COLD, preBoilL);
    put(Outcome.PRE_BOIL_HOT, log.at("boilReached", DayLog.Column.HOT_L));
    put(Outcome.PRE_BOIL_STRENGTH, preBoilPlato);
    double reachedSec = log.at("boilReached", DayLog.Column.AT_SEC);
    put(Outcome.TO_BOIL, reachedSec - log.at("bagOut", DayLog.Column.AT_SEC));
    put(Outcome.BOILS_AT, log.at("boilReached", DayLog.Column.WORT_C));
    double steamKg =
        log.at("flameOut", DayLog.Column.STEAM_KG) - log.at("boilReached", DayLog.Column.STEAM_KG);
    double boilSec = log.at("flameOut", DayLog.Column.AT_SEC) - reachedSec;
    double steamL = steamKg / WortDensity.wortKgPerL(0, 20);
    put(Outcome.BOIL_OFF, steamL);
    put(Outcome.BOIL_OFF_RATE, boilSec > 0 ? steamL / boilSec * 3600 : 0);
    put(Outcome.ROLLING, member.rollingDutyFrac(day.lidOn()));
    put(Outcome.BOIL_HELD, log.at("flameOut", DayLog.Column.WORT_C));
    put(Outcome.POST_BOIL_COLD, log.at("flameOut", DayLog.Column.COLD_L));
    put(Outcome.POST_BOIL_HOT, log.at("flameOut", DayLog.Column.HOT_L));
  }

  private void beer() {
    double castKg = state.castWaterKg + state.castExtractKg;
    double wortJPerK = castKg * Flows.wortJPerKgK(state.castExtractKg / castKg);
    put(Outcome.CAST, state.castHeatJ / wortJPerK);
    double extractKg = state.castExtractKg + lots.fermenterExtractKg;
    double wortKg = castKg + lots.fermenterExtractKg;
    double extractFrac = extractKg / wortKg;
    double fermenterL = wortKg / WortDensity.wortKgPerL(extractFrac, 20);
    put(Outcome.FERMENTER, fermenterL);
    put(Outcome.STRENGTH, 100 * extractFrac);
    put(Outcome.BREWHOUSE, lots.potentialKg > 0 ? extractKg / lots.potentialKg : 0);
    double lovibondKgPerL = lots.colourLovibondKg / fermenterL;
    double srm = Colour.maltUnitsSrm(Colour.maltUnitsNumber(lovibondKgPerL));
    put(Outcome.COLOUR, Colour.beerEbc(srm) * lots.colourFactor + lots.boilColourEbc);
    double limitFrac =
        (state.castFermentableKg + lots.fermenterExtractKg) / extractKg
            + lots.attenuationOffsetFrac;
    double yeastFrac =
        day.recipe().yeast().attenuationFrac().map(a -> a.inside()).orElse(USUAL_LIMIT_FRAC);
    double attenuationFrac =
        Math.clamp(limitFrac * yeastFrac / USUAL_LIMIT_FRAC * lots.yeastFactor, 0, 1);
    put(Outcome.ATTENUATION, attenuationFrac);
    double finalPlato = 100 * extractFrac * (1 - attenuationFrac);
    put(Outcome.FINAL, finalPlato);
    // A day that is given up may end in syrup, beyond what the relation was measured for.
    double wortPlato = Math.min(MOST_PLATO, 100 * extractFrac);
    double beerPlato = Math.min(finalPlato, wortPlato);
    boolean fermented = wortPlato - beerPlato > LEAST_FERMENTED_PLATO;
    put(Outcome.ALCOHOL, fermented ? Alcohol.fromExtracts(wortPlato, beerPlato).byVolumeFrac() : 0);
    double lostL = member.fermenterLossL + lots.dryHopHoldsLPerKg * lots.dryHopKg;
    put(Outcome.KEG, Math.max(0, fermenterL - lostL));
    cold(beerPlato, wortPlato);
  }

  /// On to the package: what the ferment leaves by the recipe's last day, and the gas.
  private void cold(double finalPlato, double wortPlato) {
    double left = (wortPlato - finalPlato) * lots.cold.leftFrac;
    put(Outcome.FERMENT_END, lots.cold.fermentEndSec);
    put(Outcome.PACKED, finalPlato + left);
    put(Outcome.PACKED_OVER, left);
    double airKpa = Math.clamp(member.pressureKpa, 50, 110);
    put(Outcome.PACKAGED_GAS, lots.cold.packagedVol(day.recipe(), airKpa, left));
    put(Outcome.PRIMING, lots.cold.primingG(day.recipe(), airKpa, out[Outcome.KEG.ordinal()]));
  }

  /// All of it stayed in the kettle: there is no beer to speak of.
  private void nothingRanOff() {
    for (Outcome outcome : OF_THE_BEER) {
      put(outcome, 0);
    }
  }

  private void bitterness() {
    double fermenterL = out[Outcome.FERMENTER.ordinal()];
    double isoMg = 0;
    for (int i = 0; i < state.hopCount; i++) {
      isoMg += state.castIsoMg[i];
    }
    double isoInWort = isoMg * lots.isoFactor / fermenterL;
    double isoInBeer = isoInWort * lots.kettleKeepsFrac * lots.fermentKeepsFrac;
    put(Outcome.ISO_IN_WORT, isoInWort);
    put(Outcome.ISO_IN_BEER, isoInBeer);
    double kegL = Math.max(1, out[Outcome.KEG.ordinal()]);
    put(Outcome.BITTERNESS, isoInBeer + lots.dryBitterMgPerL / kegL);
    put(Outcome.TINSETH, tinsethMgPerL());
  }

  /// The second method: a rule fitted to whole cones at the boil, which knows no temperature.
  private double tinsethMgPerL() {
    double meanPlato =
        (out[Outcome.PRE_BOIL_STRENGTH.ordinal()] + out[Outcome.STRENGTH.ordinal()]) / 2;
    double sg = Math.clamp(ExtractScale.sgFromPlato(meanPlato), 1.0, 1.19);
    double postBoilL = out[Outcome.POST_BOIL_COLD.ordinal()];
    double mgPerL = 0;
    for (int i = 0; i < day.recipe().hops().size(); i++) {
      Hop hop = day.recipe().hops().get(i);
      double boiledMin =
          switch (hop.when()) {
            case Hop.When.InBoil boil -> boil.leftSec().inside() / 60;
            case Hop.When.InMash _, Hop.When.FirstWort _ ->
                day.recipe().boil().holdSec().inside() / 60;
            case Hop.When.FlameOut _, Hop.When.AtStand _, Hop.When.Dry _ -> 0;
          };
      mgPerL += HopUtilisation.tinsethFrac(sg, boiledMin) * lots.alphaMg[i] / postBoilL;
    }
    return mgPerL;
  }

  private void rig() {
    put(Outcome.ENERGY, state.elementJ);
    put(Outcome.CHILL_WATER, state.chillWaterKg);
    double addedL = day.settings().liquorL() + day.settings().topUpL();
    put(Outcome.ALL_WATER, state.chillWaterKg + addedL * lots.liquorFactor);
    put(Outcome.BAG_WET, log.bagKg);
    put(Outcome.BAG_DRIPPED, log.drippedKg);
    put(Outcome.DRAIN, Math.max(log.drainC, member.tapC));
    put(Outcome.PRECURSOR, state.precursorFrac);
    double castKg = state.castWaterKg + state.castExtractKg;
    put(Outcome.SULFIDE, state.castSulfideFracKg / Math.max(NOTHING_KG, castKg));
    put(Outcome.LOOP_DOSE, state.loopDoseMin);
    put(Outcome.DAY, state.clockSec);
    put(Outcome.COVER, log.elementCoverM);
    put(Outcome.ROOM_AT_DOUGH_IN, member.heightM - log.doughInM);
    put(Outcome.ROOM_AT_BREAK, member.heightM - log.breakM);
    put(Outcome.SUCTION, log.suctionM);
    double currentA = Circuit.currentA(member.elementW, member.mainsV);
    put(Outcome.CURRENT, currentA);
    put(Outcome.BREAKER, currentA / member.breakerA);
    put(Outcome.GAVE_UP, log.gaveUp ? 1 : 0);
  }
}
