package gylebook.simulate;

import gylebook.science.WortDensity;
import gylebook.units.ExtractScale;

/// What a brewer sees of the state: litres, levels, strengths.
final class Views {
  private Views() {}

  /// Liquid and goods in the vessel as they stand.
  static double hotL(BrewState state, Member member) {
    double liquidL = liquidL(state, state.kettleC);
    return state.bagIn ? liquidL + member.displacementLPerKg * state.grainKg : liquidL;
  }

  /// The liquid alone, at 20 C.
  static double coldL(BrewState state) {
    return liquidL(state, 20);
  }

  private static double liquidL(BrewState state, double atC) {
    return state.liquidKg() / WortDensity.wortKgPerL(state.extractFrac(), Math.min(100, atC));
  }

  /// Strength of the wort in the kettle.
  static double wortPlato(BrewState state, Flows flows) {
    double kettleSideKg = flows.kettleKg + flows.headKg;
    return kettleSideKg > 0 ? 100 * state.kettleExtractKg / kettleSideKg : 0;
  }

  /// Depth of the bed.
  static double bedDepthM(BrewState state, Member member) {
    double bedL = (member.bedKgPerKg + member.displacementLPerKg) * state.grainKg;
    return bedL / 1000 / member.bedM2;
  }

  /// Level at rest above the floor.
  static double restM(BrewState state, Member member) {
    return hotL(state, member) / 1000 / member.surfaceM2;
  }

  /// Level round the bag, where the element is, while the pump draws it down.
  static double outsideM(BrewState state, Member member, Flows flows) {
    double fallM = flows.bedHeadM * member.bedM2 / member.surfaceM2;
    return restM(state, member) - fallM;
  }

  /// Specific gravity of a strength.
  static double sg(double extractFrac) {
    return ExtractScale.sgFromPlato(100 * extractFrac);
  }
}
