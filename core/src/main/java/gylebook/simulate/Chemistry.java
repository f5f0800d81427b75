package gylebook.simulate;

import gylebook.science.BetaAmylase;
import gylebook.science.Brandam2003;
import gylebook.science.DimethylSulfide;
import gylebook.science.Fermentability;
import gylebook.science.Gelatinisation;
import gylebook.science.HopIsomerisation;

/// Mash, hops and sulphur over one step of the heat, at the temperature of its middle.
///
/// Each decay is the second-order, positive and L-stable `1/(1 + x + x^2/2)`; what leaves one pool
/// enters the next, so mass is kept to the last bit whatever the step.
final class Chemistry {
  private static final double STEP_K = 0.1;
  private static final double SEC_PER_HR = 3600;
  private static final double WORT_PH = 5.3;
  private static final RateTable PASTING = new RateTable(STEP_K, Gelatinisation::ratePerSec);
  private static final RateTable BETA_LOSS = new RateTable(STEP_K, BetaAmylase::labileDecayPerSec);
  private static final RateTable ALPHA_LOSS =
      new RateTable(STEP_K, mashC -> Brandam2003.alphaDenaturationPerSec(Math.max(30, mashC)));
  private static final RateTable APPROACH = new RateTable(STEP_K, Fermentability::approachPerSec);
  private static final RateTable ISO_FORMED =
      new RateTable(STEP_K, HopIsomerisation::formationPerSec);
  private static final RateTable ISO_LOST = new RateTable(STEP_K, HopIsomerisation::lossPerSec);
  private static final RateTable PRECURSOR_LOST =
      new RateTable(STEP_K, wortC -> DimethylSulfide.precursorPerSec(wortC, WORT_PH));
  private static final RateTable DOSE =
      new RateTable(STEP_K, wortC -> Math.pow(10, (wortC - 60) / 7) / 60);

  /// Sugars and gums that dissolve without any enzyme: the cold-water extract, 18 to 22 % of malt
  /// that gives 80 % in all (from memory).
  static final double SOLUBLE_SHARE_FRAC = 0.25;

  private static final double DISSOLVES_PER_SEC = 1 / 180.0;
  // At full activity pasted starch is thin within a minute; only its loss above 75 C matters.
  private static final double THINS_PER_SEC = 1 / 60.0;

  private Chemistry() {}

  /// What is left of a decaying pool after `x = k h`.
  static double leftFrac(double rateStepRatio) {
    return 1 / (1 + rateStepRatio + rateStepRatio * rateStepRatio / 2);
  }

  /// Mash: pasting, thinning, dissolving, sugars; extract is exchanged between bed and kettle.
  static void mash(BrewState state, Flows flows, double stepSec, double bedC, double kettleC) {
    double pastedKg = state.starchKg * (1 - leftFrac(PASTING.at(bedC) * stepSec));
    state.starchKg -= pastedKg;
    double alphaFrac = state.alphaFrac * leftFrac(ALPHA_LOSS.at(bedC) * stepSec / 2);
    state.alphaFrac *= leftFrac(ALPHA_LOSS.at(bedC) * stepSec);
    double thins = THINS_PER_SEC * alphaFrac * stepSec;
    double thinnedKg =
        state.pastedKg * (1 - leftFrac(thins)) + pastedKg * (1 - leftFrac(thins / 2));
    state.pastedKg += pastedKg - thinnedKg;
    double washedKg = state.solubleKg * (1 - leftFrac(DISSOLVES_PER_SEC * stepSec));
    state.solubleKg -= washedKg;
    double newKg = thinnedKg + washedKg;
    state.bedExtractKg += newKg / 2;
    exchange(state, flows, stepSec);
    state.bedExtractKg += newKg / 2;
    sugars(state, flows, stepSec, newKg, bedC, kettleC);
  }

