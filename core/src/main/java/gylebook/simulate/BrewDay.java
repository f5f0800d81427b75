package gylebook.simulate;

import gylebook.recipe.Boil;
import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.recipe.Stand;
import gylebook.rig.Chiller;
import gylebook.rig.Rig;
import gylebook.units.Entered;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/// The hot day of one recipe on one rig, with what the brewer sets: from cold liquor to the
/// fermenter, as actions.
///
/// @param recipe what is brewed
/// @param rig on what
/// @param settings with what set
public record BrewDay(Recipe recipe, Rig rig, Settings settings) {

  private static final double HOUR_SEC = 3600;
  private static final double MOST_HEATING_SEC = 5 * HOUR_SEC;
  private static final double MOST_COOLING_SEC = 24 * HOUR_SEC;
  // From the switch to the first wort leaving: whirl, coupling the hoses (assumed).
  private static final double KNOCK_OUT_SEC = 300;
  private static final double STRIKE_OVER_K = 0.4;
  private static final double NEAR_K = 0.3;
  private static final double ABOVE_TAP_K = 3;
  // Wort that is to stand so near the boil needs no cooling to it.
  private static final double NEAR_BOIL_K = 1;

  /// Sugar and extract go in with so much of the boil left.
  public static final double EXTRACT_LEFT_SEC = 600;

  /// Every day is given up after this.
  public static final double LONGEST_SEC = 40 * HOUR_SEC;

  /// So many additions of hops are followed, each with its own acids.
  public static final int MOST_HOPS = BrewState.MOST_HOPS;

  /// So many rests and stands fit into the log of a day with every addition of hops.
  public static final int MOST_RESTS = 20;

  /// As with the rests.
  public static final int MOST_STANDS = 8;

  /// The actions of one member's day.
  List<Action> actions(Member member, Lots lots) {
    List<Action> day = new ArrayList<>();
    day.add(new Action.Mark("liquorIn"));
    strike(day);
    mash(day, member, lots);
    bagOut(day, member, lots);
    boil(day, lots, Math.max(settings.boilDutyFrac(), member.rollingDutyFrac(lidOn())));
    afterBoil(day, member, lots);
    return day;
  }

  private void strike(List<Action> day) {
    day.add(
        automatic(
            "strikeReady",
            settings.strikeC() + STRIKE_OVER_K,
            new Leg.Until.Reads(settings.strikeC()),
            MOST_HEATING_SEC));
  }

  private void mash(List<Action> day, Member member, Lots lots) {
    day.add(
        new Action.DoughIn(
            lots.maltKg,
            lots.maltMoistureFrac,
            lots.maltExtractFrac,
            member.goodsC,
            lots.wettingFactor));
    addHops(day, lots, when -> when instanceof Hop.When.InMash);
    day.add(
        new Leg(
            "doughedIn",
            new Leg.Drive.ByHand(0),
            Leg.Pump.OFF,
            false,
            true,
            false,
            false,
            new Leg.Until.After(member.doughInSec),
            member.doughInSec));
    day.add(Leg.idle("settled", member.settleSec));
    List<Rest> rests = recipe.rests();
    for (int i = 0; i < rests.size(); i++) {
      double setC = rests.get(i).targetC().inside() + settings.mashOffsetK();
      if (i > 0) {
        Leg toRest =
            automatic("toRest." + i, setC, new Leg.Until.Reads(setC - NEAR_K), MOST_HEATING_SEC);
        day.add(toRest.switched(drive(rests, i), toRest.pump(), toRest.lidOn()));
      }
      double holdSec = rests.get(i).holdSec().inside();
      day.add(automatic("rest." + i, setC, new Leg.Until.After(holdSec), holdSec));
    }
    day.add(new Action.Mark("mashDone"));
  }

