package gylebook.terminal;

import gylebook.estimate.HiddenDay;
import gylebook.estimate.Instrument;
import gylebook.estimate.Switched;
import gylebook.plan.Milestone;
import gylebook.plan.Plan;
import gylebook.simulate.Change;
import gylebook.telling.Shown;
import gylebook.units.AnyUnit;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import java.io.IOException;
import java.io.PrintWriter;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/// Plays a hidden day: lets time pass, sends what the instruments show, and does what somebody
/// says; by itself it follows the plan.
@AnyUnit("instruments show temperatures, volumes, strengths and shares")
final class Rehearsing {
  private static final double PERCENT = 100;

  // How long somebody takes to see that a thing is ready and to do it (assumed).
  private static final double SLOWEST_SEC = 60;

  private static final Map<String, String> WORDS =
      Map.of(
          "settled", "let the malt settle",
          "boilReached", "heat to the boil",
          "flameOut", "boil to the end",
          "knockOut", "couple the hoses",
          "chilled", "chill",
          "cast", "run off into the fermenter");

  private final HiddenDay day;
  private final Plan plan;
  private final Glitches glitches;
  private final List<Outlet> outlets;
  private final Shown shown;
  private final ReadingUnits units;
  private final PrintWriter out;
  private final InstantSource clock;
  private final RandomGenerator dice;
  private final Optional<RehearsedDay> noted;
  private final Map<String, Double> lastSent = new LinkedHashMap<>();
  private Switched hand = Switched.asPlanned();
  private boolean toldReady;
  private boolean byItself;
  private double actsSec = Double.POSITIVE_INFINITY;

  Rehearsing(
      HiddenDay day,
      Plan plan,
      Glitches glitches,
      List<Outlet> outlets,
      ReadingUnits units,
      PrintWriter out,
      Beside beside) {
    this.day = day;
    this.plan = plan;
    this.glitches = glitches;
    this.outlets = outlets;
    this.units = units;
    this.shown = new Shown(units);
    this.out = out;
    this.clock = beside.clock();
    this.noted = beside.noted();
    this.dice = RandomGeneratorFactory.of("L64X128MixRandom").create(beside.seed());
  }

  /// What is not decided here: the wall clock, the dice, and the day it may be noted on.
  record Beside(InstantSource clock, long seed, Optional<RehearsedDay> noted) {}

  /// Says what is to be done first.
  void begin() {
    tell("liquorIn");
    next();
  }

  boolean underWay() {
    return day.underWay();
  }

  /// Lets some time pass and sends what the instruments show at its end.
  void pass(double forSec, boolean followsPlan) throws IOException {
    byItself = followsPlan;
    boolean ready = noted.isEmpty() ? day.pass(day.clockSec() + forSec) : toNow();
    send();
    if (ready && !toldReady) {
      toldReady = true;
      actsSec = day.clockSec() + SLOWEST_SEC * dice.nextDouble();
      if (!byItself) {
        say(
            noted.isEmpty()
                ? "Ready for it: press Enter when it is done."
                : "Ready for it: note it at the kettle when it is done.");
      }
    }
    if (ready && byItself && day.clockSec() >= actsSec) {
      done();
    }
  }

  /// Brings the hidden rig to the time of the day that it is noted on. As everywhere in the book,
  /// what is timed inside the boil passes by the clock.
  private boolean toNow() {
    double nowSec = noted.map(RehearsedDay::nowSec).orElse(day.clockSec());
    boolean ready = day.ready();
    while (day.underWay() && day.clockSec() < nowSec) {
      ready = day.pass(nowSec);
      if (ready && inBoil(day.leg())) {
        String leg = day.leg();
        end();
        ready = false;
        if (byItself) {
          noted.ifPresent(on -> on.reached(leg, day.clockSec()));
        }
      }
    }
    return ready;
  }

  private static boolean inBoil(String leg) {
    return leg.startsWith("hop.") || leg.equals("sugarIn");
  }

  private void send() throws IOException {
    for (String instrument : day.sending()) {
      boolean duty = instrument.equals(HiddenDay.DUTY);
      double number = day.shown(instrument) * (duty ? PERCENT : 1);
      List<Outlet.Sent> sent = glitches.sent(instrument, number, day.clockSec(), clock.instant());
      for (Outlet outlet : outlets) {
        if (sent.isEmpty()) {
          outlet.silent(instrument);
        }
        for (Outlet.Sent one : sent) {
          outlet.send(one);
        }
      }
      lastSent.put(instrument, number);
    }
  }

  /// What somebody does: a line of the keyboard. False when they have had enough.
  boolean heed(String line) {
    String[] words = line.strip().toLowerCase(Locale.ROOT).split("\\s+", 2);
    String more = words.length > 1 ? words[1] : "";
    switch (words[0]) {
      case "" -> done();
      case "heat" -> heat(more);
      case "pump" -> switched(new Switched(hand.dutyFrac(), on(more), hand.lidOn()));
      case "lid" -> switched(new Switched(hand.dutyFrac(), hand.pumpOn(), on(more)));
      case "read" -> read(more);
      case "look" -> look();
      case "end" -> {
        return false;
      }
      default ->
          say(
              "Enter: done, the next thing. heat 0 to 100, or heat auto; pump on, off or plan; lid"
                  + " on, off or plan; read INSTRUMENT; look; end.");
    }
    return true;
  }

