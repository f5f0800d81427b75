package gylebook.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.science.Reckoned;
import gylebook.science.Source;
import gylebook.science.Trust;
import gylebook.units.AnyUnit;
import gylebook.units.UnitName;
import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CatalogueTest {
  private static final Path CLASSES = folderOf(Reckoned.class);
  private static final Path SOURCES = CLASSES.resolve("../../../docs/sources.bib").normalize();

  private static Path folderOf(Class<?> type) {
    try {
      return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException odd) {
      throw new AssertionError(odd);
    }
  }

  /// The public top-level classes of the science room, as compiled.
  private static List<Class<?>> compiled() throws IOException, ClassNotFoundException {
    List<Class<?>> found = new ArrayList<>();
    try (Stream<Path> files = Files.list(CLASSES.resolve("gylebook/science"))) {
      for (String name : files.map(f -> f.getFileName().toString()).sorted().toList()) {
        if (name.endsWith(".class") && !name.contains("$") && !name.contains("-")) {
          Class<?> type = Class.forName("gylebook.science." + name.replace(".class", ""));
          if (Modifier.isPublic(type.getModifiers())) {
            found.add(type);
          }
        }
      }
    }
    return found;
  }

  private static List<Method> functions(Class<?> type) {
    return Arrays.stream(type.getDeclaredMethods())
        .filter(m -> Modifier.isStatic(m.getModifiers()) && Modifier.isPublic(m.getModifiers()))
        .filter(m -> !m.isSynthetic())
        .toList();
  }

  private static boolean takesOnlyNumbers(Method function) {
    return Arrays.stream(function.getParameterTypes())
        .allMatch(type -> type == double.class || type == int.class || type == String.class);
  }

  private static boolean anyUnit(Class<?> type) throws IOException {
    Path file =
        CLASSES.resolve("../../src/main/java/" + type.getName().replace('.', '/') + ".java");
    return Files.readString(file.normalize()).contains("@" + AnyUnit.class.getSimpleName() + "(");
  }

  @Test
  void theListOfPhenomenaIsComplete() throws Exception {
    List<Class<?>> offering = new ArrayList<>();
    for (Class<?> type : compiled()) {
      if (functions(type).stream().anyMatch(m -> m.isAnnotationPresent(Reckoned.class))) {
        offering.add(type);
      }
    }
    assertThat(offering).hasSizeGreaterThan(30);
    assertThat(Phenomena.all())
        .doesNotHaveDuplicates()
        .containsExactlyInAnyOrderElementsOf(offering);
  }

  @Test
  void everyPublicFunctionThatGivesANumberIsOffered() throws Exception {
    List<String> hidden = new ArrayList<>();
    for (Class<?> type : compiled()) {
      if (anyUnit(type)) {
        continue;
      }
      List<Method> functions = functions(type);
      for (Method function : functions) {
        boolean number = function.getReturnType() == double.class;
        boolean overloadOffered =
            functions.stream()
                .filter(m -> m.getName().equals(function.getName()))
                .anyMatch(m -> m.isAnnotationPresent(Reckoned.class));
        if (number && takesOnlyNumbers(function) && !overloadOffered) {
          hidden.add(type.getSimpleName() + "." + function.getName());
        }
      }
    }
    assertThat(hidden).isEmpty();
  }

  @Test
  void everyCalculationNamesASourceThatIsListed() throws Exception {
    Set<String> keys = new HashSet<>();
    Matcher entry = Pattern.compile("@\\w+\\{([^,]+),").matcher(Files.readString(SOURCES));
    while (entry.find()) {
      keys.add(entry.group(1).strip());
    }
    for (Calculation calculation : Reckoner.all()) {
      assertThat(calculation.sources()).as(calculation.name()).isNotEmpty();
      for (Origin source : calculation.sources()) {
        assertThat(keys).as(calculation.name()).contains(source.key());
        assertThat(source.trust()).isNotBlank();
      }
    }
  }

  @Test
  void everyNameIsPlainAndStandsOnce() throws Exception {
    List<String> names = new ArrayList<>();
    for (Class<?> type : compiled()) {
      for (Method function : functions(type)) {
        Reckoned offer = function.getAnnotation(Reckoned.class);
        if (offer != null) {
          names.add(offer.name());
          assertThat(function.getAnnotationsByType(Source.class)).as(offer.name()).isNotEmpty();
        }
      }
    }
    assertThat(names).doesNotHaveDuplicates().allMatch(n -> n.matches("[a-z0-9]+(-[a-z0-9]+)*"));
    assertThat(Reckoner.all())
        .extracting(Calculation::name)
        .containsExactlyInAnyOrderElementsOf(names);
  }

  @Test
  void everyNumberAskedForAndGivenNamesItsUnit() {
    for (Calculation calculation : Reckoner.all()) {
      assertThat(calculation.says()).as(calculation.name()).matches("(?s).{8,}[.?]");
      assertThat(calculation.equation()).as(calculation.name()).isNotBlank();
      assertThat(calculation.range()).as(calculation.name()).isNotBlank();
      assertThat(calculation.outputs()).as(calculation.name()).isNotEmpty();
      assertThat(calculation.inputs())
          .as(calculation.name())
          .extracting(Input::key)
          .doesNotHaveDuplicates()
          .allMatch(key -> !key.startsWith("arg"));
      for (Input input : calculation.inputs()) {
        assertThat(input.text() || UnitName.of(input.javaName()).isPresent())
            .as(calculation.name() + " " + input.javaName())
            .isTrue();
      }
    }
  }

  @Test
  void theSourcesFileIsThere() {
    assertThat(SOURCES).exists();
  }

  /// What its note says was not read, no function says was read.
  @Test
  void nobodyClaimsToHaveReadWhatTheListSaysWasNot() throws Exception {
    Set<String> unread = new HashSet<>();
    Matcher entry =
        Pattern.compile(
                "(?ms)^@\\w+\\{([^,]+),(?:(?!^\\}).)*?note = \\{"
                    + "(?:Not read|Read second-hand|From memory|No source|Common practice)")
            .matcher(Files.readString(SOURCES));
    while (entry.find()) {
      unread.add(entry.group(1).strip());
    }
    assertThat(unread).hasSizeGreaterThan(10).contains("brandam2003", "brewers-practice");
    List<String> claims = new ArrayList<>();
    for (Class<?> type : compiled()) {
      for (Method method : type.getDeclaredMethods()) {
        for (Source source : method.getAnnotationsByType(Source.class)) {
          if (unread.contains(source.key()) && source.trust() == Trust.READ) {
            claims.add(type.getSimpleName() + "." + method.getName() + ": " + source.key());
          }
        }
      }
    }
    assertThat(claims).isEmpty();
  }
}
