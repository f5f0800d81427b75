package gylebook.simulate;

import gylebook.science.MaltHeat;
import gylebook.science.WortDensity;
import java.util.Arrays;

/// What is done in a moment: masses and heat are mixed, and the accounts are kept.
final class Deeds {
  private final Flows flows;

  Deeds(Flows flows) {
    this.flows = flows;
  }

  void apply(Action.Deed deed, BrewState state, Member member) {
    flows.weigh(state, member);
    switch (deed) {
      case Action.DoughIn malt -> doughIn(malt, state, member);
      case Action.BagOut bag -> bagOut(bag, state);
      case Action.TopUp liquor -> topUp(liquor, state);
      case Action.AddExtract extract -> addExtract(extract, state);
      case Action.AddHops hops -> addHops(hops, state);
      case Action.TakeOut wort -> takeOut(wort, state);
      case Action.Dilute liquor -> dilute(liquor, state);
      case Action.Mark _ -> {}
    }
    flows.weigh(state, member);
  }

  /// Fills the empty kettle; steel and liquor start alike.
  static void fill(BrewState state, double liquorL, double liquorC) {
    state.waterKg = liquorL * WortDensity.wortKgPerL(0, 20);
    state.kettleC = liquorC;
    state.bedC = liquorC;
    state.headC = liquorC;
    state.wallC = liquorC;
    state.hoseC = liquorC;
    state.stubC = liquorC;
    state.probeC = liquorC;
    Arrays.fill(state.gaugeC, liquorC);
  }

  private void doughIn(Action.DoughIn malt, BrewState state, Member member) {
    double waterInMaltKg = malt.grainKg() * malt.moistureFrac();
    double dryKg = malt.grainKg() - waterInMaltKg;
    double potentialKg = dryKg * malt.extractFrac() * member.mashFrac;
    double heldJ = flows.kettleJPerK * state.kettleC;
    double goodsJPerK = waterInMaltKg * Flows.WATER_J_PER_KG_K + dryKg * Flows.SOLIDS_J_PER_KG_K;
    double wettingJ =
        malt.grainKg() * MaltHeat.wettingJPerKg(malt.moistureFrac()) * malt.wettingFactor();
    double mashC =
        (heldJ + goodsJPerK * malt.grainC() + wettingJ) / (flows.kettleJPerK + goodsJPerK);
    state.carriedJ -= goodsJPerK * malt.grainC() + wettingJ;
    state.waterKg += waterInMaltKg;
    state.grainKg = malt.grainKg();
    state.inertKg = dryKg - potentialKg;
    state.solubleKg = potentialKg * Chemistry.SOLUBLE_SHARE_FRAC;
    state.starchKg = potentialKg - state.solubleKg;
    state.alphaFrac = 1;
    state.betaFrac = 1;
    state.precursorFrac = 1;
    state.bagIn = true;
    state.kettleC = mashC;
    state.bedC = mashC;
    state.headC = mashC;
  }

