package gylebook.terminal;

import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.recipe.Aim;
import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import gylebook.telling.Appointment;
import gylebook.telling.Filled;
import gylebook.telling.Finish;
import gylebook.telling.Letters;
import gylebook.telling.LiquorAnswer;
import gylebook.telling.Report;
import gylebook.telling.WallSheet;
import gylebook.telling.WhyReport;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/// `plan RECIPE` forecasts the brew day: as a report, or as JSON for scripts.
///
/// Code 0: it can be brewed; 1: it cannot, and the report says which limit binds and what can; 2:
/// bad input, with a sentence on the error writer.
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = "Forecasts the brew day of a recipe on a rig.")
public final class PlanCommand implements Callable<Integer> {
  private static final int FEASIBLE = 0;
  private static final int IMPOSSIBLE = 1;
  private static final int REFUSED = 2;
  private static final int MOST_DAYS = 100_000;

  private final PlanSources sources;

  @Parameters(
      index = "0",
      paramLabel = "RECIPE",
      description = "A recipe file, or demo (a copper bitter) or demo-wheat, both invented.")
  private String recipe = "";

  @Option(
      names = "--rig",
      paramLabel = "RIG",
      description = "A rig file, or household or flat, both invented (default: household).")
  private @Nullable String rig;

  @Option(
      names = "--days",
      paramLabel = "N",
      description = "How many days to simulate for the bands (default ${DEFAULT-VALUE}).")
  private int days = Planner.USUAL_DAYS;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Seed of their luck (default ${DEFAULT-VALUE}).")
  private long seed = Planner.USUAL_SEED;

  @Option(names = "--json", description = "Write JSON: see docs/schema/forecast.schema.json.")
  private boolean json;

  @Option(
      names = "--sheet",
      paramLabel = "FILE.html",
      description = "Also write a wall sheet to print and pin up; a file that is there stays.")
  private @Nullable Path sheet;

  @Option(names = "--overwrite", description = "Let --sheet replace a file that is there.")
  private boolean overwrite;

  @Option(
      names = "--done-by",
      paramLabel = "WHEN",
      description =
          "Say when to begin to be done by then: 18:00, 'Saturday 18:00', '2026-12-05 18:00'"
              + " (default: what the recipe says).")
  private @Nullable String doneBy;

  @Option(
      names = "--why",
      description =
          "Also say of each figure by what equation, from what, by what source, and what moves it"
              + " most; --json always does.")
  private boolean why;

  @Mixin private final LiquorAsked liquor = new LiquorAsked();

  @Option(
      names = "--units",
      paramLabel = "SET",
      description = "Read in: ${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).")
  private ReadingSet units = ReadingSet.metric;

  @Spec private @Nullable CommandSpec spec;

  /// Takes recipes and rigs from these sources.
  public PlanCommand(PlanSources sources) {
    this.sources = sources;
  }

  @Override
  public Integer call() {
    var line = Objects.requireNonNull(spec, "picocli sets spec").commandLine();
    PrintWriter out = line.getOut();
    if (days < 1 || days > MOST_DAYS) {
      return refused(line.getErr(), "--days is " + days + "; it must lie between 1 and 100000.");
    }
    if (doneBy != null
        && Appointment.readHour(doneBy) instanceof Filled.Unclear<Appointment> unclear) {
      return refused(line.getErr(), "--done-by: " + unclear.what() + " " + unclear.maybe());
    }
    if (liquor.fault().isPresent()) {
      return refused(line.getErr(), liquor.fault().get());
    }
    if (overwrite && sheet == null) {
      return refused(line.getErr(), "--overwrite belongs to --sheet; there is no sheet to write.");
    }
    if (sheet != null && new NewFile(sheet, overwrite).refusal().isPresent()) {
      return refused(line.getErr(), new NewFile(sheet, overwrite).refusal().orElseThrow());
    }
    try {
      PlanSources.Found found = sources.recipe(recipe);
      Rig on = sources.rig(rigName());
      found.remarks().forEach(remark -> line.getErr().println("Note: " + Letters.plain(remark)));
      line.getErr().flush();
      return planned(found.recipe(), on, out, line.getErr());
    } catch (PlanSources.Unreadable unreadable) {
      return refused(line.getErr(), unreadable.sentence());
    }
  }

  private int planned(Recipe wanted, Rig on, PrintWriter out, PrintWriter err) {
    Optional<LiquorAnswer> treated = liquor.answer(wanted, on, seed, units.units());
    if (!json) {
      treated.ifPresent(answer -> out.println(answer.text()));
      out.flush();
    }
    Recipe brewed = treated.map(LiquorAnswer::recipe).orElse(wanted);
    Planned planned = Planner.plan(brewed, on, days, seed, () -> false, _ -> {});
    Recipe asked = asked(brewed);
    out.print(json ? PlanJson.of(planned, treated, asked) : Report.text(planned, units.units()));
    String says = Finish.says(planned, asked);
    if (!json && !says.isEmpty()) {
      out.println(says);
    }
    if (why && !json && planned instanceof Planned.Feasible(Plan plan)) {
      out.print("\n" + WhyReport.text(plan.forecast(), units.units()));
    }
    out.flush();
    if (!(planned instanceof Planned.Feasible(Plan plan))) {
      if (sheet != null) {
        err.println("No sheet was written: it cannot be brewed as wanted.");
        err.flush();
      }
      return IMPOSSIBLE;
    }
    return sheet == null ? FEASIBLE : pinned(plan, sheet, err);
  }

  /// The recipe with the end of the day that was asked for.
  private Recipe asked(Recipe recipe) {
    Aim aim = recipe.aim();
    return recipe.withAim(aim.withDoneBy(Objects.requireNonNullElse(doneBy, aim.doneBy())));
  }

  private int pinned(Plan plan, Path to, PrintWriter err) {
    String page = WallSheet.html(plan, units.units());
    Optional<String> failure = new NewFile(to, overwrite).write(page);
    if (failure.isPresent()) {
      return refused(err, failure.get());
    }
    err.println("The wall sheet is in '" + to + "'; open it in a browser and print it.");
    err.flush();
    return FEASIBLE;
  }

  private static int refused(PrintWriter err, String sentence) {
    err.println(Letters.plain(sentence));
    err.flush();
    return REFUSED;
  }

  private String rigName() {
    return rig == null ? recipe.equals("demo-wheat") ? "flat" : "household" : rig;
  }
}
