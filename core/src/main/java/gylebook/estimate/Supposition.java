package gylebook.estimate;

import gylebook.rig.Parameter;
import gylebook.rig.Probe;
import gylebook.rig.Rig;
import gylebook.rig.Site;
import gylebook.rig.Spread;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Leg;
import gylebook.units.Component;
import java.util.List;
import java.util.function.UnaryOperator;

/// What may be wrong with a day beside numbers being a little off.
public enum Supposition {
  /// All is as it was told.
  NOTHING("All is as you told it."),
  /// The pump stands still, so a probe in its suction sits in a dead leg.
  PUMP_OFF("The pump does not run: the probe sits in a dead leg."),
  /// The height above the sea is far from what the rig says.
  HEIGHT_WRONG("The height above the sea, or the pressure, is not what the rig says."),
  /// The heater stays on whatever the controller says.
  HEATER_STUCK_ON("The heater stays on: its relay is stuck."),
  /// The heater stays off whatever the controller says.
  HEATER_DEAD("The heater stays off."),
  /// The lid is off where it was held to be on, or the other way round.
  LID_OTHERWISE("The lid is not where the plan has it."),
  /// A thermometer that is read by eye is far off.
  DIAL_OFF("The dial is off by kelvins."),
  /// The thermometer that steers is as slow as in air, though it still sits where it was.
  PROBE_DRY("The thermometer that steers answers as slowly as in air: it may have fallen dry.");

  /// A supposition must be this much likelier than nothing to lead.
  static final double BAYES_FACTOR = 20;

  // Where the height is wrong, it was most often left at the sea (assumed).
  private static final double HEIGHT_MORE_M = 600;
  private static final double HEIGHT_DOUBT_RATIO = 0.5;
  private static final double DIAL_DOUBT_K = 4;
  private static final double DIAL_NOISE_K = 0.5;
  // A sheathed Pt100 of 6 mm takes 4.5 (half a step) to 5.2 times (nine tenths) as long in air as
  // in moving water (a maker's table, see SensorLag).
  private static final double DRY_LAG_RATIO = 4.8;

  private final String says;

  Supposition(String says) {
    this.says = says;
  }

  /// The same in words.
  public String says() {
    return says;
  }

  /// What it was worth before any reading.
  double priorNumber() {
    return this == NOTHING ? 1 : 1 / BAYES_FACTOR;
  }

  /// Whether it may begin at any moment and be put right again; the others hold for the day.
  public boolean passes() {
    return switch (this) {
      case PUMP_OFF, HEATER_STUCK_ON, HEATER_DEAD, LID_OTHERWISE, PROBE_DRY -> true;
      case NOTHING, HEIGHT_WRONG, DIAL_OFF -> false;
    };
  }

  /// A belief that holds it.
  Belief held(Belief belief) {
    BrewDay day = belief.twins().day();
    List<Instrument> instruments = belief.instruments();
    UnaryOperator<Leg> same = leg -> leg;
    return switch (this) {
      case NOTHING -> belief.supposing(day, instruments, same);
      case PUMP_OFF ->
          belief.supposing(
              day, instruments, leg -> leg.switched(leg.drive(), Leg.Pump.OFF, leg.lidOn()));
      case HEIGHT_WRONG -> belief.supposing(elsewhere(day), instruments, same);
      case HEATER_STUCK_ON -> belief.supposing(day, instruments, leg -> driven(leg, 1));
      case HEATER_DEAD -> belief.supposing(day, instruments, leg -> driven(leg, 0));
      case LID_OTHERWISE ->
          belief.supposing(
              day, instruments, leg -> leg.switched(leg.drive(), leg.pump(), !leg.lidOn()));
      case PROBE_DRY -> belief.supposing(dry(day), instruments, same);
      case DIAL_OFF -> belief.supposing(day, farOff(instruments), same);
    };
  }

  private static Leg driven(Leg leg, double dutyFrac) {
    return leg.switched(new Leg.Drive.ByHand(dutyFrac), leg.pump(), leg.lidOn());
  }

  /// The same day with a steering thermometer that is as slow as in air.
  static BrewDay dry(BrewDay day) {
    List<Probe> probes =
        day.rig().probes().stream().map(one -> one.steers() ? dry(one) : one).toList();
    return new BrewDay(day.recipe(), Component.with(day.rig(), "probes", probes), day.settings());
  }

  private static Probe dry(Probe probe) {
    Parameter lag = probe.lagSec();
    Parameter slow =
        new Parameter(
            lag.value() * DRY_LAG_RATIO,
            lag.doubt() * (lag.spread() == Spread.NORMAL ? DRY_LAG_RATIO : 1),
            lag.spread(),
            lag.origin(),
            "supposed to have fallen dry",
            "");
    return Component.with(probe, "lagSec", slow);
  }

  static BrewDay elsewhere(BrewDay day) {
    Rig rig = day.rig();
    Site site = rig.site();
    Parameter told = site.altitudeM();
    Parameter height =
        Parameter.assumedPositive(
            Math.max(0, told.value()) + HEIGHT_MORE_M, HEIGHT_DOUBT_RATIO, "supposed to be wrong");
    Site other =
        new Site(
            height,
            site.stationKpa(),
            site.roomC(),
            site.roomHumidityFrac(),
            site.tapC(),
            site.goodsC());
    Rig moved =
        new Rig(
            rig.name(),
            rig.invented(),
            other,
            rig.kettle(),
            rig.element(),
            rig.bag(),
            rig.loop(),
            rig.probes(),
            rig.controller(),
            rig.chiller(),
            rig.working());
    return new BrewDay(day.recipe(), moved, day.settings());
  }

  /// The same instruments, where a dial may be off by kelvins.
  static List<Instrument> farOff(List<Instrument> instruments) {
    return instruments.stream().map(Supposition::farOff).toList();
  }

  private static Instrument farOff(Instrument instrument) {
    boolean dial =
        instrument.measures() == Instrument.Measures.TEMPERATURE
            && instrument.role() == Instrument.Role.STAYS
            && instrument.noise() >= DIAL_NOISE_K;
    return dial
        ? instrument.withBias(Parameter.assumed(0, DIAL_DOUBT_K, "supposed to be off"))
        : instrument;
  }
}
