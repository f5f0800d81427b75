package gylebook.reckon;

import gylebook.science.Reckoned;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.Stream;

/// Every function of the science that is offered, and arguments it answers to.
final class Samples {
  private static final int TRIES = 4000;

  /// Plausible amounts by the unit they are in; drawn until a function answers.
  private static final Map<String, List<Double>> LIKELY =
      Map.ofEntries(
          Map.entry("°C", List.of(20.0, 66.0, 95.0, 4.0, 12.0, 62.0, 100.0, 22.0)),
          Map.entry("°P", List.of(12.0, 3.0, 4.5, 8.0, 16.0)),
          Map.entry("SG", List.of(1.050, 1.010, 1.040)),
          Map.entry("kPa", List.of(101.325, 80.0, 150.0, 1.0)),
          Map.entry("kg", List.of(5.0, 20.0, 30.0, 0.1)),
          Map.entry("L", List.of(20.0, 1.0, 15.0)),
          Map.entry("m", List.of(0.4, 0.02, 0.2, 0.01, 2.0, 10.0, 0.05)),
          Map.entry("s", List.of(20.0, 60.0, 300.0)),
          Map.entry("min", List.of(30.0, 60.0)),
          Map.entry("W", List.of(3000.0, 2000.0)),
          Map.entry("J/K", List.of(150_000.0, 100.0)),
          Map.entry("kg/kg", List.of(3.0, 0.5, 1.0)),
          Map.entry("kg/m³", List.of(1000.0, 1040.0)),
          Map.entry("kg/L", List.of(1.04, 0.998)),
          Map.entry("K/W", List.of(0.001, 0.002)),
          Map.entry("1/K", List.of(0.0002, 0.02)),
          Map.entry("L/s", List.of(0.1, 0.05)),
          Map.entry("kg/s", List.of(0.1, 0.05)),
          Map.entry("m²", List.of(0.1, 0.01, 4e-6)),
          Map.entry("1/h", List.of(0.1)),
          Map.entry("1/min", List.of(0.1, 2.0)),
          Map.entry("", List.of(0.5, 0.05, 1.2, 2.0, 100.0, 1e11)));

  private static final List<Double> ELSE = List.of(1.0, 10.0, 100.0, 0.1, 5.0);

  /// A function with arguments it answers to.
  record Sample(Method function, List<Object> arguments) {
    Sample {
      arguments = List.copyOf(arguments);
    }

    String name() {
      return function.getAnnotation(Reckoned.class).name();
    }

    /// The numbers of its answer with one argument changed.
    double[] with(int at, double value) throws InvocationTargetException {
      Object[] changed = arguments.toArray();
      changed[at] = value;
      return numbers(invoked(function, changed));
    }
  }

  private Samples() {}

  static List<Sample> all() {
    return Phenomena.all().stream()
        .flatMap(type -> Arrays.stream(type.getDeclaredMethods()))
        .filter(method -> method.isAnnotationPresent(Reckoned.class))
        .map(method -> of(method).orElseThrow(() -> new AssertionError("no sample of " + method)))
        .toList();
  }

  private static Optional<Sample> of(Method function) {
    Calculation calculation = new Calculation(function, function.getAnnotation(Reckoned.class));
    for (int seed = 1; seed <= TRIES; seed++) {
      RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
      Object[] arguments =
          calculation.inputs().stream().map(input -> drawn(input, random)).toArray();
      for (int i = 0; i < arguments.length; i++) {
        if (function.getParameterTypes()[i] == int.class && arguments[i] instanceof Double whole) {
          arguments[i] = (int) Math.max(1, Math.rint(whole));
        }
      }
      try {
        double[] numbers = numbers(invoked(function, arguments));
        if (Arrays.stream(numbers).allMatch(Double::isFinite)) {
          return Optional.of(new Sample(function, List.of(arguments)));
        }
      } catch (InvocationTargetException _) {
        // The next draw may suit.
      }
    }
    return Optional.empty();
  }

  private static Object drawn(Input input, RandomGenerator random) {
    if (input.text()) {
      return switch (input.key()) {
        case "readings" -> "24:9.1 48:4.7 60:3.5";
        case "diacetyl" -> "clean";
        case "remarks" -> "7.7:quiet 2.0:rattled";
        case "course" -> "0:20 10:49.1 20:59.8 40:65.2 60:65.9";
        case "water" -> "Ca 10 HCO3 60";
        case "wanted" -> "Ca 100 Cl 80 SO4 120";
        case "house" -> "gypsum, calcium chloride, epsom salt";
        default -> "CaCl2";
      };
    }
    if (input.usual().isPresent()) {
      return input.usual().getAsDouble();
    }
    List<Double> likely = LIKELY.getOrDefault(input.unit(), ELSE);
    return likely.get(random.nextInt(likely.size()));
  }

  private static Object invoked(Method function, Object[] arguments)
      throws InvocationTargetException {
    try {
      return function.invoke(null, arguments);
    } catch (IllegalAccessException hidden) {
      throw new AssertionError(hidden);
    }
  }

  /// The numbers of an answer, taken apart.
  static double[] numbers(Object answer) {
    return flat(answer).mapToDouble(Double::doubleValue).toArray();
  }

  private static Stream<Double> flat(Object answer) {
    if (answer instanceof Number number) {
      return Stream.of(number.doubleValue());
    }
    if (answer == null || !answer.getClass().isRecord()) {
      return Stream.of();
    }
    List<Double> parts = new ArrayList<>();
    for (RecordComponent part : answer.getClass().getRecordComponents()) {
      try {
        flat(part.getAccessor().invoke(answer)).forEach(parts::add);
      } catch (ReflectiveOperationException broken) {
        throw new LinkageError(part + " cannot be read", broken);
      }
    }
    return parts.stream();
  }
}
