package gylebook.estimate;

import gylebook.rig.Parameter;
import gylebook.rig.Probe;
import gylebook.rig.Rig;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Change;
import gylebook.simulate.Leg;
import gylebook.simulate.Sight;
import gylebook.simulate.Twins;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/// A brew under way whose truth nobody is shown: a rig of another geometry than the one believed
/// in, instruments with errors of their own, and perhaps one thing that goes wrong. For practice
/// and for judging; the same seed gives the same day.
///
/// Somebody acts: a leg that could end goes on until they say it is [#done].
@AnyUnit("instruments show temperatures, volumes, strengths and shares")
public final class HiddenDay {
  /// The controller's output, as a share of the element's power.
  public static final String DUTY = "duty";

  private static final String CHIP = "bag chip";
  private static final String DIAL = "dial";
  private static final double DIAL_HIGH_K = 4.2;
  private static final double DIAL_DOUBT_K = 0.7;
  private static final double DIAL_NOISE_K = 0.5;
  private static final double HAND_DOUBT_K = 0.5;

  // When in the first rest something breaks, and when it is as before (assumed: long enough to
  // see, short enough to save the day).
  private static final double BREAKS_SEC = 600;
  private static final double MENDED_SEC = 1800;

  /// A relay that stays off makes the controller ask for more and more; so much after a while.
  private static final double ASKED_FRAC = 0.3;

  private final Twins truth;
  private final Traits real;
  private final List<Instrument> kit;
  private final RandomGenerator random;
  private final Supposition wrong;
  private final List<Secret> secrets;
  private Switched hand = Switched.asPlanned();
  private boolean ready;
  private double dutyFrac;

  /// One thing that was hidden: how many times what was believed it really was.
  ///
  /// @param what in words
  public record Secret(String what, double timesRatio) {}

  /// A day as it was planned, on a rig that is otherwise.
  ///
  /// @param wrong what goes wrong beside that
  public HiddenDay(BrewDay planned, Supposition wrong, long seed) {
    this(planned, kit(planned.rig()), wrong, seed);
  }

  /// The same with these instruments; without a dial none can be off.
  public HiddenDay(BrewDay planned, List<Instrument> kit, Supposition wrong, long seed) {
    this.random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    boolean dialled = wrong != Supposition.DIAL_OFF || kit.stream().anyMatch(HiddenDay::dial);
    this.wrong = dialled ? wrong : Supposition.NOTHING;
    this.kit = List.copyOf(kit);
    Rig hidden = HiddenRig.of(planned.rig(), random);
    BrewDay day = new BrewDay(planned.recipe(), hidden, planned.settings());
    BrewDay real = really(day, this.wrong);
    this.secrets = secrets(planned.rig(), hidden);
    this.truth = Twins.atStart(real, Traits.gauges(kit), seed, 1);
    this.real = Traits.drawn(kit, seed, 1);
  }

  private static BrewDay really(BrewDay day, Supposition wrong) {
    return switch (wrong) {
      case HEIGHT_WRONG -> Supposition.elsewhere(day);
      case PROBE_DRY -> Supposition.dry(day);
      case NOTHING, PUMP_OFF, HEATER_STUCK_ON, HEATER_DEAD, LID_OTHERWISE, DIAL_OFF -> day;
    };
  }

  /// One of the suppositions, or none, by the seed.
  public static Supposition chanced(long seed) {
    Supposition[] all = Supposition.values();
    RandomGenerator dice = RandomGeneratorFactory.of("L64X128MixRandom").create(~seed);
    return all[dice.nextInt(all.length)];
  }

  private static List<Instrument> kit(Rig rig) {
    List<Instrument> kit = new ArrayList<>();
    rig.probes().stream().filter(Probe::steers).map(Instrument::of).forEach(kit::add);
    kit.add(
        Instrument.of(
            new Probe(
                CHIP,
                Probe.Kind.DIGITAL_CHIP,
                Probe.Place.BED,
                Parameter.assumedPositive(40, 0.3, "a chip in a thick sheath"),
                Parameter.assumed(0, 0.3, "a chip of the better sort"),
                false)));
    kit.add(
        Instrument.of(
            new Probe(
                DIAL,
                Probe.Kind.DIAL,
                Probe.Place.KETTLE,
                Parameter.assumedPositive(25, 0.3, "dial"),
                Parameter.assumed(0, DIAL_DOUBT_K, "its screw"),
                false)));
    kit.add(Instrument.handHeld("hand-held", HAND_DOUBT_K));
    kit.add(Instrument.dipStick());
    kit.add(Instrument.hydrometer());
    return kit;
  }

  /// Whether a thermometer stays in its place and is read by eye.
  private static boolean dial(Instrument one) {
    return one.role() == Instrument.Role.STAYS
        && one.measures() == Instrument.Measures.TEMPERATURE
        && one.noise() >= DIAL_NOISE_K;
  }

  private static List<Secret> secrets(Rig told, Rig real) {
    List<Secret> secrets = new ArrayList<>();
    secrets.add(secret("the kettle's width", told, real, rig -> rig.kettle().diameterM()));
    secrets.add(secret("its steel", told, real, rig -> rig.kettle().steelKg()));
    secrets.add(
        secret("heat lost through its wall", told, real, rig -> rig.kettle().wallWPerM2K()));
    secrets.add(secret("heat lost with the lid on", told, real, r -> r.kettle().lidOnWPerM2K()));
    secrets.add(secret("wort that the bed holds", told, real, rig -> rig.bag().bedKgPerKg()));
    secrets.add(secret("length of the hose", told, real, rig -> rig.loop().hoseM()));
    return secrets;
  }

