package gylebook.app;

import gylebook.terminal.CalcCommand;
import gylebook.terminal.PlanCommand;
import gylebook.terminal.RehearseCommand;
import gylebook.terminal.WriteCommand;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/// The words of the terminal: with none it opens the book and serves the page, with one it does one
/// thing.
@Command(
    name = "gylebook",
    mixinStandardHelpOptions = true,
    versionProvider = Edition.class,
    description = "Forecasts a brew day on your own rig and keeps the book of it.")
final class Terminal implements Callable<Integer> {
  private static final int PORT = Settings.USUAL_PORT;

  private final Surroundings surroundings;

  @Option(
      names = "--book",
      paramLabel = "FILE",
      description = "The file that holds everything (else GYLEBOOK_BOOK, else your data folder).")
  private @Nullable Path book;

  @Option(
      names = "--port",
      paramLabel = "PORT",
      description = "Where the page is served (default " + PORT + "; 0 takes any free port).")
  private int port = PORT;

  @Option(names = "--open", description = "Open the page in a browser.")
  private boolean open;

  @Option(
      names = "--open-to",
      paramLabel = "home",
      description = {
        "Whom else to serve: 'home' lets you let in screens of your home network, each with a code",
        "from the page 'Other screens'. Without it the program answers this machine alone."
      })
  private @Nullable String openTo;

  @Option(
      names = "--tls",
      description = {
        "With --open-to home: encrypt what goes to other screens, with a certificate of your own",
        "home's making. The page 'Other screens' says how a tablet comes to trust it."
      })
  private boolean tls;

  @Option(
      names = "--known-as",
      paramLabel = "NAME",
      description = "A name of this machine on your home network, where it has one of your own.")
  private List<String> knownAs = List.of();

  @Spec private @Nullable CommandSpec spec;

  Terminal(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  /// Does what the words say.
  ///
  /// @return the exit code
  static int run(Surroundings here, String... words) {
    return commandLine(here).execute(words);
  }

  /// The command line with every word it knows.
  static CommandLine commandLine(Surroundings surroundings) {
    CommandLine line = new CommandLine(new Terminal(surroundings));
    words().forEach(line::addSubcommand);
    return line;
  }

  /// The words of the terminal, each a picocli command.
  private static List<Object> words() {
    Shelf shelf = new Shelf();
    return List.of(
        new CalcCommand(),
        new PlanCommand(shelf),
        new WriteCommand(shelf, new WrittenForms()),
        new RehearseCommand(shelf, System.in));
  }

  @Override
  public Integer call() {
    CommandLine line = Objects.requireNonNull(spec, "picocli sets spec").commandLine();
    if (port < 0 || port > 65_535) {
      throw new ParameterException(
          line, "--port is " + port + "; it must lie between 0 and 65535.");
    }
    if (openTo != null && !openTo.equals("home")) {
      throw new ParameterException(line, "--open-to is '" + openTo + "'; it can only be 'home'.");
    }
    if (tls && openTo == null) {
      throw new ParameterException(
          line, "--tls is for screens of the home network: say --open-to home as well.");
    }
    if (tls && port == 65_535) {
      throw new ParameterException(
          line, "--port is 65535; with --tls the next one is needed too, so at most 65534.");
    }
    for (String name : knownAs) {
      if (!name.matches("[A-Za-z0-9]([A-Za-z0-9.-]{0,251}[A-Za-z0-9])?")) {
        throw new ParameterException(line, "--known-as is '" + name + "'; that is no name.");
      }
    }
    Settings.Opening opening = new Settings.Opening(openTo != null, tls, Set.copyOf(knownAs));
    PrintWriter out = line.getOut();
    Path file = book == null ? Settings.usualBook(surroundings) : book;
    return Serve.run(new Settings(file, port, open, opening), out, line.getErr());
  }
}
