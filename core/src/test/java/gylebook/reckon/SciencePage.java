package gylebook.reckon;

import gylebook.science.Reckoned;
import gylebook.science.Source;
import gylebook.units.ReadingUnits;
import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// A page about a phenomenon: above the mark a person wrote it, below the mark the code did.
///
/// Two kinds of remarks stand above: `<!-- phenomena: A B -->` names the classes, and `<!-- curve
/// FILE | title | calculations | input from..to | outputs | each x 1,2 | with a=1 -->` asks for a
/// picture.
final class SciencePage {
  private static final String MARK =
      "<!-- Below, the code speaks: SciencePagesTest with -Dpictures=update writes it. -->\n";
  private static final Pattern PHENOMENA = Pattern.compile("<!-- phenomena: ([^>]*) -->");
  private static final Pattern CURVE = Pattern.compile("(?s)<!-- curve (.*?) -->");
  private static final int POINTS = 80;

  private final Path file;
  private final String written;

  SciencePage(Path file) throws IOException {
    this.file = file;
    this.written = Files.readString(file);
  }

  String name() {
    return file.getFileName().toString();
  }

  Path path() {
    return file;
  }

  String written() {
    return written;
  }

  /// What a person wrote, remarks left out.
  String prose() {
    return head().replaceAll("(?s)<!--.*?-->", "");
  }

  private String head() {
    int mark = written.indexOf(MARK);
    return (mark < 0 ? written.strip() + "\n\n" : written.substring(0, mark));
  }

  /// The whole page as it must be.
  String wanted() {
    StringBuilder page = new StringBuilder(head()).append(MARK);
    for (Curve curve : curves()) {
      page.append("\n![").append(curve.title).append("](pictures/").append(curve.file);
      page.append(".svg)\n");
    }
    page.append("\n## What the code reckons\n");
    for (Class<?> phenomenon : phenomena()) {
      calculations(phenomenon).forEach(each -> describe(page, each));
      unoffered(phenomenon).forEach(each -> describe(page, phenomenon, each));
    }
    return page.toString();
  }

  /// The classes this page is about.
  List<Class<?>> phenomena() {
    Map<String, Class<?>> known =
        Phenomena.all().stream().collect(Collectors.toMap(Class::getSimpleName, type -> type));
    List<Class<?>> named = new ArrayList<>();
    for (MatchResult found : PHENOMENA.matcher(written).results().toList()) {
      for (String name : found.group(1).strip().split("\\s+", -1)) {
        Class<?> type = known.get(name);
        if (type == null) {
          throw new AssertionError(name() + " speaks of " + name + ", which offers nothing");
        }
        named.add(type);
      }
    }
    return named;
  }

  /// The pictures this page asks for, by file name.
  Map<String, String> pictures() {
    Map<String, String> pictures = new LinkedHashMap<>();
    for (Curve curve : curves()) {
      if (pictures.put(curve.file + ".svg", curve.picture()) != null) {
        throw new AssertionError(name() + " draws " + curve.file + " twice");
      }
    }
    return pictures;
  }

  private List<Curve> curves() {
    return CURVE.matcher(written).results().map(found -> new Curve(found.group(1))).toList();
  }

  private static List<Calculation> calculations(Class<?> phenomenon) {
    return functions(phenomenon)
        .filter(method -> method.isAnnotationPresent(Reckoned.class))
        .map(method -> method.getAnnotation(Reckoned.class).name())
        .sorted()
        .map(SciencePage::calculation)
        .toList();
  }

  private static List<Method> unoffered(Class<?> phenomenon) {
    return functions(phenomenon)
        .filter(method -> !method.isAnnotationPresent(Reckoned.class))
        .filter(method -> method.getAnnotationsByType(Source.class).length > 0)
        .sorted(Comparator.comparing(Method::toString))
        .toList();
  }

  private static Stream<Method> functions(Class<?> phenomenon) {
    return Arrays.stream(phenomenon.getDeclaredMethods())
        .filter(method -> Modifier.isPublic(method.getModifiers()))
        .filter(method -> !method.isSynthetic());
  }

  private static Calculation calculation(String name) {
    return switch (Reckoner.find(name.strip())) {
      case Search.Hit hit -> hit.calculation();
      case Search.Miss miss -> throw new AssertionError(miss.sentence());
    };
  }

  private static void describe(StringBuilder page, Calculation each) {
    page.append("\n### `").append(each.name()).append("`\n\n").append(each.says());
    page.append("\n\n    ").append(each.equation()).append("\n\n");
    page.append("- holds: ").append(each.range()).append('\n');
    if (!each.inputs().isEmpty()) {
      page.append("- asks for: ");
      page.append(each.inputs().stream().map(SciencePage::asked).collect(Collectors.joining("; ")));
      page.append('\n');
    }
    page.append("- gives: ");
    page.append(
        each.outputs().stream()
            .map(output -> withUnit(output.name(), output.unit()))
            .collect(Collectors.joining("; ")));
    page.append("\n- from: ");
    page.append(each.sources().stream().map(Origin::words).collect(Collectors.joining("; ")));
    page.append('\n');
  }

