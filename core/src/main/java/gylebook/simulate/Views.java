package gylebook.simulate;

import gylebook.science.Suction;
import gylebook.science.WortDensity;
import gylebook.units.ExtractScale;

/// What a brewer sees of the state: litres, levels, strengths.
final class Views {
  static final double L_PER_M3 = 1000;
  static final double PLATO_PER_FRAC = 100;
  private static final double WORT_KG_PER_L = 1.0;
  private static final double WARM_WORT_KG_PER_L = 1.03;

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
    return kettleSideKg > 0 ? PLATO_PER_FRAC * (state.kettleExtractKg / kettleSideKg) : 0;
  }

  /// Depth of the bed.
  static double bedDepthM(BrewState state, Member member) {
    double wortL = member.bedKgPerKg * state.grainKg / WORT_KG_PER_L;
    double bedL = wortL + member.displacementLPerKg * state.grainKg;
    return bedL / L_PER_M3 / member.bedM2;
  }

  /// Level at rest above the floor.
  static double restM(BrewState state, Member member) {
    return hotL(state, member) / L_PER_M3 / member.surfaceM2;
  }

  /// Level round the bag, where the element is, while the pump draws it down.
  static double outsideM(BrewState state, Member member, Flows flows) {
    return restM(state, member) - fallM(member, flows);
  }

  /// How far the pump draws the level down round the bag.
  static double fallM(Member member, Flows flows) {
    return flows.bedHeadM * member.bedM2 / member.surfaceM2;
  }

  /// Head to spare at the pump's eye above what the pump wants, at mash flow.
  static double suctionM(BrewState state, Member member) {
    double vapourKpa = SurfaceLoss.SATURATION_KPA.at(Math.min(state.kettleC, member.waterBoilsC));
    double npshM =
        Suction.npshM(
            member.pressureKpa,
            vapourKpa,
            restM(state, member) + member.suctionM,
            member.suctionLossM,
            WARM_WORT_KG_PER_L);
    return npshM - member.wantedNpshM;
  }

  /// Specific gravity of a strength.
  static double sg(double extractFrac) {
    double wortPlato = PLATO_PER_FRAC * extractFrac;
    return ExtractScale.sgFromPlato(wortPlato);
  }
}