  private void heat(String more) {
    Optional<Double> dutyFrac = Optional.empty();
    if (more.matches("\\d{1,3}") && Integer.parseInt(more) <= PERCENT) {
      dutyFrac = Optional.of(Integer.parseInt(more) / PERCENT);
    }
    switched(new Switched(dutyFrac, hand.pumpOn(), hand.lidOn()));
  }

  private static Optional<Boolean> on(String word) {
    return switch (word) {
      case "on" -> Optional.of(true);
      case "off" -> Optional.of(false);
      default -> Optional.empty();
    };
  }

  private void switched(Switched switched) {
    hand = switched;
    day.switchTo(switched);
    say(
        "Heat "
            + switched
                .dutyFrac()
                .map(frac -> Math.round(frac * PERCENT) + " %")
                .orElse("as planned")
            + ", pump "
            + switched.pumpOn().map(Rehearsing::onOff).orElse("as planned")
            + ", lid "
            + switched.lidOn().map(Rehearsing::onOff).orElse("as planned")
            + ".");
  }

  private static String onOff(boolean on) {
    return on ? "on" : "off";
  }

  private void read(String name) {
    List<Instrument> all = day.byEye();
    all.stream()
        .filter(one -> one.name().equals(name))
        .findFirst()
        .ifPresentOrElse(
            one -> say(one.name() + " shows " + value(one)),
            () ->
                say(
                    "There is no '"
                        + name
                        + "' to read; there are "
                        + String.join(", ", all.stream().map(Instrument::name).toList())
                        + "."));
  }

  private String value(Instrument one) {
    double number = day.shown(one.name());
    return switch (one.measures()) {
      case TEMPERATURE -> units.shown(Quantity.TEMPERATURE, number);
      case HOT_VOLUME -> units.shown(Quantity.VOLUME, number);
      case STRENGTH -> units.shown(Quantity.GRAVITY, number);
    };
  }

  private void look() {
    lastSent.forEach(
        (name, number) ->
            say("%s sends %s".formatted(name, String.format(Locale.ROOT, "%.2f", number))));
  }

  /// Somebody noted that a point is reached; who has reached it has passed all that lies before.
  /// What was switched by hand held for the leg it was switched in.
  void reached(String milestone) {
    List<String> order = plan.forecast().milestones().stream().map(Milestone::key).toList();
    int to = order.indexOf(milestone);
    toNow();
    boolean moved = false;
    while (day.underWay() && order.indexOf(day.leg()) <= to) {
      end();
      moved = true;
    }
    if (moved) {
      hand = Switched.asPlanned();
      day.switchTo(hand);
      next();
    }
  }

  /// The day goes on otherwise.
  void changed(List<Change> changes) {
    toNow();
    for (Change change : changes) {
      say(day.change(change) ? "It is done as the plan was changed." : "It is too late for that.");
    }
  }

  private void end() {
    day.done();
    toldReady = false;
    actsSec = Double.POSITIVE_INFINITY;
  }

  private void done() {
    String leg = day.leg();
    end();
    noted.ifPresent(on -> on.reached(leg, day.clockSec()));
    if (leg.startsWith("rest.") || leg.equals("bagOut") || leg.equals("flameOut")) {
      day.byEye().forEach(one -> say(one.name() + " shows " + value(one)));
    }
    next();
  }

  private void next() {
    if (!day.underWay()) {
      say("The wort is in the fermenter. The day is over.");
      return;
    }
    tell(day.leg());
  }

  /// What leads to a milestone, as the plan has it.
  private void tell(String key) {
    List<Plan.PlannedStep> steps =
        plan.steps().stream().filter(step -> step.milestone().equals(key)).toList();
    if (steps.isEmpty()) {
      say("Next: " + WORDS.getOrDefault(key, key.startsWith("hop.") ? "boil on" : key) + ".");
    }
    for (Plan.PlannedStep step : steps) {
      String figure =
          step.key().isEmpty() ? "" : " " + shown.value(step.key(), step.amountNumber());
      say("Next: " + step.does() + figure + ".");
    }
  }

  private void say(String words) {
    int minutes = (int) (day.clockSec() / 60);
    out.println(String.format(Locale.ROOT, "%d:%02d  %s", minutes / 60, minutes % 60, words));
    out.flush();
  }

  /// Says what nobody was shown.
  void reveal() {
    out.println("What was hidden: " + day.wrong().says());
    for (HiddenDay.Secret secret : day.secrets()) {
      out.println(
          String.format(
              Locale.ROOT,
              "  %s: %.2f times what the rig says",
              secret.what(),
              secret.timesRatio()));
    }
    glitches.told().forEach(words -> out.println("  " + words));
    out.flush();
  }
}
