package gylebook.reckon;

import gylebook.units.ReadingUnits;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/// What a function gives back, taken apart into named numbers: one number, or a record of them.
final class Results {
  private final List<Named> names = new ArrayList<>();
  private final List<Amount> amounts = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();
  private final ReadingUnits units;

  Results(Method function, Object given, ReadingUnits units) {
    this.units = units;
    take(function.getName(), function.getReturnType(), given);
  }

  List<Named> names() {
    return names;
  }

  List<Amount> amounts() {
    return amounts;
  }

  List<String> remarks() {
    return remarks;
  }

  /// What a function of this kind gives, without calling it.
  static List<Output> outputs(String name, Class<?> type) {
    List<Output> outputs = new ArrayList<>();
    if (type.isRecord()) {
      for (RecordComponent part : type.getRecordComponents()) {
        outputs.addAll(outputs(part.getName(), part.getType()));
      }
    } else if (type == double.class || type == int.class) {
      Named named = Named.of(name);
      outputs.add(new Output(named.stem(), named.symbol()));
    } else {
      outputs.add(new Output(Named.of(name).whole(), ""));
    }
    return outputs;
  }

  private void take(String name, Class<?> type, Object value) {
    if (type.isRecord()) {
      for (RecordComponent part : type.getRecordComponents()) {
        take(part.getName(), part.getType(), component(part, value));
      }
    } else if (value instanceof Number number) {
      Named named = Named.of(name);
      names.add(named);
      double plain = number.doubleValue();
      amounts.add(
          Double.isFinite(plain)
              ? named.result(named.stem(), plain, units)
              : new Amount(named.stem(), plain, named.symbol(), "no finite number"));
    } else {
      String words = value instanceof Boolean yes ? (yes ? "yes" : "no") : String.valueOf(value);
      remarks.add(Named.of(name).whole().replace('-', ' ') + ": " + words.toLowerCase(Locale.ROOT));
    }
  }

  private static Object component(RecordComponent part, Object value) {
    try {
      return part.getAccessor().invoke(value);
    } catch (IllegalAccessException | InvocationTargetException broken) {
      throw new IllegalStateException(part + " cannot be read", broken);
    }
  }
}
