package gylebook.simulate;

import gylebook.science.Chiller;

/// The member's chiller: how much heat leaves for each kelvin between wort and cold water.
final class Chilling {
  private Chilling() {}

  /// Heat for each kelvin between hot inlet and cold inlet.
  static double wattPerK(Member member, double wortJPerLK) {
    double waterWPerK = member.chillWaterLPerSec * Flows.WATER_J_PER_KG_K;
    double wortWPerK = member.chillWortLPerSec * wortJPerLK;
    double uaWPerK =
        Chiller.uaWPerK(
            member.chillWortLPerSec,
            member.chillWaterLPerSec,
            member.chillHotFactor,
            member.chillColdFactor);
    return switch (member.chiller) {
      // The kettle is stirred, so only the water changes along the coil.
      case IMMERSION -> waterWPerK * -Math.expm1(-uaWPerK / waterWPerK);
      case COUNTERFLOW, PLATE -> {
        double leastWPerK = Math.min(waterWPerK, wortWPerK);
        double mostWPerK = Math.max(waterWPerK, wortWPerK);
        yield leastWPerK
            * Chiller.effectivenessFrac(
                Chiller.Passing.COUNTERFLOW, uaWPerK / leastWPerK, leastWPerK / mostWPerK);
      }
      case NONE -> 0;
    };
  }

  /// Wort that comes out of one pass.
  static double castC(Member member, double wortC, double wortJPerLK) {
    if (member.chiller != gylebook.rig.Chiller.Kind.COUNTERFLOW
        && member.chiller != gylebook.rig.Chiller.Kind.PLATE) {
      return wortC;
    }
    double wortWPerK = member.chillWortLPerSec * wortJPerLK;
    return wortC - wattPerK(member, wortJPerLK) / wortWPerK * (wortC - member.tapC);
  }
}
