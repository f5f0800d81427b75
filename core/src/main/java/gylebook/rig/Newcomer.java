package gylebook.rig;

import static gylebook.rig.Parameter.assumed;
import static gylebook.rig.Parameter.assumedPositive;
import static gylebook.rig.Parameter.plate;

import java.util.List;
import java.util.Optional;

/// What somebody knows of their rig in two minutes; everything else starts as an assumption with an
/// honest doubt.
///
/// The doubts follow the priors of the rig's state-space model (docs/science/rig-priors.md); where
/// no figure was published they are our own judgement and say so.
///
/// @param name what the brewer calls the rig
/// @param kettleL what the kettle holds to the rim
/// @param plateW on the element's plate
/// @param plateV on the element's plate
/// @param mainsV at the socket
/// @param altitudeM where they live
/// @param pump whether there is a pump
/// @param hoseM its return hose
/// @param boreM bore of that hose
/// @param squeezed whether the bag is pressed when it is out
/// @param hoist whether a hoist lifts it
/// @param place where the controller's thermometer sits
/// @param chiller what cools the wort
/// @param fermenterL what the fermenter holds to the brim
/// @param kegL what the keg holds
public record Newcomer(
    String name,
    double kettleL,
    double plateW,
    double plateV,
    double mainsV,
    double altitudeM,
    boolean pump,
    double hoseM,
    double boreM,
    boolean squeezed,
    boolean hoist,
    Probe.Place place,
    Chiller.Kind chiller,
    double fermenterL,
    double kegL) {

  private static final double USUAL_L_PER_SEC = 4.0 / 60;
  private static final double TRICKLE_L_PER_SEC = 1e-6;

  /// Refuses what no kettle, element or house can be.
  public Newcomer {
    if (name.isBlank()) {
      throw new IllegalArgumentException("The name is '" + name + "'; a rig must have one.");
    }
    Limits.within("The kettle", kettleL, 5, 500, "L");
    Limits.within("The element", plateW, 300, 30_000, "W");
    Limits.within("The voltage on its plate", plateV, 90, 500, "V");
    Limits.within("The mains voltage", mainsV, 90, 500, "V");
    Limits.within("The altitude", altitudeM, -400, 5000, "m");
    Limits.within("The hose", hoseM, 0, 20, "m");
    Limits.within("The bore of the hose", boreM, 0.004, 0.05, "m");
    Limits.within("The fermenter", fermenterL, 2, 1000, "L");
    Limits.within("The keg", kegL, 1, 1000, "L");
  }

  /// Where the questions start: an ordinary kettle in an ordinary kitchen.
  public static Newcomer usual() {
    return new Newcomer(
        "my kettle",
        35,
        2500,
        230,
        230,
        100,
        true,
        1.5,
        0.0127,
        true,
        false,
        Probe.Place.SUCTION,
        Chiller.Kind.COUNTERFLOW,
        30,
        19);
  }

  /// The rig that this describes.
  public Rig rig() {
    return new Rig(
        name,
        false,
        site(),
        kettle(),
        element(),
        bag(),
        loop(),
        probes(),
        controller(),
        chillerAssumed(),
        working());
  }

  private Site site() {
    return new Site(
        new Parameter(altitudeM, 20, Spread.NORMAL, Origin.MEASURED, "where you live", ""),
        Optional.empty(),
        assumed(20, 2, "a room"),
        assumed(0.5, 0.1, "a room"),
        assumed(13, 3, "mains water over the year"),
        assumed(19, 2, "as the room"));
  }

  private double diameterM() {
    return Math.cbrt(4 * kettleL / 1000 / Math.PI);
  }

  private Kettle kettle() {
    double d = diameterM();
    double wallM2 = Math.PI * d * d * 1.25;
    return new Kettle(
        assumedPositive(d, 0.05, "as wide as high; measure the inside with a ruler"),
        assumedPositive(d, 0.05, "as wide as high; measure the inside with a ruler"),
        assumedPositive(14 * wallM2, 0.2, "14 kg for a square metre of steel with a thick floor"),
        assumed(500, 10, "stainless steel, from memory"),
        assumedPositive(
            6.0, 0.25, "bare steel: convection 5.3 and radiation 1.8, in part in series"),
        assumedPositive(350, 0.3, "wort side of the wall; the outside decides"),
        assumed(6.5, 1, "lid in still air"),
        assumed(11, 2, "open surface: convection and radiation"),
        assumedPositive(0.06, 0.4, "a lid with a slot for the hose"),
        assumedPositive(1.0, 0.3, "the formula misses by 18 % on average; rim and foam add to it"),
        assumedPositive(0.7, 0.4, "what the valve leaves; tip out and measure"),
        assumed(0.04, 0.0, "wanted between wort and rim"));
  }

  private Element element() {
    return new Element(
        plate(plateW, 0.03, "element tolerance, from memory"),
        new Parameter(plateV, 0, Spread.NORMAL, Origin.MAKERS_PLATE, "", ""),
        assumed(mainsV, mainsV * 0.02, "mains under load"),
        assumed(0.06, 0.015, "low in the kettle; measure from the floor"),
        assumed(0.03, 0, "wanted above the element"),
        assumed(plateW / plateV > 15 ? 32 : 16, 0, "next size above; read it off the breaker"));
  }

  private Bag bag() {
    return new Bag(
        assumedPositive(0.9 * diameterM(), 0.04, "a little narrower than the kettle"),
        assumed(0.07, 0.015, "held off the element"),
        assumedPositive(2e-10, 0.7, "bounds by Kozeny-Carman; no published value was found"),
        assumedPositive(0.85, 0.12, "drained bag, common practice 0.9 to 1.0"),
        assumedPositive(0.6, 0.15, "hand-squeezed bag, common practice 0.5 to 0.65"),
        assumedPositive(30, 0.4, "cloth and wort on both sides; our judgement"),
        assumedPositive(2.2, 0.15, "wort among the malt; our judgement"),
        assumed(0.05, 0.01, "rim of the bag above the wort"),
        assumed(0.70, 0.04, "0.65 to 0.80 L/kg read in a brewing-school text"));
  }

  private Loop loop() {
    double flowLPerSec = pump ? USUAL_L_PER_SEC : TRICKLE_L_PER_SEC;
    return new Loop(
        pump,
        new Parameter(hoseM, 0, Spread.NORMAL, Origin.MEASURED, "", ""),
        new Parameter(boreM, 0, Spread.NORMAL, Origin.MEASURED, "", ""),
        assumed(boreM * 1.5, 0, "silicone hose, wall a quarter of the bore"),
        assumedPositive(Math.max(0.05, 0.66 * hoseM), 0.4, "0.66 W/K a metre in still air"),
        assumedPositive(flowLPerSec, 0.25, "time a jug to know it"),
        assumedPositive(flowLPerSec * 1.5, 0.25, "throttle opened after the boil"),
        assumed(0.25, 0.1, "pump below the kettle"),
        assumedPositive(0.1, 0.5, "half a metre of hose and a valve"),
        assumedPositive(1.0, 0.5, "small hot-wort pumps; no published value was found"));
  }

  private List<Probe> probes() {
    return List.of(
        new Probe(
            "controller",
            Probe.Kind.PT100,
            place,
            assumedPositive(10, 0.3, "6 mm sheath in moving water"),
            assumed(0, 0.5, "class B and its transmitter"),
            true));
  }

  private Controller controller() {
    return new Controller(
        assumedPositive(0.3, 0.3, "proportional part; see the controller's settings"),
        assumedPositive(320, 0.2, "integral time; see the controller's settings"),
        assumed(60, 0, "anti-windup"));
  }

  private Chiller chillerAssumed() {
    double waterLPerSec = 6.0 / 60;
    return new Chiller(
        chiller,
        assumedPositive(1.0e-4, 0.3, "a home counterflow chiller; learn it from one day"),
        assumedPositive(1.0e-4, 0.3, "the same"),
        assumedPositive(2.5 / 60, 0.2, "wort throttled while chilling"),
        assumedPositive(waterLPerSec, 0.2, "a garden tap half open"),
        assumed(0.3, 0.1, "wort that stays in it"));
  }

  private Working working() {
    return new Working(
        assumedPositive(300, 0.3, "pouring and stirring"),
        assumedPositive(120, 0.3, "before the pump starts"),
        assumedPositive(600, 0.2, "dripping"),
        squeezed,
        assumed(0.93, 0.03, "crush and stirring decide; learn it from one gyle"),
        assumedPositive(0.02, 0.5, "what the spoon moves; our judgement"),
        new Parameter(fermenterL, 0, Spread.NORMAL, Origin.MAKERS_PLATE, "", ""),
        assumedPositive(0.9, 0.3, "yeast cake"),
        new Parameter(kegL, 0, Spread.NORMAL, Origin.MAKERS_PLATE, "", ""),
        assumed(0.5, 0.1, "arms over the kettle"),
        hoist);
  }
}
