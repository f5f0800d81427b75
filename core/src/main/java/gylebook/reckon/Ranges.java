package gylebook.reckon;

import gylebook.science.Validity;
import gylebook.units.AnyUnit;
import gylebook.units.ReadingUnits;
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
/// in that unit; where several are, of those whose names have most in common with it, else of all.
@AnyUnit("holds ranges of every unit against numbers of every unit")
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
  List<String> cautions(List<Named> names, List<Amount> amounts, ReadingUnits units) {
    Set<String> cautions = new LinkedHashSet<>();
    for (Validity range : ranges) {
      List<Integer> spoken = spokenOf(range, names);
      for (int i : spoken) {
        double value = amounts.get(i).value();
        if (!range.holds(value)) {
          cautions.add(said(range, value, names.get(i), units));
        }
      }
    }
    return List.copyOf(cautions);
  }

  /// The caution with numbers as the reader has them; four digits unless six are needed to tell the
  /// value from the end it passed.
  private static String said(Validity range, double value, Named named, ReadingUnits units) {
    if (!Double.isFinite(range.least()) || !Double.isFinite(range.most())) {
      return range.caution(value).orElse("");
    }
    String four = named.told(value, units, 4);
    String least = named.told(range.least(), units, 6);
    String most = named.told(range.most(), units, 6);
    boolean same = four.equals(least) || four.equals(most);
    String what = range.what();
    int in = what.lastIndexOf(" in ");
    String name = in < 0 ? what.replaceFirst(" as a share$", "") : what.substring(0, in);
    return "%s is %s, outside %s to %s: %s."
        .formatted(name, same ? named.told(value, units, 6) : four, least, most, range.outside());
  }

  /// The numbers in the range's unit whose names have most of it; all of them when none has any.
  private static List<Integer> spokenOf(Validity range, List<Named> names) {
    List<Integer> spoken = new ArrayList<>();
    double most = 0;
    for (int i = 0; i < names.size(); i++) {
      if (!inUnit(range, names.get(i))) {
        continue;
      }
      double shared = sharedRatio(range, names.get(i));
      if (shared > most) {
        spoken.clear();
        most = shared;
      }
      if (shared == most) {
        spoken.add(i);
      }
    }
    return spoken;
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

  /// What part of a name's words stands in the range: `original` has all of it in common with
  /// "original extract", `real extract` only half.
  private static double sharedRatio(Validity range, Named named) {
    List<String> words = List.of(range.what().toLowerCase(Locale.ROOT).split(" ", -1));
    List<String> stem = named.unitName().map(name -> name.stem()).orElse(List.of());
    return stem.isEmpty()
        ? 0
        : (double) stem.stream().filter(words::contains).count() / stem.size();
  }

  private static Validity value(Field field) {
    try {
      return (Validity) field.get(null);
    } catch (IllegalAccessException hidden) {
      throw new IllegalStateException(field + " is hidden", hidden);
    }
  }
}