  private static Secret secret(
      String what, Rig told, Rig real, Function<Rig, Parameter> parameter) {
    double believed = parameter.apply(told).value();
    return new Secret(what, believed == 0 ? 1 : parameter.apply(real).value() / believed);
  }

  /// Instruments that send by themselves; what each shows comes from [#shown].
  public List<String> sending() {
    List<String> sending = new ArrayList<>();
    for (Instrument one : kit) {
      if (one.role() != Instrument.Role.CARRIED && !dial(one)) {
        sending.add(one.name());
      }
    }
    sending.add(DUTY);
    return List.copyOf(sending);
  }

  /// Instruments that somebody has to read: by eye or by going there.
  public List<Instrument> byEye() {
    List<String> sending = sending();
    return kit.stream().filter(one -> !sending.contains(one.name())).toList();
  }

  /// Time since the day began.
  public double clockSec() {
    return truth.clockSec();
  }

  /// The milestone that the brewer works towards.
  public String leg() {
    return truth.leg().key();
  }

  /// Whether the day goes on.
  public boolean underWay() {
    return truth.underWay();
  }

  /// Whether what the leg waits for has come.
  public boolean ready() {
    return ready;
  }

  /// What somebody switches by hand from now on; the rest is as planned.
  public void switchTo(Switched switched) {
    hand = switched;
  }

  /// Lets time pass, at most until what the leg waits for comes; whether it has come.
  public boolean pass(double toSec) {
    double fromSec = truth.clockSec();
    double dutyBeforeSec = truth.sees(Sight.DUTY_SEC)[0];
    if (ready) {
      truth.advance(toSec, this::really);
    } else {
      ready = truth.live(toSec, this::really);
    }
    double passedSec = truth.clockSec() - fromSec;
    // A leg that is given up waits for nothing any more: somebody has to decide.
    ready = ready || passedSec <= 0;
    if (passedSec > 0) {
      dutyFrac = Math.clamp((truth.sees(Sight.DUTY_SEC)[0] - dutyBeforeSec) / passedSec, 0.0, 1.0);
    }
    return ready;
  }

  /// Somebody has done what ends the leg.
  public void done() {
    truth.ended();
    ready = false;
  }

  /// Something is done otherwise than planned; false when it is too late for that.
  public boolean change(Change change) {
    boolean can =
        switch (change) {
          case Change.Lasts(String key, _) -> liesAhead(key);
          case Change.HopsTimes _ -> true;
          case Change.Deed deed -> deed.after().isEmpty() || liesAhead(deed.after());
        };
    if (can) {
      truth.change(change);
      ready = false;
    }
    return can;
  }

  private boolean liesAhead(String key) {
    return truth.left().stream()
        .anyMatch(action -> action instanceof Leg each && each.key().equals(key));
  }

  /// What is wrong just now; breakages come in the first rest and are mended.
  private Supposition nowWrong() {
    double inLegSec = truth.clockSec() - truth.legFromSec();
    boolean breaks = leg().equals("rest.0") && inLegSec >= BREAKS_SEC && inLegSec < MENDED_SEC;
    return switch (wrong) {
      case PUMP_OFF, HEATER_STUCK_ON, HEATER_DEAD -> breaks ? wrong : Supposition.NOTHING;
      case LID_OTHERWISE -> leg().startsWith("rest") ? wrong : Supposition.NOTHING;
      case NOTHING, HEIGHT_WRONG, DIAL_OFF, PROBE_DRY -> wrong;
    };
  }

  /// What is really switched on: what the brewer switched, less what is broken.
  private Leg really(Leg planned) {
    Leg leg = hand.apply(planned);
    return switch (nowWrong()) {
      case PUMP_OFF -> leg.switched(leg.drive(), Leg.Pump.OFF, leg.lidOn());
      case HEATER_STUCK_ON -> leg.switched(new Leg.Drive.ByHand(1), leg.pump(), leg.lidOn());
      case HEATER_DEAD -> leg.switched(new Leg.Drive.ByHand(0), leg.pump(), leg.lidOn());
      case LID_OTHERWISE -> leg.switched(leg.drive(), leg.pump(), !leg.lidOn());
      case NOTHING, HEIGHT_WRONG, DIAL_OFF, PROBE_DRY -> leg;
    };
  }

  /// What an instrument shows now, errors and scatter included: C, L, Plato, or a share.
  public double shown(String name) {
    if (name.equals(DUTY)) {
      return toldFrac();
    }
    Instrument one = real.named(name);
    boolean carriedIntoBag = one.role() == Instrument.Role.CARRIED && leg().startsWith("rest");
    Probe.Place place = carriedIntoBag ? Probe.Place.BED : one.place();
    double high = dial(one) && wrong == Supposition.DIAL_OFF ? DIAL_HIGH_K : 0;
    return real.expected(truth, name, place, true)[0] + high + one.noise() * random.nextGaussian();
  }

  /// The controller says what it asks for, not what a broken relay gives.
  private double toldFrac() {
    return switch (nowWrong()) {
      case HEATER_STUCK_ON -> 0;
      case HEATER_DEAD -> ASKED_FRAC;
      case NOTHING, PUMP_OFF, LID_OTHERWISE, HEIGHT_WRONG, DIAL_OFF, PROBE_DRY -> dutyFrac;
    };
  }

  /// What went wrong; for afterwards.
  public Supposition wrong() {
    return wrong;
  }

  /// What else was hidden; for afterwards.
  public List<Secret> secrets() {
    return List.copyOf(secrets);
  }

  /// What the grain, or the wort where it is out, really has; for afterwards and for tests.
  public double grainC() {
    return truth.sees(Sight.GRAIN_C)[0];
  }
}
