package gylebook.plan;

import java.util.Map;

/// What a brewer calls each uncertain number: the path is for files, these words are for people.
final class MoverWords {
  private static final Map<String, String> WORDS =
      Map.ofEntries(
          Map.entry("site.altitudeM", "how high you live"),
          Map.entry("site.stationKpa", "the day's air pressure"),
          Map.entry("site.weatherKpa", "the weather's air pressure"),
          Map.entry("site.roomC", "how warm the room is"),
          Map.entry("site.roomHumidityFrac", "how damp the room's air is"),
          Map.entry("site.tapC", "how cold the tap water is"),
          Map.entry("site.goodsC", "how warm the malt is"),
          Map.entry("kettle.diameterM", "the kettle's width inside"),
          Map.entry("kettle.heightM", "the kettle's height inside"),
          Map.entry("kettle.steelKg", "the kettle's weight"),
          Map.entry("kettle.steelJPerKgK", "heat that the kettle's steel holds"),
          Map.entry("kettle.wallWPerM2K", "heat lost through the kettle's wall"),
          Map.entry("kettle.wortToWallWPerK", "heat from the wort into the wall"),
          Map.entry("kettle.lidOnWPerM2K", "heat lost with the lid on"),
          Map.entry("kettle.lidOffWPerM2K", "heat lost with the lid off, steam apart"),
          Map.entry("kettle.lidLeakFrac", "steam that gets past the lid"),
          Map.entry("kettle.evaporationFactor", "how fast the open kettle steams"),
          Map.entry("kettle.deadL", "wort that stays in the kettle"),
          Map.entry("kettle.headroomM", "room you want below the rim"),
          Map.entry("element.plateW", "the element's power"),
          Map.entry("element.plateV", "the voltage on the element's plate"),
          Map.entry("element.mainsV", "the mains voltage"),
          Map.entry("element.topM", "how high the element lies"),
          Map.entry("element.coverM", "wort you want over the element"),
          Map.entry("element.breakerA", "the breaker's size"),
          Map.entry("bag.diameterM", "the bag's width"),
          Map.entry("bag.floorM", "how far the bag hangs off the floor"),
          Map.entry("bag.permeabilityM2", "how well wort runs through the malt"),
          Map.entry("bag.drainedKgPerKg", "wort that the drained bag keeps"),
          Map.entry("bag.squeezedKgPerKg", "wort that the squeezed bag keeps"),
          Map.entry("bag.wallWPerK", "heat through the cloth of the bag"),
          Map.entry("bag.bedKgPerKg", "wort that stands among the malt"),
          Map.entry("bag.crestM", "how far the bag's rim stands out"),
          Map.entry("bag.displacementLPerKg", "room that the malt takes"),
          Map.entry("loop.hoseM", "the hose's length"),
          Map.entry("loop.boreM", "the hose's bore"),
          Map.entry("loop.outerM", "the hose's width outside"),
          Map.entry("loop.hoseWPerK", "heat lost by the hose"),
          Map.entry("loop.mashLPerSec", "the pump's flow in the mash"),
          Map.entry("loop.whirlpoolLPerSec", "the pump's flow after the boil"),
          Map.entry("loop.suctionM", "how far the pump stands below the kettle"),
          Map.entry("loop.suctionLossM", "what hose and valve cost before the pump"),
          Map.entry("loop.wantedNpshM", "suction head that the pump wants"),
          Map.entry("probe.lagSec", "how slowly the thermometer follows"),
          Map.entry("probe.biasK", "how far off the thermometer reads"),
          Map.entry("controller.gainFracPerK", "the controller's proportional part"),
          Map.entry("controller.integralSec", "the controller's integral time"),
          Map.entry("controller.trackingSec", "how fast the controller lets go at full power"),
          Map.entry("chiller.hotKPerW", "the chiller's resistance on the wort's side"),
          Map.entry("chiller.coldKPerW", "the chiller's resistance on the water's side"),
          Map.entry("chiller.wortLPerSec", "the wort's flow through the chiller"),
          Map.entry("chiller.waterLPerSec", "the water's flow through the chiller"),
          Map.entry("chiller.heldL", "wort that stays in the chiller"),
          Map.entry("working.doughInSec", "how long you take to stir the malt in"),
          Map.entry("working.settleSec", "how long the mash stands before the pump"),
          Map.entry("working.drainSec", "how long the bag drips"),
          Map.entry("working.mashFrac", "how much of the malt your crush and stirring let go"),
          Map.entry("working.mixingLPerSec", "what the spoon moves"),
          Map.entry("working.fermenterL", "what the fermenter holds"),
          Map.entry("working.fermenterLossL", "beer that stays on the yeast"),
          Map.entry("working.kegL", "what the keg holds"),
          Map.entry("working.liftReachM", "how far out you lift the bag"),
          Map.entry("recipe.liquorFactor", "how well the liquor is measured"),
          Map.entry("recipe.attenuationFrac", "how fermentable this malt's wort is"),
          Map.entry("recipe.yeastFactor", "how far this yeast goes"),
          Map.entry("recipe.ionsFactor", "how the water's ions wander"),
          Map.entry("recipe.alkalinityFactor", "how the water's alkalinity wanders"),
          Map.entry("model.wettingFactor", "heat of the malt taking up water"),
          Map.entry("model.isoFactor", "how fast alpha acid isomerises"),
          Map.entry("model.boilColourEbc", "colour that the boil adds"),
          Map.entry("model.colourFactor", "the rule that reckons colour from malt"),
          Map.entry("model.kettleKeepsFrac", "bitterness that trub takes"),
          Map.entry("model.fermentKeepsFrac", "bitterness that the ferment takes"),
          Map.entry("model.pelletHoldsLPerKg", "wort that pellets hold"),
          Map.entry("model.leafHoldsLPerKg", "wort that leaf hops hold"),
          Map.entry("model.dryHopHoldsLPerKg", "beer that dry hops hold"),
          Map.entry("model.humulinoneFrac", "what dry hops bring of bitterness"),
          Map.entry("model.maltBufferFactor", "how hard the malt holds its pH"),
          Map.entry("model.maltPh", "the malt's own pH"),
          Map.entry("model.chalkFrac", "how much of chalk and lime dissolves"),
          Map.entry("model.fermentRateFactor", "how fast the yeast works"),
          Map.entry("model.gasFactor", "how much gas beer holds"),
          Map.entry("model.primingFactor", "how well sugar and litres are measured"),
          Map.entry("model.fermentMidpoint", "how long the yeast takes to start"),
          Map.entry("model.tenKelvinFactor", "what warmth does to the yeast's pace"),
          Map.entry("model.thicknessNumber", "what a thin mash does to its enzymes"),
          Map.entry("model.alphaSolubleFactor", "how much alpha acid dissolves"));

  private MoverWords() {}

  /// The number of that path in words; goods and hops are counted from one.
  static String says(String path) {
    String[] parts = path.split("\\.", -1);
    if (parts.length == 3 && parts[0].equals("grist")) {
      return "what line " + number(parts[1]) + " of the grist yields";
    }
    if (parts.length == 3 && parts[0].equals("hops")) {
      return "alpha acid of hop addition " + number(parts[1]);
    }
    String words = WORDS.get(path);
    if (words == null) {
      throw new IllegalArgumentException("Nobody has a word for " + path + ".");
    }
    return words;
  }

  /// Whether there are words for a path.
  static boolean knows(String path) {
    return WORDS.containsKey(path);
  }

  private static int number(String index) {
    return Integer.parseInt(index) + 1;
  }
}
