package gylebook.reckon;

import gylebook.science.Validity;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/// The cautions of a class of the science room: its ranges, held against the numbers they speak of.
///
/// A range names its quantity and unit in words, `wort temperature in C`. It speaks of the numbers
/// in that unit; where several are, of those that share a word with it, else of all of them.
final class Ranges {
  private final List<Validity> ranges = new ArrayList<>();

  Ranges(Class<?> phenomenon) {
    for (Field field : phenomenon.getFields()) {
      if (Modifier.isStatic(field.getModifiers()) && field.getType() == Validity.class) {
        ranges.add(value(field));
      }
    }
  }

  /// What to be careful about, given these numbers.
  List<String> cautions(List<Named> names, List<Amount> amounts) {
    Set<String> cautions = new LinkedHashSet<>();
    for (Validity range : ranges) {
      List<Integer> unit = new ArrayList<>();
      List<Integer> word = new ArrayList<>();
      for (int i = 0; i < names.size(); i++) {
        if (inUnit(range, names.get(i))) {
          unit.add(i);
          if (sharesWord(range, names.get(i))) {
            word.add(i);
          }
        }
      }
      for (int i : word.isEmpty() ? unit : word) {
        range.caution(amounts.get(i).value()).ifPresent(cautions::add);
      }
    }
    return List.copyOf(cautions);
  }

  private static boolean inUnit(Validity range, Named named) {
    String what = range.what();
    String symbol = named.symbol();
    if (what.endsWith(" as a share")) {
      return named.javaName().endsWith("Frac");
    }
    if (what.startsWith("pH ")) {
      return symbol.equals("pH");
    }
    int in = what.lastIndexOf(" in ");
    return in >= 0 && !symbol.isEmpty() && what.substring(in + 4).equals(symbol.replace("°", ""));
  }

  private static boolean sharesWord(Validity range, Named named) {
    List<String> words = List.of(range.what().toLowerCase(Locale.ROOT).split(" ", -1));
    return named.unitName().stream()
        .anyMatch(name -> name.stem().stream().anyMatch(words::contains));
  }

  private static Validity value(Field field) {
    try {
      return (Validity) field.get(null);
    } catch (IllegalAccessException hidden) {
      throw new IllegalStateException(field + " is hidden", hidden);
    }
  }
}
