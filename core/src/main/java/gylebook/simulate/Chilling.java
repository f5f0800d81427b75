package gylebook.simulate;

import gylebook.science.Chiller;

/// The member's chiller: how much heat leaves for each kelvin between wort and cold water.
final class Chilling {
  private static final double WORT_KG_PER_L = 1.03;
  private static final double WATER_KG_PER_L = 1.0;

  private Chilling() {}

  static double waterWPerK(Member member) {
    return member.chillWaterLPerSec * WATER_KG_PER_L * Flows.WATER_J_PER_KG_K;
  }

  /// Heat for each kelvin between hot inlet and cold inlet.
  static double passedWPerK(Member member, double wortJPerLK) {
    double waterWPerK = waterWPerK(member);
    double wortWPerK = member.chillWortLPerSec * wortJPerLK;
    double wortKgPerSec = member.chillWortLPerSec * WORT_KG_PER_L;
    double waterKgPerSec = member.chillWaterLPerSec * WATER_KG_PER_L;
    double uaWPerK =
        Chiller.uaWPerK(wortKgPerSec, waterKgPerSec, member.chillHotKPerW, member.chillColdKPerW);
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
    double shareFrac = passedWPerK(member, wortJPerLK) / wortWPerK;
    return wortC - shareFrac * (wortC - member.tapC);
  }
}
