package gylebook.simulate;

import gylebook.science.WortDensity;

/// Knocking out: the kettle runs off, through the chiller, into the fermenter.
final class Casting {
  private Casting() {}

  /// What stays behind: the kettle's dead volume, the wort in hops, the wort in the chiller.
  static double leftBehindKg(BrewState state, Member member) {
    double wortKgPerL = WortDensity.wortKgPerL(state.extractFrac(), 20);
    return (member.deadL + member.chillHeldL) * wortKgPerL + state.hopWortKg;
  }

  static boolean dry(BrewState state, Member member) {
    return state.liquidKg() <= leftBehindKg(state, member) + 1e-6;
  }

  /// Moves what one step runs off, with everything that is dissolved in it.
  static void runOff(BrewState state, Member member, Flows flows, double stepSec) {
    double liquidKg = state.liquidKg();
    double restKg = liquidKg - leftBehindKg(state, member);
    double movedKg = Math.max(0, Math.min(flows.runOffKgPerSec * stepSec, restKg));
    double shareFrac = movedKg / liquidKg;
    double extractFrac = state.extractFrac();
    double wortJPerKgK = Flows.wortJPerKgK(extractFrac);
    double wortJPerLK = wortJPerKgK * WortDensity.wortKgPerL(extractFrac, 60);
    double castC = Chilling.castC(member, state.kettleC, wortJPerLK);
    state.castHeatJ += movedKg * wortJPerKgK * castC;
    state.chilledJ += movedKg * wortJPerKgK * (state.kettleC - castC);
    state.carriedJ += movedKg * wortJPerKgK * castC;
    state.castWaterKg += state.waterKg * shareFrac;
    state.castExtractKg += state.kettleExtractKg * shareFrac;
    state.castFermentableKg += state.fermentableKg * shareFrac;
    state.castSulfideFracKg += state.sulfideFrac * movedKg;
    for (int i = 0; i < state.hopCount; i++) {
      double isoMg = state.isoMg[i] * shareFrac;
      state.castIsoMg[i] += isoMg;
      state.isoMg[i] -= isoMg;
      state.alphaMg[i] *= 1 - shareFrac;
    }
    state.waterKg *= 1 - shareFrac;
    state.kettleExtractKg *= 1 - shareFrac;
    state.fermentableKg *= 1 - shareFrac;
  }

  /// How far the cooling water is warmed towards the wort: for the whole leg, as for 12 P.
  static double drainShareFrac(Member member, Flows flows, boolean runningOff) {
    double extractFrac = 0.12;
    double wortJPerLK = Flows.wortJPerKgK(extractFrac) * WortDensity.wortKgPerL(extractFrac, 60);
    double passedWPerK =
        runningOff && member.chiller != gylebook.rig.Chiller.Kind.IMMERSION
            ? Chilling.passedWPerK(member, wortJPerLK)
            : flows.chillWPerK;
    return passedWPerK / Chilling.waterWPerK(member);
  }
}
