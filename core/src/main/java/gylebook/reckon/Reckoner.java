package gylebook.reckon;

import gylebook.science.Reckoned;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/// The catalogue of single calculations.
public final class Reckoner {
  private static final Map<String, Calculation> CALCULATIONS = offered();
  private static final List<Calculation> SORTED =
      CALCULATIONS.values().stream()
          .sorted(Comparator.comparing(Calculation::group).thenComparing(Calculation::name))
          .toList();

  private Reckoner() {}

  /// Every calculation, by group and then by name.
  public static List<Calculation> all() {
    return SORTED;
  }

  /// The calculation of exactly this name.
  static Optional<Calculation> named(String name) {
    return Optional.ofNullable(CALCULATIONS.get(name));
  }

  /// Looks for a calculation by its name.
  public static Search find(String name) {
    Optional<Calculation> found = named(name);
    if (found.isPresent()) {
      return new Search.Hit(found.get());
    }
    List<String> nearest = NearNames.of(name, List.copyOf(CALCULATIONS.keySet()));
    String maybe = nearest.isEmpty() ? "" : " Maybe you mean " + String.join(" or ", nearest) + ".";
    return new Search.Miss("There is no calculation '" + name + "'." + maybe, nearest);
  }

  private static Map<String, Calculation> offered() {
    Map<String, Calculation> offered = new TreeMap<>();
    for (Method function : functions()) {
      Reckoned offer = function.getAnnotation(Reckoned.class);
      if (offer != null && offered.put(offer.name(), new Calculation(function, offer)) != null) {
        throw new IllegalStateException("two calculations are named " + offer.name());
      }
    }
    return offered;
  }

  private static List<Method> functions() {
    List<Method> functions = new ArrayList<>();
    for (Class<?> phenomenon : Phenomena.all()) {
      for (Method method : phenomenon.getDeclaredMethods()) {
        int modifiers = method.getModifiers();
        if (Modifier.isStatic(modifiers) && Modifier.isPublic(modifiers)) {
          functions.add(method);
        }
      }
    }
    return functions;
  }
}
