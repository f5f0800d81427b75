package gylebook.terminal;

import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import java.io.PrintWriter;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/// `write rig NAME` and `write recipe NAME` print a file to start one's own from.
@Command(
    name = "write",
    mixinStandardHelpOptions = true,
    description = "Prints a rig or a recipe as a file, to change and to plan with.")
public final class WriteCommand implements Callable<Integer> {
  private static final int REFUSED = 2;

  private final PlanSources sources;
  private final Function<Rig, String> rigText;
  private final Function<Recipe, String> recipeText;

  @Parameters(index = "0", paramLabel = "rig|recipe", description = "What to print.")
  private String what = "";

  @Parameters(
      index = "1",
      paramLabel = "NAME",
      description = "household, flat, demo, demo-wheat, or a file of your own.")
  private String name = "";

  @Spec private @Nullable CommandSpec spec;

  /// Takes things from these sources and writes them so.
  public WriteCommand(
      PlanSources sources, Function<Rig, String> rigText, Function<Recipe, String> recipeText) {
    this.sources = sources;
    this.rigText = rigText;
    this.recipeText = recipeText;
  }

  @Override
  public Integer call() {
    var line = Objects.requireNonNull(spec, "picocli sets spec").commandLine();
    PrintWriter out = line.getOut();
    try {
      switch (what) {
        case "rig" -> out.print(rigText.apply(sources.rig(name)));
        case "recipe" -> out.print(recipeText.apply(sources.recipe(name).recipe()));
        default ->
            throw new PlanSources.Unreadable(
                "'" + what + "' cannot be written; a rig or a recipe can.");
      }
    } catch (PlanSources.Unreadable unreadable) {
      line.getErr().println(unreadable.sentence());
      line.getErr().flush();
      return REFUSED;
    }
    out.flush();
    return 0;
  }
}
