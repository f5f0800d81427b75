package gylebook.tidy;

import gylebook.units.UnitName;
import gylebook.units.UnitWord;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/// What a name measures: powers of unit words. `lossWPerK` is kg m2 / s3 / K.
///
/// Words that belong together without a factor (J, W, Pa, V, Ohm) are spelt in kg, m and s, so that
/// `Pa * M3` is `J`. Words that differ by a factor (kPa, L, g, min) stay words of their own: only a
/// named constant such as `G_PER_KG` leads from one to the other.
record Dimension(SortedMap<String, Integer> powers) {
  static final Dimension NONE = new Dimension(new TreeMap<>());
  static final Dimension C = ofWord("C");
  static final Dimension KELVIN = ofWord("Kelvin");
  static final Dimension K = ofWord("K");

  private static final Map<String, Map<String, Integer>> COHERENT =
      Map.of(
          "N", Map.of("Kg", 1, "M", 1, "Sec", -2),
          "J", Map.of("Kg", 1, "M", 2, "Sec", -2),
          "W", Map.of("Kg", 1, "M", 2, "Sec", -3),
          "Pa", Map.of("Kg", 1, "M", -1, "Sec", -2),
          "V", Map.of("Kg", 1, "M", 2, "Sec", -3, "A", -1),
          "Ohm", Map.of("Kg", 1, "M", 2, "Sec", -3, "A", -2));

  private static final Pattern SYMBOL = Pattern.compile("[A-Za-z]|[a-z][A-Z]");

  Dimension {
    powers = new TreeMap<>(powers);
  }

  private static Dimension ofWord(String word) {
    return new Dimension(new TreeMap<>(Map.of(word, 1)));
  }

  /// What a name ends in; empty when it names no unit, or is a symbol from a paper (`tC`).
  static Optional<Dimension> named(CharSequence name) {
    return SYMBOL.matcher(name).matches()
        ? Optional.empty()
        : UnitName.of(name.toString()).map(unit -> spelt(unit.exponents()));
  }

  private static Dimension spelt(Map<String, Integer> exponents) {
    SortedMap<String, Integer> powers = new TreeMap<>();
    exponents.forEach(
        (word, power) ->
            COHERENT
                .getOrDefault(word, Map.of(word, 1))
                .forEach((part, times) -> add(powers, part, power * times)));
    return new Dimension(powers);
  }

  private static void add(SortedMap<String, Integer> powers, String word, int power) {
    if (powers.merge(word, power, Integer::sum) == 0) {
      powers.remove(word);
    }
  }

  private boolean onScale() {
    return powers.keySet().stream()
        .flatMap(word -> UnitWord.of(word).stream())
        .anyMatch(word -> word.kind() == UnitWord.Kind.SCALE);
  }

  /// The product (or quotient, with `sign` -1); empty when a scale takes part.
  Optional<Dimension> times(Dimension other, int sign) {
    if (onScale() || other.onScale()) {
      return Optional.empty();
    }
    SortedMap<String, Integer> product = new TreeMap<>(powers);
    other.powers.forEach((word, power) -> add(product, word, sign * power));
    return Optional.of(new Dimension(product));
  }

  /// The power `half / 2`; empty when it would be broken or a scale takes part.
  Optional<Dimension> raised(int half) {
    if (onScale() || powers.values().stream().anyMatch(power -> power * half % 2 != 0)) {
      return Optional.empty();
    }
    SortedMap<String, Integer> raised = new TreeMap<>();
    powers.forEach((word, power) -> add(raised, word, power * half / 2));
    return Optional.of(new Dimension(raised));
  }

  /// What a sum is; empty when these do not add. C + K is C; C + C is nothing.
  Optional<Dimension> plus(Dimension other) {
    if (equals(K) && (other.equals(C) || other.equals(KELVIN))) {
      return Optional.of(other);
    }
    if ((equals(C) || equals(KELVIN)) && other.equals(K)) {
      return Optional.of(this);
    }
    if ((equals(C) && other.equals(KELVIN)) || (equals(KELVIN) && other.equals(C))) {
      return Optional.of(KELVIN);
    }
    boolean temperature = equals(C) || equals(KELVIN);
    return equals(other) && !temperature ? Optional.of(this) : Optional.empty();
  }

  /// What a difference is; empty when these do not subtract. C - C is K.
  Optional<Dimension> minus(Dimension other) {
    if (equals(other)) {
      return Optional.of(equals(C) || equals(KELVIN) ? K : this);
    }
    return (equals(C) || equals(KELVIN)) && other.equals(K) ? Optional.of(this) : Optional.empty();
  }

  @Override
  public String toString() {
    return powers.isEmpty()
        ? "[-]"
        : powers.entrySet().stream()
            .map(part -> part.getKey() + (part.getValue() == 1 ? "" : "^" + part.getValue()))
            .collect(Collectors.joining(" ", "[", "]"))
            .replace("Sec", "s")
            .replace("Kg", "kg")
            .strip();
  }
}
