package gylebook.terminal;

import gylebook.brewday.Follower;
import gylebook.estimate.HiddenDay;
import gylebook.estimate.Supposition;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Change;
import gylebook.units.AnyUnit;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/// `rehearse RECIPE` plays a brew day on a rig that is not quite the one believed in, with
/// instruments that really send: to a broker, as a controller, to a running Gylebook.
///
/// Code 0: the day was played; 1: it cannot be brewed; 2: bad input or a wire that broke, with a
/// sentence on the error writer.
@Command(
    name = "rehearse",
    mixinStandardHelpOptions = true,
    description = {
      "Plays a brew day on a hidden rig, for practice. Instruments send as real ones do; you act by"
          + " the keyboard (Enter: done; ? for the rest) or let it follow the plan.",
      "Nothing is heated: it is a simulation."
    })
@AnyUnit("the pace has no unit")
public final class RehearseCommand implements Callable<Integer> {
  private static final int PLAYED = 0;
  private static final int IMPOSSIBLE = 1;
  private static final int REFUSED = 2;
  private static final int PLANNED_DAYS = 100;

  /// An instrument that sends faster than this per second of the wall clock is thinned anyway.
  private static final double SENDS_PER_SEC = 4;

  private static final double STEP_LEAST_SEC = 5;
  private static final double STEP_MOST_SEC = 60;

  private final PlanSources sources;
  private final BlockingQueue<Deed> deeds = new LinkedBlockingQueue<>();
  private final Optional<InputStream> keys;
  private final Optional<RehearsedDay> noted;