  private static void sugars(
      BrewState state, Flows flows, double stepSec, double newKg, double bedC, double kettleC) {
    double liquidKg = state.liquidKg();
    double bedShareFrac = liquidKg > 0 ? flows.bedKg / liquidKg : 0;
    double meanC = bedShareFrac * bedC + (1 - bedShareFrac) * kettleC;
    double decay = BETA_LOSS.at(meanC) * stepSec;
    double midFrac = state.betaFrac * leftFrac(decay / 2);
    state.betaFrac *= leftFrac(decay);
    double stableFrac = BetaAmylase.STABLE_SHARE_FRAC;
    double activityFrac = stableFrac + (1 - stableFrac) * midFrac;
    double dissolvedKg = state.extractKg() - newKg / 2;
    double reachKg = Fermentability.CEILING_FRAC * dissolvedKg;
    double approach = 1 - leftFrac(APPROACH.at(meanC) * activityFrac * stepSec);
    state.fermentableKg += (reachKg - state.fermentableKg) * approach;
  }

  /// The flow evens out the strengths of bed and kettle.
  private static void exchange(BrewState state, Flows flows, double stepSec) {
    double kettleSideKg = flows.kettleKg + flows.headKg;
    double exchangedKgPerSec = flows.bedKgPerSec + flows.mixKgPerSec;
    if (!(kettleSideKg > 0) || !(flows.bedKg > 0) || !(exchangedKgPerSec > 0)) {
      return;
    }
    double evenFrac = state.extractKg() / (kettleSideKg + flows.bedKg);
    double excessKg = state.bedExtractKg - evenFrac * flows.bedKg;
    double rate = exchangedKgPerSec * (1 / kettleSideKg + 1 / flows.bedKg);
    double movedKg = excessKg * (1 - leftFrac(rate * stepSec));
    state.bedExtractKg -= movedKg;
    state.kettleExtractKg += movedKg;
  }

  /// Hops: alpha acid to iso-alpha acid to what is lost.
  static void hops(BrewState state, double stepSec, double kettleC) {
    if (state.hopCount == 0) {
      return;
    }
    double formed = ISO_FORMED.at(kettleC) * stepSec;
    double lost = ISO_LOST.at(kettleC) * stepSec;
    double alphaLeft = leftFrac(formed);
    double isoLeft = leftFrac(lost);
    double newLeft = leftFrac(lost / 2);
    for (int i = 0; i < state.hopCount; i++) {
      double formedMg = state.alphaMg[i] * (1 - alphaLeft);
      state.alphaMg[i] -= formedMg;
      state.isoMg[i] = state.isoMg[i] * isoLeft + formedMg * newLeft;
    }
  }

  /// Dimethyl sulphide: made from its precursor by heat, driven off with the steam.
  static void sulfide(BrewState state, double stepSec, double kettleC, double steamKgPerSec) {
    double madeFrac = state.precursorFrac * (1 - leftFrac(PRECURSOR_LOST.at(kettleC) * stepSec));
    state.precursorFrac -= madeFrac;
    double evaporationFracPerHr = steamKgPerSec * SEC_PER_HR / Math.max(1, state.liquidKg());
    double driven = DimethylSulfide.strippingPerSec(evaporationFracPerHr) * stepSec;
    state.sulfideFrac = state.sulfideFrac * leftFrac(driven) + madeFrac * leftFrac(driven / 2);
  }

  /// Heat dose of what comes back through the hose, in minutes at 60 C.
  ///
  /// Simpson's rule: the dose doubles every 2 K, and after a switch the hose warms fast.
  static double doseMin(double stepSec, double startC, double endC) {
    return (DOSE.at(startC) + 4 * DOSE.at((startC + endC) / 2) + DOSE.at(endC)) / 6 * stepSec;
  }

  /// The fastest thing that is going on, so that a step does not run past it.
  static double fastestPerSec(BrewState state) {
    double fastest = 0;
    if (state.bagIn && state.starchKg > 1e-3) {
      fastest = PASTING.at(state.bedC);
    }
    return fastest;
  }
}