  /// Only a hotter rest can be heated to, and the first is struck.
  private Leg.Drive drive(List<Rest> rests, int number) {
    Rest rest = rests.get(number);
    double setC = rest.targetC().inside() + settings.mashOffsetK();
    double fromC = rests.get(number - 1).targetC().inside() + settings.mashOffsetK();
    double rampSec = rest.rampSec().map(Entered::inside).orElse(0.0);
    return rampSec > 0 && setC > fromC
        ? new Leg.Drive.Rising(fromC, setC, (setC - fromC) / rampSec)
        : new Leg.Drive.Automatic(setC);
  }

  private void bagOut(List<Action> day, Member member, Lots lots) {
    day.add(new Action.BagOut(member.squeeze ? member.squeezedKgPerKg : member.drainedKgPerKg));
    if (settings.topUpL() > 0) {
      double topUpKg = settings.topUpL() * Flows.LIQUOR_KG_PER_L * lots.liquorFactor;
      day.add(new Action.TopUp(topUpKg, member.tapC));
    }
    addHops(day, lots, when -> when instanceof Hop.When.FirstWort);
    day.add(Leg.idle("bagOut", member.drainSec));
  }

  /// Who sees the boil stop turns the duty up: no member boils below what rolls.
  private void boil(List<Action> day, Lots lots, double dutyFrac) {
    // With the lid on: an open kettle on a small element may never boil.
    day.add(
        new Leg(
            "boilReached",
            new Leg.Drive.ByHand(1),
            Leg.Pump.OFF,
            true,
            false,
            false,
            false,
            new Leg.Until.Boils(),
            MOST_HEATING_SEC));
    double boilSec = recipe.boil().holdSec().inside();
    List<Integer> order = new ArrayList<>();
    List<Hop> hops = recipe.hops();
    for (int i = 0; i < hops.size(); i++) {
      if (hops.get(i).when() instanceof Hop.When.InBoil) {
        order.add(i);
      }
    }
    order.sort(Comparator.comparingDouble((Integer i) -> -leftSec(i)));
    double leftSec = boilSec;
    boolean sweetened = recipe.grist().stream().noneMatch(BrewDay::sweetens);
    for (int i : order) {
      double atLeftSec = Math.min(leftSec, leftSec(i));
      if (!sweetened && atLeftSec < EXTRACT_LEFT_SEC) {
        leftSec = sweetenedLeftSec(day, lots, leftSec, dutyFrac);
        atLeftSec = Math.min(leftSec, atLeftSec);
        sweetened = true;
      }
      day.add(boiling("hop." + i, leftSec - atLeftSec, dutyFrac));
      leftSec = atLeftSec;
      day.add(hop(i, lots));
    }
    if (!sweetened) {
      leftSec = sweetenedLeftSec(day, lots, leftSec, dutyFrac);
    }
    day.add(boiling("flameOut", leftSec, dutyFrac));
    addHops(day, lots, when -> when instanceof Hop.When.FlameOut);
  }

  /// By its use and not by a member's extract, which may be drawn as nothing.
  private static boolean sweetens(Goods line) {
    return !line.kind().mashed() && line.use() == Goods.Use.BOIL && line.massKg().inside() > 0;
  }

  /// Sugar and extract go in ten minutes before the end, or at once when less is left.
  private double sweetenedLeftSec(List<Action> day, Lots lots, double leftSec, double dutyFrac) {
    double atLeftSec = Math.min(leftSec, EXTRACT_LEFT_SEC);
    day.add(boiling("sugarIn", leftSec - atLeftSec, dutyFrac));
    day.add(new Action.AddExtract(lots.kettleExtractKg, lots.kettleWaterKg, 0.95));
    return atLeftSec;
  }

  private double leftSec(int hop) {
    return recipe.hops().get(hop).when() instanceof Hop.When.InBoil boil
        ? boil.leftSec().inside()
        : 0;
  }

