package gylebook.tidy;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.testing.Checkout;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/// What the papers beside the code say is so.
final class PapersTest {
  private static final Path ROOT = Checkout.root();
  private static final Pattern DEPENDENCY =
      Pattern.compile("(?s)<dependency>.*?<artifactId>([^<]+)</artifactId>");
  private static final Pattern WORD = Pattern.compile("(?m)^\\| ([^|]+?) \\| [^|]+ \\| [^|]+ \\|");
  private static final Pattern LINK = Pattern.compile("]\\(([^)#:]+)\\)");

  @Test
  void theMapListsEveryRoomInTheOrderOfTheLadder() throws IOException {
    List<String> listed =
        found(Pattern.compile("(?m)^\\| (?:core|app) \\| `([a-z]+)`"), read("docs/map.md"));
    assertThat(listed).isEqualTo(Rooms.LADDER);
  }

  @Test
  void theMapPutsEveryBuiltRoomIntoItsModule() throws IOException {
    String map = read("docs/map.md");
    for (String module : List.of("core", "app")) {
      try (Stream<Path> rooms =
          Files.list(ROOT.resolve(module).resolve("src/main/java/gylebook"))) {
        for (Path room : rooms.filter(Files::isDirectory).toList()) {
          assertThat(map).contains("| " + module + " | `" + room.getFileName() + "`");
        }
      }
    }
  }

  @Test
  void theLadderInTheDecisionIsTheOneThatIsChecked() throws IOException {
    String decision = read("docs/decisions/0003-the-ladder.md");
    assertThat(decision.replaceAll("\\s+", " ")).contains(String.join(" < ", Rooms.LADDER));
    assertThat(Stream.of(Rooms.CORE, Rooms.APP).flatMap(List::stream)).isEqualTo(Rooms.LADDER);
  }

  @Test
  void decisionsAreNumberedWithoutGapsAndNameABadConsequence() throws IOException {
    List<Path> records = decisions();
    for (int i = 0; i < records.size(); i++) {
      Path record = records.get(i);
      assertThat(record.getFileName().toString()).matches("%04d-[a-z0-9-]+\\.md".formatted(i + 1));
      assertThat(Files.readString(record))
          .as(record.toString())
          .startsWith("# " + (i + 1) + ". ")
          .containsIgnoringCase("bad");
    }
    assertThat(records).hasSizeGreaterThanOrEqualTo(8);
  }

  @Test
  void everyDependencyIsMentionedInADecision() throws IOException {
    StringBuilder said = new StringBuilder();
    for (Path record : decisions()) {
      said.append(Files.readString(record));
    }
    for (String module : List.of("core", "app")) {
      List<String> names = found(DEPENDENCY, read(module + "/pom.xml"));
      assertThat(names).isNotEmpty();
      names.stream()
          .filter(name -> !name.startsWith("gylebook"))
          .forEach(name -> assertThat(said).as("dependency of " + module).contains(name));
    }
  }

  @Test
  void everySourceStandsOnceInTheList() {
    List<String> keys = House.bibKeys();
    Set<String> once = new HashSet<>();
    assertThat(keys.stream().filter(key -> !once.add(key))).as("keys that stand twice").isEmpty();
  }

  @Test
  void everyWordOfTheNomenclatureStandsOnceAndIsOneTheHouseUses() throws IOException {
    List<String> words =
        found(WORD, read("docs/nomenclature.md")).stream()
            .filter(cell -> !cell.equals("word") && !cell.startsWith("-"))
            .flatMap(cell -> Stream.of(cell.split(",\\s*")))
            .toList();
    assertThat(words).hasSizeGreaterThan(50).doesNotHaveDuplicates();
    String house = house();
    assertThat(words.stream().filter(word -> !isSaid(word, house)))
        .as("words that nothing in the house is called by any more")
        .isEmpty();
    assertThat(isSaid("no such word", house)).isFalse();
  }

  /// Whether a word is in the sources, written apart or as a name is.
  private static boolean isSaid(String word, String house) {
    String lower = word.toLowerCase(Locale.ROOT);
    return Stream.of(" ", "", "_", "-").anyMatch(by -> house.contains(lower.replace(" ", by)));
  }

  private static String house() throws IOException {
    StringBuilder said = new StringBuilder();
    for (String module : List.of("core", "app")) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/main"))) {
        for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
          said.append(Files.readString(file).toLowerCase(Locale.ROOT));
        }
      }
    }
    return said.toString();
  }

  @Test
  void linksLeadToFilesThatAreThere() throws IOException {
    List<String> papers = List.of("README.md", "CONTRIBUTING.md", "CHANGELOG.md", "docs/map.md");
    List<Path> all = new ArrayList<>(decisions());
    papers.forEach(paper -> all.add(ROOT.resolve(paper)));
    for (Path paper : all) {
      for (String link : found(LINK, Files.readString(paper))) {
        Path target = paper.resolveSibling(link);
        assertThat(target).as(paper + " links to " + link).exists();
      }
    }
  }

  private static List<Path> decisions() throws IOException {
    try (Stream<Path> files = Files.list(ROOT.resolve("docs/decisions"))) {
      return files.sorted().toList();
    }
  }

  private static String read(String path) throws IOException {
    return Files.readString(ROOT.resolve(path));
  }

  private static List<String> found(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    return matcher.results().map((MatchResult result) -> result.group(1)).toList();
  }
}