  private static void describe(StringBuilder page, Class<?> phenomenon, Method method) {
    page.append("\n### `").append(phenomenon.getSimpleName()).append('.');
    page.append(method.getName()).append("`, in the code only\n\n- from: ");
    page.append(
        Arrays.stream(method.getAnnotationsByType(Source.class))
            .map(source -> new Origin(source.key(), source.at(), source.trust().words()).words())
            .collect(Collectors.joining("; ")));
    page.append('\n');
  }

  private static String asked(Input input) {
    String usual = input.usual().isPresent() ? ", usually " + input.usual().getAsDouble() : "";
    return withUnit(input.key(), input.unit()) + usual;
  }

  private static String withUnit(String name, String unit) {
    return unit.isEmpty() ? name : name + " (" + unit + ")";
  }

  /// One picture: which calculations, over which input, showing which results.
  private static final class Curve {
    private final String file;
    private final String title;
    private final List<Calculation> calculations;
    private final String across;
    private final double from;
    private final double to;
    private final List<String> outputs;
    private final Map<String, String> fixed = new LinkedHashMap<>();
    private String eachKey = "";
    private List<String> eachValues = List.of("");
    private boolean log;

    Curve(String words) {
      List<String> parts = Arrays.stream(words.split("\\|", -1)).map(String::strip).toList();
      file = parts.get(0);
      title = parts.get(1);
      calculations =
          Arrays.stream(parts.get(2).split(",", -1)).map(SciencePage::calculation).toList();
      String[] range = parts.get(3).split("\\s+|\\.\\.", -1);
      across = range[0];
      from = Double.parseDouble(range[1]);
      to = Double.parseDouble(range[2]);
      outputs = Arrays.stream(parts.get(4).split(",", -1)).map(String::strip).toList();
      parts.subList(5, parts.size()).forEach(this::option);
    }

    private void option(String words) {
      String[] each = words.split("\\s+", -1);
      switch (each[0]) {
        case "log" -> log = true;
        case "each" -> {
          eachKey = each[1];
          eachValues = List.of(each[2].split(",", -1));
        }
        case "with" -> {
          for (int i = 1; i < each.length; i++) {
            fixed.put(each[i].split("=", -1)[0], each[i].split("=", -1)[1]);
          }
        }
        default -> throw new AssertionError(file + ": what is '" + words + "'?");
      }
    }

    String picture() {
      List<CurvePicture.Line> lines = new ArrayList<>();
      for (Calculation calculation : calculations) {
        for (String output : outputs) {
          for (String value : eachValues) {
            String label = label(calculation, output, value);
            List<double[]> points = points(calculation, output, value);
            if (points.size() < POINTS / 2) {
              throw new AssertionError(file + ": " + label + " has " + points.size() + " points");
            }
            lines.add(new CurvePicture.Line(label, points));
          }
        }
      }
      Calculation first = calculations.getFirst();
      Input input =
          first.inputs().stream().filter(i -> i.key().equals(across)).findFirst().orElseThrow();
      String up =
          first.outputs().stream()
              .filter(output -> output.name().equals(outputs.getFirst()))
              .map(output -> withUnit(output.name(), output.unit()))
              .findFirst()
              .orElse("");
      String below = withUnit(input.key(), input.unit());
      return new CurvePicture(new CurvePicture.Axes(title, below, up, log), lines).svg();
    }

    private String label(Calculation calculation, String output, String value) {
      List<String> words = new ArrayList<>();
      if (calculations.size() > 1) {
        words.add(calculation.name());
      }
      if (outputs.size() > 1) {
        words.add(output);
      }
      if (eachValues.size() > 1) {
        words.add(eachKey + " " + value);
      }
      return String.join(", ", words);
    }

    private List<double[]> points(Calculation calculation, String output, String value) {
      List<double[]> points = new ArrayList<>();
      for (int i = 0; i <= POINTS; i++) {
        double at = from + (to - from) * i / POINTS;
        Map<String, String> typed = new LinkedHashMap<>(fixed);
        typed.put(across, String.format(Locale.ROOT, "%.9f", at));
        if (!eachKey.isEmpty()) {
          typed.put(eachKey, value);
        }
        // A bare number may be a gravity as well as a strength.
        calculation.inputs().stream()
            .filter(input -> input.unit().equals("°P"))
            .forEach(input -> typed.computeIfPresent(input.key(), (key, number) -> number + " P"));
        switch (calculation.reckon(typed, ReadingUnits.METRIC)) {
          case Reckoning.Answer answer -> points.add(new double[] {at, number(answer, output)});
          case Reckoning.Unanswered none -> {
            if (i == POINTS / 2) {
              throw new AssertionError(file + ": " + none.sentence());
            }
          }
        }
      }
      return points;
    }

    private double number(Reckoning.Answer answer, String output) {
      List<Amount> results = answer.results();
      return results.stream()
          .filter(amount -> results.size() == 1 || amount.name().equals(output))
          .findFirst()
          .orElseThrow(() -> new AssertionError(file + ": no " + output + " in " + results))
          .value();
    }
  }
}
