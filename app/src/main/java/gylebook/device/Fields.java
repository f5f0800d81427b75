package gylebook.device;

import gylebook.units.AnyUnit;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/// The fields of a form, read one by one; the first that does not fit is said.
@AnyUnit("reads bare numbers out of texts")
final class Fields {
  private final Map<String, String> texts;

  Fields(Map<String, String> texts) {
    this.texts = Map.copyOf(texts);
  }

  /// What stands in a field; empty when there is none.
  Optional<String> given(String field) {
    return Optional.ofNullable(texts.get(field)).map(String::strip).filter(t -> !t.isEmpty());
  }

  String text(String field) throws Unfit {
    return given(field).orElseThrow(() -> new Unfit(field, "", "It must not be empty."));
  }

  String text(String field, String usual) {
    return given(field).orElse(usual);
  }

  int whole(String field, int usual, int least, int most) throws Unfit {
    Optional<String> given = given(field);
    if (given.isEmpty()) {
      return usual;
    }
    String said = "It must be a whole number from " + least + " to " + most + ".";
    try {
      int number = Integer.parseInt(given.get());
      if (number < least || number > most) {
        throw new Unfit(field, given.get(), said);
      }
      return number;
    } catch (NumberFormatException _) {
      throw new Unfit(field, given.get(), said);
    }
  }

  double number(String field, double usual) throws Unfit {
    Optional<String> given = given(field);
    if (given.isEmpty()) {
      return usual;
    }
    try {
      double number = Double.parseDouble(given.get().replace(',', '.'));
      if (Double.isFinite(number)) {
        return number;
      }
      throw new Unfit(field, given.get(), "It must be finite.");
    } catch (NumberFormatException _) {
      throw new Unfit(field, given.get(), "It must be a number.");
    }
  }

  /// One of an enumeration, written small.
  <E extends Enum<E>> E choice(String field, E usual) throws Unfit {
    String given = text(field, name(usual));
    E[] all = usual.getDeclaringClass().getEnumConstants();
    return Arrays.stream(all)
        .filter(one -> name(one).equals(given.toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(() -> new Unfit(field, given, "It must be one of " + names(all) + "."));
  }

  private static String names(Enum<?>[] all) {
    return Arrays.stream(all).map(Fields::name).collect(Collectors.joining(", "));
  }

  static String name(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT);
  }
}