  /// What somebody does; false when they have had enough.
  private interface Deed {
    boolean in(Rehearsing rehearsing);
  }

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "RECIPE",
      description = "A recipe file, or demo or demo-wheat (default: demo).")
  private String recipe = "demo";

  @Option(
      names = "--rig",
      paramLabel = "RIG",
      description = "A rig file, or household or flat (default: household).")
  private String rig = "household";

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Seed of everything hidden (default: drawn from the clock, and printed).")
  private @Nullable Long seed;

  @Option(
      names = "--wrong",
      paramLabel = "WHAT",
      description = "What goes wrong: ${COMPLETION-CANDIDATES} (default: by the seed).")
  private @Nullable Supposition wrong;

  @Option(names = "--no-glitches", description = "The wires of the instruments are sound.")
  private boolean noGlitches;

  @Option(
      names = "--pace",
      paramLabel = "TIMES",
      description = "How many times faster than life (default ${DEFAULT-VALUE}).")
  private double paceFactor = 1;

  @Option(names = "--by-itself", description = "Follow the plan; nobody has to act.")
  private boolean byItself;

  @Option(names = "--mqtt", paramLabel = "HOST:PORT", description = "Publish to this broker.")
  private @Nullable String mqtt;

  @Option(names = "--modbus", paramLabel = "PORT", description = "Be a Modbus TCP controller.")
  private @Nullable Integer modbus;

  @Option(
      names = "--to",
      paramLabel = "ADDRESS",
      description = "Post to the Gylebook that runs there: http://127.0.0.1:8484")
  private @Nullable String to;

  @Option(
      names = "--token",
      paramLabel = "INSTRUMENT=TOKEN",
      description = "Token of an instrument that is tied there; may be repeated.")
  private Map<String, String> tokens = new LinkedHashMap<>();

  @Option(
      names = "--tie",
      description =
          "Tie the instruments in the Gylebook given by --to, spread over the wires; loose them at"
              + " the end.")
  private boolean tie;

  @Option(
      names = "--note",
      paramLabel = "GYLE",
      description = {
        "Have the Gylebook given by --to play the plan of this gyle (as in the address of its page)",
        "and note it on a practice day of its book; what you type is noted there and done."
      })
  private @Nullable String note;

  @Option(
      names = "--units",
      paramLabel = "SET",
      description = "Read in ${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).")
  private ReadingSet units = ReadingSet.metric;

  @Spec private @Nullable CommandSpec spec;

  /// A rehearsal by this keyboard.
  public RehearseCommand(PlanSources sources, InputStream keys) {
    this.sources = sources;
    this.keys = Optional.of(keys);
    this.noted = Optional.empty();
  }

  /// A rehearsal by what [#act] is told.
  public RehearseCommand(PlanSources sources) {
    this.sources = sources;
    this.keys = Optional.empty();
    this.noted = Optional.empty();
  }

  /// A rehearsal for a day of the book, by what is noted on it.
  public RehearseCommand(PlanSources sources, RehearsedDay noted) {
    this.sources = sources;
    this.keys = Optional.empty();
    this.noted = Optional.of(noted);
  }

  /// What somebody does, as if they had typed it.
  public void act(String line) {
    deeds.add(rehearsing -> rehearsing.heed(line));
  }

  /// It was noted that a point of the day is reached: whoever notes it has done what it takes.
  public void reached(String milestone) {
    deeds.add(
        rehearsing -> {
          rehearsing.reached(milestone);
          return true;
        });
  }

  /// It was noted that the day goes on otherwise.
  public void changed(List<Change> changes) {
    deeds.add(
        rehearsing -> {
          rehearsing.changed(changes);
          return true;
        });
  }

  @Override
  public Integer call() {
    var line = Objects.requireNonNull(spec, "picocli sets spec").commandLine();
    PrintWriter out = line.getOut();
    try {
      check();
      if (note != null) {
        return playNoted(note, out);
      }
      Rig on = sources.rig(rig);
      var wanted = sources.recipe(recipe).recipe();
      long drawn =
          Optional.ofNullable(seed).orElseGet(() -> InstantSource.system().millis() % 1_000_000);
      Optional<Plan> found = plan(wanted, on);
      if (found.isEmpty()) {
        line.getErr().println("It cannot be brewed as wanted; 'plan' says what stands in the way.");
        line.getErr().flush();
        return IMPOSSIBLE;
      }
      out.println("Rehearsal " + drawn + " (play it again with --seed " + drawn + ").");
      Plan plan = found.get();
      play(plan, Planner.day(wanted, on, plan.settings()), drawn, out);
      return PLAYED;
    } catch (PlanSources.Unreadable unreadable) {
      return refused(line.getErr(), unreadable.sentence());
    } catch (IOException | IllegalArgumentException failed) {
      return refused(line.getErr(), String.valueOf(failed.getMessage()));
    }
  }

  /// The plan that is played; that of a day of the book is the one that the day is followed by.
  private Optional<Plan> plan(Recipe wanted, Rig on) {
    int count = noted.map(RehearsedDay::plannedCount).orElse(PLANNED_DAYS);
    long from = noted.map(RehearsedDay::plannedSeed).orElse(Planner.USUAL_SEED);
    return switch (Planner.plan(wanted, on, count, from, () -> false, _ -> {})) {
      case Planned.Feasible(Plan plan) -> Optional.of(plan);
      case Planned.Impossible impossible -> noted.flatMap(_ -> impossible.nearest());
    };
  }

  private int playNoted(String gyle, PrintWriter out) throws IOException {
    Map<String, String> asked = new LinkedHashMap<>();
    asked.put("gyle", gyle);
    asked.put("pace", "" + Math.round(paceFactor));
    asked.put("seed", seed == null ? "" : "" + seed);
    asked.put("acts", byItself ? "itself" : "me");
    asked.put("wires", noGlitches ? "sound" : "");
    BlockingQueue<String> lines = new LinkedBlockingQueue<>();
    keys.ifPresent(from -> Thread.ofVirtual().name("keys").start(() -> listen(from, lines::add)));
    new NotedRehearsal(Objects.requireNonNull(to, "checked"), out).play(asked, lines);
    return PLAYED;
  }

  private static int refused(PrintWriter err, String sentence) {
    err.println(sentence);
    err.flush();
    return REFUSED;
  }

  private void check() {
    if (!(paceFactor > 0) || Double.isInfinite(paceFactor)) {
      throw new IllegalArgumentException(
          "--pace is " + paceFactor + "; it must be finite and above 0.");
    }
    if (to == null && (tie || !tokens.isEmpty())) {
      throw new IllegalArgumentException("--tie and --token belong to --to; say where it runs.");
    }
    if (note != null) {
      checkNoted();
    }
    if (mqtt != null && !mqtt.matches("[^:]+:\\d{1,5}")) {
      throw new IllegalArgumentException("--mqtt is '" + mqtt + "'; it must be HOST:PORT.");
    }
  }

  private void checkNoted() {
    if (to == null) {
      throw new IllegalArgumentException("--note belongs to --to; say where Gylebook runs.");
    }
    boolean own = mqtt != null || modbus != null || tie || !tokens.isEmpty() || wrong != null;
    if (own) {
      throw new IllegalArgumentException(
          "With --note that Gylebook plays the day and ties its instruments itself; leave out"
              + " --mqtt, --modbus, --tie, --token and --wrong.");
    }
    if (paceFactor != Math.rint(paceFactor)) {
      throw new IllegalArgumentException(
          "--pace is " + paceFactor + "; a day that is noted goes at a whole number.");
    }
  }

  private void play(Plan plan, BrewDay planned, long drawn, PrintWriter out) throws IOException {
    Supposition fault = Optional.ofNullable(wrong).orElseGet(() -> HiddenDay.chanced(drawn));
    HiddenDay day =
        noted.isEmpty()
            ? new HiddenDay(planned, fault, drawn)
            : new HiddenDay(planned, Follower.instruments(plan.rig()), fault, drawn);
    Glitches glitches = noGlitches ? Glitches.none() : Glitches.of(drawn, day.sending());
    List<Outlet> outlets = new ArrayList<>();
    try {
      open(outlets, day.sending());
      outlets.forEach(outlet -> out.println("It " + outlet.words() + "."));
      Rehearsing rehearsing =
          new Rehearsing(
              day,
              plan,
              glitches,
              outlets,
              units.units(),
              out,
              new Rehearsing.Beside(InstantSource.system(), drawn, noted));
      rehearsing.begin();
      run(rehearsing);
      rehearsing.reveal();
    } finally {
      outlets.forEach(Outlet::close);
    }
  }

  private void open(List<Outlet> outlets, List<String> instruments) throws IOException {
    if (mqtt != null) {
      int colon = mqtt.lastIndexOf(':');
      int port = Integer.parseInt(mqtt.substring(colon + 1));
      outlets.add(new MqttOutlet(mqtt.substring(0, colon), port));
    }
    if (modbus != null) {
      outlets.add(new ModbusOutlet(modbus, instruments));
    }
    if (to != null) {
      PostOutlet post = new PostOutlet(to, tokens, this::tiedAs);
      outlets.add(post);
      if (tie) {
        for (int i = 0; i < instruments.size(); i++) {
          Outlet by = outlets.get(i % outlets.size());
          post.tie(instruments.get(i), reach(by, instruments.get(i)));
        }
      }
    }
  }

  /// Never the name of an instrument that is really there.
  private String tiedAs(String instrument) {
    return noted.map(day -> day.tiedAs(instrument)).orElse("rehearsal " + instrument);
  }

  /// The fields of the form by which an instrument is reached over a wire.
  private Map<String, String> reach(Outlet by, String instrument) {
    return switch (by) {
      case ModbusOutlet controller ->
          Map.of(
              "kind", "controller",
              "host", "127.0.0.1",
              "port", "" + modbus,
              "address", "" + controller.address(instrument),
              "numberKind", "float32",
              "everySec", "1");
      case MqttOutlet _ -> {
        String broker = Objects.requireNonNull(mqtt, "there is a broker");
        int colon = broker.lastIndexOf(':');
        yield Map.of(
            "kind", "broker",
            "host", broker.substring(0, colon),
            "port", broker.substring(colon + 1),
            "topic", MqttOutlet.topic(instrument));
      }
      default -> Map.of("kind", "post");
    };
  }

  private void run(Rehearsing rehearsing) throws IOException {
    if (!byItself) {
      keys.ifPresent(from -> Thread.ofVirtual().name("keys").start(() -> listen(from, this::act)));
    }
    double stepSec = Math.clamp(paceFactor / SENDS_PER_SEC, STEP_LEAST_SEC, STEP_MOST_SEC);
    long waitMillis = Math.round(1000 * stepSec / paceFactor);
    boolean goesOn = true;
    try {
      while (goesOn && rehearsing.underWay()) {
        Deed deed = deeds.poll(waitMillis, TimeUnit.MILLISECONDS);
        goesOn = deed == null || deed.in(rehearsing);
        if (deed == null) {
          rehearsing.pass(stepSec, byItself);
        }
      }
    } catch (InterruptedException _) {
      Thread.currentThread().interrupt();
    }
  }

  private static void listen(InputStream from, Consumer<String> ear) {
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(from, StandardCharsets.UTF_8))) {
      reader.lines().forEach(ear);
    } catch (IOException _) {
      // The keyboard is gone; the day goes on until it is ended.
    }
  }
}
