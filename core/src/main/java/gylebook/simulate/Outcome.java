package gylebook.simulate;

/// Every number that comes out of one simulated day, beside its milestones. The key ends in its
/// unit and is the name used in files and on the page.
public enum Outcome {
  LIQUOR("liquorL"),
  HEAT_UP("heatUpSec"),
  DOUGH_IN("doughInC"),
  GRAIN_MEAN("grainMeanC"),
  GRAIN_HELD("grainHeldC"),
  FIRST_WORT("firstWortPlato"),
  CONVERSION("conversionFrac"),
  KETTLE_YIELD("kettleYieldFrac"),
  PRE_BOIL_COLD("preBoilL"),
  PRE_BOIL_HOT("preBoilHotL"),
  PRE_BOIL_STRENGTH("preBoilPlato"),
  TO_BOIL("toBoilSec"),
  BOILS_AT("boilsC"),
  BOIL_OFF("boilOffL"),
  BOIL_OFF_RATE("boilOffLPerHr"),
  ROLLING("rollingDutyFrac"),
  BOIL_HELD("boilHeldC"),
  POST_BOIL_COLD("postBoilL"),
  POST_BOIL_HOT("postBoilHotL"),
  CAST("castC"),
  FERMENTER("fermenterL"),
  STRENGTH("strengthPlato"),
  BREWHOUSE("brewhouseFrac"),
  COLOUR("colourEbc"),
  ISO_IN_WORT("isoInWortMgPerL"),
  ISO_IN_BEER("isoMgPerL"),
  BITTERNESS("bitternessMgPerL"),
  TINSETH("tinsethMgPerL"),
  ATTENUATION("attenuationFrac"),
  FINAL("finalPlato"),
  ALCOHOL("alcoholByVolumeFrac"),
  KEG("kegL"),
  ENERGY("energyJ"),
  CHILL_WATER("chillWaterL"),
  ALL_WATER("waterL"),
  BAG_WET("bagWetKg"),
  BAG_DRIPPED("bagDrippedKg"),
  DRAIN("drainC"),
  PRECURSOR("dmsPrecursorFrac"),
  SULFIDE("dmsFrac"),
  LOOP_DOSE("loopDoseMin"),
  DAY("daySec"),
  COVER("elementCoverM"),
  ROOM_AT_DOUGH_IN("roomAtDoughInM"),
  ROOM_AT_BREAK("roomAtBreakM"),
  SUCTION("suctionMarginM"),
  CURRENT("currentA"),
  BREAKER("breakerShareFrac"),
  MASH_PH("mashPh"),
  RESIDUAL("mashResidualMeqPerL"),
  MASH_CALCIUM("mashCalciumMgPerL"),
  MASH_MAGNESIUM("mashMagnesiumMgPerL"),
  MASH_SODIUM("mashSodiumMgPerL"),
  MASH_CHLORIDE("mashChlorideMgPerL"),
  MASH_SULFATE("mashSulfateMgPerL"),
  MASH_BICARBONATE("mashBicarbonateMgPerL"),
  WHOLE_CALCIUM("wholeCalciumMgPerL"),
  WHOLE_MAGNESIUM("wholeMagnesiumMgPerL"),
  WHOLE_SODIUM("wholeSodiumMgPerL"),
  WHOLE_CHLORIDE("wholeChlorideMgPerL"),
  WHOLE_SULFATE("wholeSulfateMgPerL"),
  WHOLE_BICARBONATE("wholeBicarbonateMgPerL"),
  CAST_SHIFT("castShiftPh"),
  FERMENT_END("fermentEndSec"),
  PACKED("packedPlato"),
  PACKED_OVER("packedOverPlato"),
  PACKAGED_GAS("packagedVol"),
  PRIMING("primingG"),
  GAVE_UP("gaveUpNumber");

  private final String key;

  Outcome(String key) {
    this.key = key;
  }

  /// Its name in code and files, ending in its unit.
  public String key() {
    return key;
  }
}
