package gylebook.telling;

import gylebook.rig.Probe;
import gylebook.rig.Rig;
import gylebook.units.AnyUnit;
import gylebook.units.ReadingUnits;
import java.util.List;

/// A rig as plain sentences; every number in them can be filled, and says how well it is known.
///
/// Somebody who types a number has measured it. They may say how far off it may be: "28.5 L give or
/// take 0.5 L".
@AnyUnit("shows amounts of every quantity")
public final class RigWords {
  private RigWords() {}

  /// The rig in sections.
  public static List<Section> of(Rig rig, ReadingUnits units) {
    Draft draft = new Draft(rig, units);
    kettle(draft);
    element(draft);
    bag(draft);
    loop(draft, rig);
    thermometers(draft, rig);
    chiller(draft);
    place(draft);
    working(draft);
    return draft.sections();
  }

  private static void kettle(Draft draft) {
    draft
        .section("Kettle")
        .say("The rig is called {name|name of the rig}.")
        .say(
            "The kettle is {kettle.diameterM|width inside} across inside and {kettle.heightM|height"
                + " inside} from floor to rim.")
        .say(
            "It weighs {kettle.steelKg|mass of the kettle}; its metal takes"
                + " {kettle.steelJPerKgK|specific heat of the metal} to warm.")
        .say(
            "Its wall loses {kettle.wallWPerM2K|loss of the wall} to the room and takes heat from"
                + " the wort by {kettle.wortToWallWPerK|conductance from wort to wall}.")
        .say(
            "The surface loses {kettle.lidOnWPerM2K|loss of the covered surface} under the lid and"
                + " {kettle.lidOffWPerM2K|loss of the open surface} without it;"
                + " {kettle.lidLeakFrac|steam past the lid} of the steam passes the lid.")
        .say(
            "It steams {kettle.evaporationFactor|evaporation against the formula} times what the"
                + " formula for quiet air says.")
        .say(
            "When it has run off, {kettle.deadL|left behind in the kettle} stay behind. Below the"
                + " rim {kettle.headroomM|headroom wanted} are wanted free.");
  }

  private static void element(Draft draft) {
    draft
        .section("Element and controller")
        .say(
            "The plate says {element.plateW|power on the plate} at {element.plateV|voltage on the"
                + " plate}; the mains give {element.mainsV|mains voltage} under load, behind a"
                + " breaker of {element.breakerA|rating of the breaker}.")
        .say(
            "Its highest bare part is {element.topM|top of the element} above the floor;"
                + " {element.coverM|cover wanted} of wort are wanted over it.")
        .say(
            "The controller gives {controller.gainFracPerK|proportional gain} of duty, with an"
                + " integral time of {controller.integralSec|integral time}, let go within"
                + " {controller.trackingSec|tracking time} when it is clamped.");
  }

  private static void bag(Draft draft) {
    draft
        .section("Bag and bed")
        .say(
            "The bed is {bag.diameterM|width of the bed} across; the bag's bottom hangs"
                + " {bag.floorM|bottom of the bag} above the floor.")
        .say(
            "A kilogram of malt keeps {bag.drainedKgPerKg|wort kept after draining} of wort after"
                + " draining, {bag.squeezedKgPerKg|wort kept after squeezing} after squeezing, and"
                + " takes {bag.displacementLPerKg|room taken in the mash} of room in the mash.")
        .say(
            "Wort runs through the bed as through sand of {bag.permeabilityM2|permeability of the"
                + " bed}; {bag.bedKgPerKg|wort among the malt} stay among it. Its head may rise"
                + " {bag.crestM|crest} before it spills.")
        .say("Heat crosses the cloth by {bag.wallWPerK|conductance of the cloth}.");
  }

  private static void loop(Draft draft, Rig rig) {
    draft.section("Pump and hose").say("Is there a pump: {loop.present|whether there is a pump}.");
    if (!rig.loop().present()) {
      return;
    }
    draft
        .say(
            "Its hose is {loop.hoseM|length of the hose} long, {loop.boreM|bore of the hose} inside"
                + " and {loop.outerM|outer width of the hose} outside, and loses"
                + " {loop.hoseWPerK|loss of the hose}.")
        .say(
            "It moves {loop.mashLPerSec|flow while mashing} while mashing and"
                + " {loop.whirlpoolLPerSec|flow while standing} after the boil.")
        .say(
            "The floor of the kettle is {loop.suctionM|height above the pump} above the pump;"
                + " {loop.suctionLossM|head lost before the pump} of head is lost before it, and it"
                + " wants {loop.wantedNpshM|suction head wanted}.");
  }

  private static void thermometers(Draft draft, Rig rig) {
    draft.section("Thermometers");
    for (int i = 0; i < rig.probes().size(); i++) {
      Probe.Kind kind = rig.probes().get(i).kind();
      String noun =
          switch (kind) {
            case THERMISTOR, THERMOCOUPLE -> "";
            case PT100 -> " element";
            default -> " thermometer";
          };
      draft.say(
          Grammar.numbered(
              "{probes.#.name|name of thermometer ##} is "
                  + Grammar.article(kind.words())
                  + "{probes.#.kind|kind of thermometer ##}"
                  + noun
                  + " {probes.#.place|where the tip of thermometer ## is}; it runs"
                  + " {probes.#.lagSec|lag of thermometer ##} behind and reads"
                  + " {probes.#.biasK|thermometer ## reads high by} high. Does it steer the"
                  + " controller: {probes.#.steers|whether thermometer ## steers}.",
              i));
    }
    draft.say("{+probes|a thermometer}.");
  }

  private static void chiller(Draft draft) {
    draft
        .section("Chiller")
        .say(
            "It is a chiller of the kind {chiller.kind|kind of chiller}, with wort at"
                + " {chiller.wortLPerSec|flow of wort} and water at {chiller.waterLPerSec|flow of"
                + " water}; {chiller.heldL|wort held in the chiller} of wort stay in it.")
        .say(
            "Its resistance is {chiller.hotKPerW|resistance on the wort side} on the wort side and"
                + " {chiller.coldKPerW|resistance on the water side} on the water side, each at a"
                + " kilogram a second.");
  }

  private static void place(Draft draft) {
    draft
        .section("Place")
        .say(
            "It stands {site.altitudeM|height above the sea} above the sea; the barometer on the"
                + " spot shows {site.stationKpa|station pressure}.")
        .say(
            "The room is at {site.roomC|air in the room} with {site.roomHumidityFrac|humidity}"
                + " humidity, the tap gives {site.tapC|cold water}, the malt is at"
                + " {site.goodsC|malt as it comes}.");
  }

  private static void working(Draft draft) {
    draft
        .section("How you work")
        .say(
            "Malt goes in over {working.doughInSec|time of pouring in}, then"
                + " {working.settleSec|time before the pump starts} with the pump off; the bag drips"
                + " for {working.drainSec|time of dripping}. Is it squeezed: {working.squeeze|whether"
                + " the bag is squeezed}. Is there a hoist: {working.hoist|whether there is a hoist};"
                + " else it is lifted {working.liftReachM|reach} from the body.")
        .say(
            "The crush lets {working.mashFrac|share the crush lets go} of the malt's extract go; the"
                + " spoon moves {working.mixingLPerSec|exchange by stirring}.")
        .say(
            "The fermenter holds {working.fermenterL|what the fermenter holds} to the brim and keeps"
                + " {working.fermenterLossL|left in the fermenter}; the keg holds {working.kegL|what"
                + " the keg holds}.");
  }
}
