package gylebook.simulate;

import gylebook.rig.Bag;
import gylebook.rig.Chiller;
import gylebook.rig.Controller;
import gylebook.rig.Element;
import gylebook.rig.Kettle;
import gylebook.rig.Loop;
import gylebook.rig.Parameter;
import gylebook.rig.Probe;
import gylebook.rig.Rig;
import gylebook.rig.Site;
import gylebook.rig.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// The reference case of the rig's state-space model: fixed numbers of an invented rig, against
/// which every implementation of the model can be held. No measurement.
final class ReferenceBrew {
  static final double PRESSURE_KPA = 93.87;

  private ReferenceBrew() {}

  private static Parameter exact(double value) {
    return Parameter.exact(value);
  }

  static Rig rig() {
    Site site =
        new Site(
            exact(640),
            Optional.of(exact(PRESSURE_KPA)),
            exact(20),
            exact(0.5),
            exact(15),
            exact(20));
    // 0.62 m2 of wetted wall with the floor: the height that gives it.
    Kettle kettle =
        new Kettle(
            exact(0.42),
            exact(0.36489),
            exact(9),
            exact(500),
            exact(6),
            exact(350),
            exact(6.5),
            exact(11),
            exact(0.06),
            exact(1),
            exact(0),
            exact(0.04));
    Element element =
        new Element(exact(5500), exact(240), exact(240), exact(0.08), exact(0.03), exact(30));
    Bag bag =
        new Bag(
            exact(0.3793),
            exact(0.09),
            exact(2e-10),
            exact(0.5),
            exact(0.5),
            exact(30),
            exact(2.2),
            exact(0.04),
            exact(0.70));
    Loop loop =
        new Loop(
            true,
            exact(2),
            exact(0.0127),
            exact(0.01905),
            exact(1.3),
            exact(4.0 / 60),
            exact(8.0 / 60),
            exact(0.2),
            exact(0.1),
            exact(1));
    Probe probe =
        new Probe("suction", Probe.Kind.PT100, Probe.Place.SUCTION, exact(10), exact(0), true);
    Controller controller = new Controller(exact(0.30), exact(320), exact(60));
    Chiller chiller =
        new Chiller(
            Chiller.Kind.COUNTERFLOW,
            exact(8e-5),
            exact(8e-5),
            exact(5.0 / 60),
            exact(10.0 / 60),
            exact(0));
    Working working =
        new Working(
            exact(0),
            exact(360),
            exact(600),
            true,
            exact(1),
            exact(0),
            exact(60),
            exact(1),
            exact(19),
            exact(0.5),
            true);
    return new Rig(
        "reference",
        true,
        site,
        kettle,
        element,
        bag,
        loop,
        List.of(probe),
        controller,
        chiller,
        working);
  }

  static List<Action> day() {
    List<Action> day = new ArrayList<>();
    day.add(new Action.Mark("liquorIn"));
    day.add(automatic("strikeReady", 70.0, new Leg.Until.Reads(69.6)));
    day.add(new Action.DoughIn(7.0, 0, 0.78, 20, 0));
    day.add(Leg.idle("doughedIn", 360));
    day.add(automatic("halfMash", 66.0, new Leg.Until.After(37.5 * 60)));
    day.add(automatic("mashDone", 66.0, new Leg.Until.After(37.5 * 60)));
    day.add(new Action.BagOut(0.5));
    day.add(Leg.idle("bagOut", 600));
    day.add(byHand("boilReached", 1.0, Leg.Pump.OFF, new Leg.Until.Boils()));
    day.add(byHand("boilDone", 0.6, Leg.Pump.OFF, new Leg.Until.After(3600)));
    day.add(byHand("stood", 0, Leg.Pump.WHIRLPOOL, new Leg.Until.After(900)));
    return day;
  }

  static Leg automatic(String key, double setC, Leg.Until until) {
    return new Leg(
        key,
        new Leg.Drive.Automatic(setC),
        Leg.Pump.MASH,
        true,
        false,
        false,
        false,
        until,
        4 * 3600);
  }

  static Leg byHand(String key, double dutyFrac, Leg.Pump pump, Leg.Until until) {
    return new Leg(
        key, new Leg.Drive.ByHand(dutyFrac), pump, false, false, false, false, until, 4 * 3600);
  }

  static BrewState start() {
    BrewState state = new BrewState();
    Deeds.fill(state, 40.0 / 0.998203, 15);
    return state;
  }

  static Member member() {
    Member member = new Member();
    Doubts doubts = new Doubts(1);
    doubts.turnTo(-1);
    member.read(rig(), doubts);
    return member;
  }
}
