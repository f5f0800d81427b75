package gylebook.simulate;

import gylebook.science.BedFlow;
import gylebook.science.WortDensity;
import gylebook.science.WortViscosity;

/// What flows where at one moment of a leg, and what each zone holds: plain numbers for the step.
final class Flows {
  /// Liquid water over the range of a brew day (from memory; 4179 to 4216 between 20 and 100 C).
  static final double WATER_J_PER_KG_K = 4186;

  /// Extract in solution, so that 12 P at 66 C has the specific heat of the sugar industry's form.
  static final double EXTRACT_J_PER_KG_K = 2160;

  /// Dry malt (Pauls & Whites' table at 0 % moisture).
  static final double SOLIDS_J_PER_KG_K = 1590;

  static final double LIQUOR_KG_PER_L = 0.998203;

  private static final double HEAD_MOST_KG = 3;
  private static final double HEAD_SHARE_FRAC = 0.10;
  private static final double BED_SHARE_FRAC = 0.50;

  double kettleJPerK;
  double bedJPerK;
  double headJPerK;
  double loopWPerK;
  double bedWPerK;
  double spillWPerK;
  double mixWPerK;
  double chillWPerK;

  double kettleKg;
  double bedKg;
  double headKg;
  double loopLPerSec;
  double bedKgPerSec;
  double hoseKeepsFrac;
  double mixKgPerSec;
  double runOffKgPerSec;
  double bedHeadM;
  double chillWaterKgPerSec;
  double drainShareFrac;

  /// Heat capacity of a kilogram of wort.
  static double wortJPerKgK(double extractFrac) {
    return WATER_J_PER_KG_K + extractFrac * (EXTRACT_J_PER_KG_K - WATER_J_PER_KG_K);
  }

  /// Masses and heat capacities of the zones: cheap, taken anew each step.
  void weigh(BrewState state, Member member) {
    double liquidKg = state.liquidKg();
    double wortJPerKgK = wortJPerKgK(state.extractFrac());
    if (state.bagIn) {
      bedKg = Math.min(member.bedKgPerKg * state.grainKg, BED_SHARE_FRAC * liquidKg);
      headKg = Math.min(HEAD_MOST_KG, HEAD_SHARE_FRAC * liquidKg);
      bedJPerK = bedKg * wortJPerKgK + state.solidsKg() * SOLIDS_J_PER_KG_K;
      headJPerK = headKg * wortJPerKgK;
    } else {
      bedKg = 0;
      headKg = 0;
      bedJPerK = 0;
      headJPerK = 0;
    }
    kettleKg = liquidKg - bedKg - headKg;
    kettleJPerK = Math.max(kettleKg, 0.05) * wortJPerKgK;
  }

  /// Rates of flow: dearer, taken anew when the leg or the wort has changed.
  void run(BrewState state, Member member, Leg leg) {
    double extractFrac = state.extractFrac();
    double wortKgPerL = WortDensity.wortKgPerL(extractFrac, Math.min(state.kettleC, 100));
    double wortJPerLK = wortKgPerL * wortJPerKgK(extractFrac);
    loopLPerSec =
        !member.hasPump
            ? 0
            : switch (leg.pump()) {
              case OFF -> 0;
              case MASH -> member.mashLPerSec;
              case WHIRLPOOL -> member.whirlpoolLPerSec;
            };
    loopWPerK = loopLPerSec * wortJPerLK;
    hoseKeepsFrac = loopWPerK > 0 ? Math.exp(-member.hoseWPerK / loopWPerK) : 0;
    boolean stirred = leg.stirred() || !member.hasPump;
    mixWPerK = state.bagIn && stirred ? member.mixingLPerSec * wortJPerLK : 0;
    mixKgPerSec = state.bagIn && stirred ? member.mixingLPerSec * wortKgPerL : 0;
    bed(state, member, extractFrac, wortKgPerL);
    chill(member, leg, wortJPerLK);
    runOffKgPerSec = leg.runOff() ? member.chillWortLPerSec * wortKgPerL : 0;
  }

  /// What the bed lets through; the rest spills past it.
  private void bed(BrewState state, Member member, double extractFrac, double wortKgPerL) {
    if (!state.bagIn || loopLPerSec <= 0) {
      bedWPerK = 0;
      spillWPerK = 0;
      bedKgPerSec = 0;
      bedHeadM = 0;
      return;
    }
    double depthM = Views.bedDepthM(state, member);
    double viscosityPaSec = WortViscosity.wortPaSec(extractFrac, Math.min(state.bedC, 95));
    double headAllM =
        BedFlow.headM(
            loopLPerSec, depthM, member.bedM2, member.permeabilityM2, viscosityPaSec, wortKgPerL);
    double outsideM2 = member.surfaceM2 - member.bedM2;
    double headMostM = Math.max(0.005, member.crestM) * member.surfaceM2 / outsideM2;
    double throughFrac = Math.min(1, headMostM / headAllM);
    bedHeadM = Math.min(headAllM, headMostM);
    bedWPerK = throughFrac * loopWPerK;
    spillWPerK = loopWPerK - bedWPerK;
    bedKgPerSec = throughFrac * loopLPerSec * wortKgPerL;
  }

  /// Conductance to the cold water while the wort is cooled in the kettle.
  private void chill(Member member, Leg leg, double wortJPerLK) {
    chillWPerK = 0;
    chillWaterKgPerSec = 0;
    drainShareFrac = 0;
    if (!leg.chilling() || member.chiller == gylebook.rig.Chiller.Kind.NONE) {
      return;
    }
    chillWaterKgPerSec = member.chillWaterLPerSec * LIQUOR_KG_PER_L;
    if (!leg.runOff()) {
      chillWPerK = Chilling.passedWPerK(member, wortJPerLK);
    }
    drainShareFrac = Casting.drainShareFrac(member, this, leg.runOff());
  }
}