  private void afterBoil(List<Action> day, Member member, Lots lots) {
    List<Stand> stands = recipe.stands();
    for (int i = 0; i < stands.size(); i++) {
      stand(day, member, lots, i);
    }
    day.add(byHand("knockOut", 0, Leg.Pump.OFF, new Leg.Until.After(KNOCK_OUT_SEC)));
    double pitchC = recipe.yeast().pitchC().inside();
    boolean onePass =
        member.chiller == Chiller.Kind.COUNTERFLOW || member.chiller == Chiller.Kind.PLATE;
    if (!onePass) {
      boolean coil = member.chiller == Chiller.Kind.IMMERSION;
      double leastC = (coil ? member.tapC : member.roomC) + ABOVE_TAP_K;
      day.add(cooling("chilled", coil, coil, Math.max(pitchC, leastC)));
    }
    day.add(
        new Leg(
            "cast",
            new Leg.Drive.ByHand(0),
            Leg.Pump.OFF,
            false,
            false,
            onePass,
            true,
            new Leg.Until.RunOff(),
            MOST_HEATING_SEC));
  }

  private void stand(List<Action> day, Member member, Lots lots, int number) {
    Stand stand = recipe.stands().get(number);
    double targetC = stand.targetC().inside();
    boolean cooled = cooled(stand);
    if (cooled) {
      boolean chilled = member.chiller != Chiller.Kind.NONE;
      day.add(cooling("standAt." + number, chilled, member.hasPump, targetC));
    }
    addHops(day, lots, when -> when instanceof Hop.When.AtStand at && at.standNumber() == number);
    double holdSec = stand.holdSec().inside();
    Leg.Drive drive =
        cooled && member.hasPump ? new Leg.Drive.Automatic(targetC) : new Leg.Drive.ByHand(0);
    day.add(
        new Leg(
            "stood." + number,
            drive,
            member.hasPump ? Leg.Pump.WHIRLPOOL : Leg.Pump.OFF,
            false,
            false,
            false,
            false,
            new Leg.Until.After(holdSec),
            holdSec));
  }

  /// Whether the wort is cooled to a stand or left as it comes from the boil. Every day of a plan
  /// goes the same way, whatever its weather: the brewer decides before.
  public boolean cooled(Stand stand) {
    return stand.targetC().inside() < rig.site().waterBoilsC() - NEAR_BOIL_K;
  }

  private void addHops(List<Action> day, Lots lots, java.util.function.Predicate<Hop.When> wanted) {
    List<Hop> hops = recipe.hops();
    for (int i = 0; i < hops.size(); i++) {
      if (wanted.test(hops.get(i).when())) {
        day.add(hop(i, lots));
      }
    }
  }

  private Action hop(int number, Lots lots) {
    Hop hop = recipe.hops().get(number);
    return new Action.AddHops(number, lots.alphaMg[number], lots.heldKg(hop, settings.hopFactor()));
  }

  /// Whether the recipe boils under the lid.
  boolean lidOn() {
    return recipe.boil().lid() == Boil.Lid.ON;
  }

  private Leg boiling(String key, double holdSec, double dutyFrac) {
    Leg open = byHand(key, dutyFrac, Leg.Pump.OFF, new Leg.Until.After(holdSec));
    return open.switched(open.drive(), open.pump(), lidOn());
  }

  private static Leg automatic(String key, double setC, Leg.Until until, double mostSec) {
    return new Leg(
        key,
        new Leg.Drive.Automatic(setC),
        Leg.Pump.MASH,
        true,
        false,
        false,
        false,
        until,
        mostSec);
  }

  private static Leg byHand(String key, double dutyFrac, Leg.Pump pump, Leg.Until until) {
    return new Leg(
        key,
        new Leg.Drive.ByHand(dutyFrac),
        pump,
        false,
        false,
        false,
        false,
        until,
        MOST_HEATING_SEC);
  }

  private static Leg cooling(String key, boolean chilling, boolean moving, double toC) {
    return new Leg(
        key,
        new Leg.Drive.ByHand(0),
        moving ? Leg.Pump.WHIRLPOOL : Leg.Pump.OFF,
        !chilling,
        false,
        chilling,
        false,
        new Leg.Until.CooledTo(toC),
        MOST_COOLING_SEC);
  }
}
