package gylebook.tidy;

import java.util.List;
import java.util.Locale;
import java.util.Set;

/// The words a unit is spelt with at the end of a name, with at most one `Per`.
final class UnitWords {
  /// Pure numbers.
  static final Set<String> BARE = Set.of("Frac", "Ratio", "Factor", "Number", "Count");

  private static final Set<String> UNITS =
      Set.of(
          "Kg",
          "G",
          "Mg",
          "L",
          "Ml",
          "M",
          "Mm",
          "Cm",
          "Us",
          "Sec",
          "Min",
          "Hr",
          "Day",
          "J",
          "W",
          "K",
          "Kpa",
          "Pa",
          "N",
          "Mol",
          "Mmol",
          "Meq",
          "C",
          "F",
          "Plato",
          "Sg",
          "Ebc",
          "Srm",
          "Lovibond",
          "Ph",
          "Kelvin",
          "V",
          "A",
          "Ohm",
          "Mv",
          "Kj",
          "Kwh",
          "Hz");

  /// Scales with a shifted or an empirical zero: they are never multiplied out.
  static final Set<String> SCALES =
      Set.of("C", "F", "Plato", "Sg", "Ebc", "Srm", "Lovibond", "Ph", "Kelvin");

  private UnitWords() {}

  /// The unit words at the end of a name, `Per` included; none when it names no unit.
  static List<String> tail(CharSequence name) {
    String text = name.toString();
    if (text.length() < 2 || text.matches("[a-z][A-Z]")) {
      return List.of(); // a symbol from a paper
    }
    if (text.matches("[A-Z][A-Z0-9_]*")) {
      text = Dimension.camel(text);
    }
    List<String> words = List.of(text.split("(?=[A-Z])", -1));
    int origin = words.lastIndexOf("From");
    if (origin > 0) { // `platoFromSg` is in Plato
      List<String> before = tail(String.join("", words.subList(0, origin)));
      if (!before.isEmpty()) {
        return before;
      }
    }
    int from = words.size();
    while (from > 0 && (known(words.get(from - 1)) || words.get(from - 1).equals("Per"))) {
      from--;
      if (SCALES.contains(words.get(from)) && (from == 0 || !words.get(from - 1).equals("Per"))) {
        break; // a scale is not multiplied
      }
      if (from + 1 < words.size()
          && SCALES.contains(words.get(from + 1))
          && !words.get(from).equals("Per")) {
        from++;
        break;
      }
    }
    if (from == 1 && begins(words.getFirst())) {
      words = new java.util.ArrayList<>(words);
      words.set(0, capital(words.getFirst()));
      from = 0;
    }
    List<String> tail = words.subList(from, words.size());
    long per = tail.stream().filter("Per"::equals).count();
    boolean dangling = !tail.isEmpty() && tail.getLast().equals("Per");
    return per > 1 || dangling ? List.of() : List.copyOf(tail);
  }

  private static boolean known(String word) {
    String plain = word.replaceAll("(?<=.)[23]$", "");
    return UNITS.contains(plain) || BARE.contains(plain);
  }

  /// Whether a name may begin with its unit, as `ratio` and `kelvin` do; `min` is the lesser of
  /// two.
  private static boolean begins(String word) {
    boolean longer = word.length() > 2 && !word.equals("min");
    return (longer || word.equals("sg") || word.equals("ph")) && known(capital(word));
  }

  private static String capital(String word) {
    return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }
}
