package gylebook.terminal;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/// `write rig NAME` and `write recipe NAME` give a file to start one's own from, or to give away.
///
/// Our own form keeps everything. The open standard has no place for some things: they are listed
/// first, and the file is written only when the brewer says so.
///
/// Code 0: written; 1: not written, since something would be lost and nobody said `--yes`; 2: bad
/// input, with a sentence on the error writer.
@Command(
    name = "write",
    mixinStandardHelpOptions = true,
    description = "Writes a rig or a recipe as a file: to change, to plan with, to give away.")
public final class WriteCommand implements Callable<Integer> {
  private static final int WRITTEN = 0;
  private static final int UNSAID = 1;
  private static final int REFUSED = 2;

  private final PlanSources sources;
  private final FileForms forms;

  @Parameters(index = "0", paramLabel = "rig|recipe", description = "What to write.")
  private String what = "";

  @Parameters(
      index = "1",
      paramLabel = "NAME",
      description = "household, flat, demo, demo-wheat, or a file of your own.")
  private String name = "";

  @Option(
      names = "--standard",
      description = "A recipe in the open JSON standard, version 3, and not in our own form.")
  private boolean standard;

  @Option(names = "--yes", description = "Write it although what is listed will be lost.")
  private boolean yes;

  @Option(
      names = "--to",
      paramLabel = "FILE",
      description = "Into this file and not to the screen; a file that is there stays.")
  private @Nullable Path to;

  @Option(names = "--overwrite", description = "Let --to replace a file that is there.")
  private boolean overwrite;

  @Spec private @Nullable CommandSpec spec;

  /// Takes things from these sources and writes them in these forms.
  public WriteCommand(PlanSources sources, FileForms forms) {
    this.sources = sources;
    this.forms = forms;
  }

  @Override
  public Integer call() {
    var line = Objects.requireNonNull(spec, "picocli sets spec").commandLine();
    PrintWriter err = line.getErr();
    try {
      Optional<String> refusal = to == null ? misplaced() : new NewFile(to, overwrite).refusal();
      if (refusal.isPresent()) {
        throw new PlanSources.Unreadable(refusal.get());
      }
      FileForms.Standard file = file(err);
      file.lost().forEach(lost -> err.println("Lost: " + lost));
      if (!file.lost().isEmpty() && !yes) {
        err.println(
            "Nothing was written: the standard has no place for what is listed. Add --yes to"
                + " write it all the same; leave out --standard to keep everything.");
        err.flush();
        return UNSAID;
      }
      written(file.text(), line.getOut(), err);
      return WRITTEN;
    } catch (PlanSources.Unreadable unreadable) {
      err.println(unreadable.sentence());
      err.flush();
      return REFUSED;
    }
  }

  private Optional<String> misplaced() {
    return overwrite
        ? Optional.of("--overwrite belongs to --to; there is no file to replace.")
        : Optional.empty();
  }

  private FileForms.Standard file(PrintWriter err) throws PlanSources.Unreadable {
    return switch (what) {
      case "rig" -> rigFile();
      case "recipe" -> recipeFile(err);
      default ->
          throw new PlanSources.Unreadable(
              "'" + what + "' cannot be written; a rig or a recipe can.");
    };
  }

  private FileForms.Standard rigFile() throws PlanSources.Unreadable {
    if (standard) {
      throw new PlanSources.Unreadable(
          "--standard is for recipes: a rig is written in our own form alone.");
    }
    return new FileForms.Standard(forms.rig(sources.rig(name)), List.of());
  }

  private FileForms.Standard recipeFile(PrintWriter err) throws PlanSources.Unreadable {
    PlanSources.Found found = sources.recipe(name);
    found.remarks().forEach(remark -> err.println("Note: " + remark));
    return standard
        ? forms.standard(found.recipe())
        : new FileForms.Standard(forms.recipe(found.recipe()), List.of());
  }

  private void written(String text, PrintWriter out, PrintWriter err)
      throws PlanSources.Unreadable {
    if (to == null) {
      out.print(text);
    } else {
      Optional<String> failure = new NewFile(to, overwrite).write(text);
      if (failure.isPresent()) {
        throw new PlanSources.Unreadable(failure.get());
      }
      err.println("The " + what + " is in '" + to + "'.");
    }
    out.flush();
    err.flush();
  }
}
