package gylebook.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.science.Reckoned;
import gylebook.science.Source;
import java.io.IOException;
import java.lang.reflect.Method;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/// The pages of `docs/science`, the functions and the list of sources say the same, both ways.
///
/// `-Dpictures=update` writes the lower part of each page and its pictures anew.
class SciencePagesTest {
  private static final Path DOCS = docs();
  private static final Path FOLDER = DOCS.resolve("science");
  private static final Path PICTURES = FOLDER.resolve("pictures");
  private static final boolean UPDATE = "update".equals(System.getProperty("pictures"));

  private static Path docs() {
    try {
      Path classes =
          Path.of(Reckoned.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      return classes.resolve("../../../docs").normalize();
    } catch (URISyntaxException odd) {
      throw new AssertionError(odd);
    }
  }

  private static List<SciencePage> pages() throws IOException {
    List<SciencePage> pages = new ArrayList<>();
    try (Stream<Path> files = Files.list(FOLDER)) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        if (name.endsWith(".md") && !name.equals("README.md")) {
          pages.add(new SciencePage(file));
        }
      }
    }
    return pages;
  }

  @Test
  void whatTheCodeSaysOnAPageIsWhatItSaysToday() throws IOException {
    for (SciencePage page : pages()) {
      if (UPDATE) {
        Files.writeString(page.path(), page.wanted());
      }
      assertThat(Files.readString(page.path())).as(page.name()).isEqualTo(page.wanted());
    }
  }

  @Test
  void everyPictureIsWhatTheCodeDrawsToday() throws IOException {
    Map<String, String> pictures = new TreeMap<>();
    for (SciencePage page : pages()) {
      assertThat(page.pictures()).as(page.name()).isNotEmpty();
      page.pictures().forEach((file, svg) -> assertThat(pictures.put(file, svg)).as(file).isNull());
    }
    if (UPDATE) {
      Files.createDirectories(PICTURES);
      for (Map.Entry<String, String> picture : pictures.entrySet()) {
        Files.writeString(PICTURES.resolve(picture.getKey()), picture.getValue());
      }
    }
    for (Map.Entry<String, String> picture : pictures.entrySet()) {
      assertThat(Files.readString(PICTURES.resolve(picture.getKey())))
          .as(picture.getKey())
          .isEqualTo(picture.getValue());
    }
    try (Stream<Path> files = Files.list(PICTURES)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(pictures.keySet());
    }
  }

  @Test
  void everyPhenomenonHasOnePage() throws IOException {
    List<Class<?>> told = new ArrayList<>();
    for (SciencePage page : pages()) {
      told.addAll(page.phenomena());
    }
    assertThat(told).containsExactlyInAnyOrderElementsOf(Phenomena.all());
  }

  @Test
  void everyPageExplainsAndSaysHowSureWeAre() throws IOException {
    String index = Files.readString(FOLDER.resolve("README.md"));
    for (SciencePage page : pages()) {
      assertThat(page.prose()).as(page.name()).startsWith("# ").contains("**How sure.**");
      assertThat(page.prose().split("\\s+", -1).length).as(page.name()).isGreaterThan(90);
      assertThat(index).contains("](" + page.name() + ")");
    }
  }

  @Test
  void everySourceThatIsListedIsUsedAndEveryOneUsedIsListed() throws Exception {
    Set<String> used = new HashSet<>();
    for (Class<?> phenomenon : Phenomena.all()) {
      for (Method method : phenomenon.getDeclaredMethods()) {
        for (Source source : method.getAnnotationsByType(Source.class)) {
          used.add(source.key());
        }
      }
    }
    used.addAll(usedByTheFilters());
    Map<String, String> listed = listed();
    assertThat(listed.keySet()).containsAll(used);
    List<String> idle =
        listed.entrySet().stream()
            .filter(entry -> !used.contains(entry.getKey()))
            .filter(entry -> !entry.getValue().replaceAll("\\s+", " ").contains("in tests only"))
            .map(Map.Entry::getKey)
            .toList();
    assertThat(idle).as("no function names them and their note does not say why").isEmpty();
  }

  /// The filters stand in a room of their own, which offers no single calculation.
  private static Set<String> usedByTheFilters() throws ReflectiveOperationException {
    Set<String> used = new HashSet<>();
    for (String name :
        List.of(
            "SquareRootFilter",
            "Hindsight",
            "EnsembleTransform",
            "Hindsight",
            "Particles",
            "PerturbedReadings",
            "RecursiveLeastSquares",
            "Suspicion")) {
      for (Method method : Class.forName("gylebook.estimate." + name).getDeclaredMethods()) {
        for (Source source : method.getAnnotationsByType(Source.class)) {
          used.add(source.key());
        }
      }
    }
    return used;
  }

  private static Map<String, String> listed() throws IOException {
    Map<String, String> listed = new TreeMap<>();
    Matcher entry =
        Pattern.compile("(?ms)^@\\w+\\{([^,]+),(.*?)^\\}")
            .matcher(Files.readString(DOCS.resolve("sources.bib")));
    while (entry.find()) {
      listed.put(entry.group(1).strip(), entry.group(2));
    }
    assertThat(listed).hasSizeGreaterThan(100);
    return listed;
  }
}