  private void bagOut(Action.BagOut bag, BrewState state) {
    double keptKg = Math.min(bag.keptKgPerKg() * state.grainKg, 0.9 * flows.bedKg);
    double bedStrengthFrac = flows.bedKg > 0 ? state.bedExtractKg / flows.bedKg : 0;
    double bedWortJPerK = flows.bedJPerK - state.solidsKg() * Flows.SOLIDS_J_PER_KG_K;
    double keptShareFrac = flows.bedKg > 0 ? keptKg / flows.bedKg : 0;
    double keptJPerK = state.solidsKg() * Flows.SOLIDS_J_PER_KG_K + keptShareFrac * bedWortJPerK;
    double drippedJPerK = (1 - keptShareFrac) * bedWortJPerK;
    double heldJ =
        flows.kettleJPerK * state.kettleC
            + flows.headJPerK * state.headC
            + drippedJPerK * state.bedC;
    state.carriedJ += keptJPerK * state.bedC;
    // Heat is counted from 0 C, so heat by capacity is a temperature.
    double mixed = heldJ / (flows.kettleJPerK + flows.headJPerK + drippedJPerK);
    state.kettleC = mixed;
    double keptExtractKg = keptKg * bedStrengthFrac;
    double sharedFrac = state.extractKg() > 0 ? keptExtractKg / state.extractKg() : 0;
    state.fermentableKg *= 1 - sharedFrac;
    state.precursorFrac *= 1 - keptKg / state.liquidKg();
    state.kettleExtractKg += state.bedExtractKg - keptExtractKg;
    state.bedExtractKg = 0;
    state.bagExtractKg = keptExtractKg;
    state.bagWaterKg = keptKg - keptExtractKg;
    state.waterKg -= state.bagWaterKg;
    state.bagUndissolvedKg = state.solidsKg();
    state.inertKg = 0;
    state.solubleKg = 0;
    state.starchKg = 0;
    state.pastedKg = 0;
    state.bagIn = false;
    state.bedC = state.kettleC;
    state.headC = state.kettleC;
  }

  private void topUp(Action.TopUp liquor, BrewState state) {
    double addedJPerK = liquor.waterKg() * Flows.WATER_J_PER_KG_K;
    mixInto(state, addedJPerK, liquor.waterC());
    state.waterKg += liquor.waterKg();
  }

  private void addExtract(Action.AddExtract extract, BrewState state) {
    double addedJPerK =
        extract.waterKg() * Flows.WATER_J_PER_KG_K + extract.extractKg() * Flows.EXTRACT_J_PER_KG_K;
    mixInto(state, addedJPerK, 20);
    state.waterKg += extract.waterKg();
    state.kettleExtractKg += extract.extractKg();
    state.fermentableKg += extract.extractKg() * extract.fermentableFrac();
  }

  /// What is taken out carries its share of everything that is dissolved.
  private void takeOut(Action.TakeOut wort, BrewState state) {
    if (state.bagIn) {
      throw new IllegalStateException("Wort is taken out when the bag is out.");
    }
    double extractFrac = state.extractFrac();
    double wortKgPerL = WortDensity.wortKgPerL(extractFrac, Math.min(100, state.kettleC));
    double takenKg = Math.min(wort.wortL() * wortKgPerL, 0.99 * state.liquidKg());
    double shareFrac = takenKg / state.liquidKg();
    state.carriedJ += takenKg * Flows.wortJPerKgK(extractFrac) * state.kettleC;
    state.keptWaterKg += shareFrac * state.waterKg;
    state.keptExtractKg += shareFrac * state.kettleExtractKg;
    state.waterKg *= 1 - shareFrac;
    state.kettleExtractKg *= 1 - shareFrac;
    state.fermentableKg *= 1 - shareFrac;
    for (int i = 0; i < state.hopCount; i++) {
      state.alphaMg[i] *= 1 - shareFrac;
      state.isoMg[i] *= 1 - shareFrac;
    }
  }

  private static void dilute(Action.Dilute liquor, BrewState state) {
    state.castWaterKg += liquor.waterKg();
    state.castHeatJ += liquor.waterKg() * Flows.WATER_J_PER_KG_K * liquor.waterC();
  }

  private void mixInto(BrewState state, double addedJPerK, double addedC) {
    double kettleJPerK = flows.kettleJPerK;
    state.carriedJ -= addedJPerK * addedC;
    state.kettleC =
        (kettleJPerK * state.kettleC + addedJPerK * addedC) / (kettleJPerK + addedJPerK);
    state.boiling = false;
  }

  private void addHops(Action.AddHops hops, BrewState state) {
    state.alphaMg[hops.hopNumber()] += hops.alphaMg();
    state.hopCount = Math.max(state.hopCount, hops.hopNumber() + 1);
    state.hopWortKg += hops.wortKg();
  }
}
