package gylebook.units;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Reads one number out of typed text: decimal point or comma, grouped thousands, fractions.
@AnyUnit("reads numbers before their unit is known")
final class NumberText {
  private static final Map<Character, Double> FRACTIONS =
      Map.of(
          '½', 1.0 / 2,
          '¼', 1.0 / 4,
          '¾', 3.0 / 4,
          '⅓', 1.0 / 3,
          '⅔', 2.0 / 3,
          '⅛', 1.0 / 8,
          '⅜', 3.0 / 8,
          '⅝', 5.0 / 8,
          '⅞', 7.0 / 8);
  private static final String SIGN = "([+-]?) ?";
  private static final Pattern SLASH =
      Pattern.compile(SIGN + "(?:(\\d{1,6})([ -]))?(\\d{1,4})/(\\d{1,4})(?![\\d.,])");
  private static final Pattern SMALL = Pattern.compile(SIGN + "(?:(\\d{1,6})[ -]?)?([½¼¾⅓⅔⅛⅜⅝⅞])");
  private static final Pattern PLAIN =
      Pattern.compile(
          SIGN
              + "((?:\\d{1,3}(?:[ ']\\d{3})+(?!\\d)|\\d+)(?:[.,]\\d+)*|[.,]\\d+)(e[+-]?\\d{1,3})?(?![\\d])");
  private static final Pattern GROUPED_COMMA = Pattern.compile("[1-9]\\d{0,2}(,\\d{3})+");
  private static final Pattern GROUPED_POINT = Pattern.compile("[1-9]\\d{0,2}(\\.\\d{3})+");
  private static final Pattern ONE_COMMA = Pattern.compile("[1-9]\\d{0,2},\\d{3}");

  private NumberText() {}

  /// A number: its value, where it ends, its digits behind the point, and what else it may mean.
  record Found(double value, int end, int decimals, String text, boolean thousandsToo) {
    /// Whether it is written as a fraction: `3/4`, `½`.
    boolean fraction() {
      return text.chars().anyMatch(c -> c == '/' || FRACTIONS.containsKey((char) c));
    }
  }

  /// The number that begins at a place.
  static Optional<Found> at(String text, int start) {
    Matcher slash = SLASH.matcher(text).region(start, text.length());
    if (slash.lookingAt() && mixed(slash)) {
      return fraction(slash, number(slash.group(4)) / number(slash.group(5)));
    }
    Matcher small = SMALL.matcher(text).region(start, text.length());
    if (small.lookingAt()) {
      Double part = FRACTIONS.get(small.group(3).charAt(0));
      return part == null ? Optional.empty() : fraction(small, part);
    }
    Matcher plain = PLAIN.matcher(text).region(start, text.length());
    return plain.lookingAt() ? plain(plain) : Optional.empty();
  }

  /// `1-1/2` is one and a half; `4-6/2` is nothing that anybody measures out.
  private static boolean mixed(Matcher slash) {
    return !"-".equals(slash.group(3)) || number(slash.group(4)) < number(slash.group(5));
  }

  private static Optional<Found> fraction(Matcher found, double part) {
    double whole = found.group(2) == null ? 0 : number(found.group(2));
    double value = whole + part;
    if (!Double.isFinite(value)) {
      return Optional.empty();
    }
    return Optional.of(
        new Found(signed(found.group(1), value), found.end(), 0, found.group(), false));
  }

  private static Optional<Found> plain(Matcher found) {
    String digits = found.group(2).replace(" ", "").replace("'", "");
    Optional<String> normal = normal(digits);
    if (normal.isEmpty()) {
      return Optional.empty();
    }
    String power = found.group(3) == null ? "" : found.group(3);
    double value = number(normal.get() + power);
    int point = normal.get().indexOf('.');
    int decimals = point < 0 ? 0 : normal.get().length() - point - 1;
    boolean both = ONE_COMMA.matcher(digits).matches() && power.isEmpty();
    return Optional.of(
        new Found(signed(found.group(1), value), found.end(), decimals, found.group(), both));
  }

  /// The digits with one decimal point and no groups; empty when the separators make no sense.
  private static Optional<String> normal(String digits) {
    int commas = count(digits, ',');
    int points = count(digits, '.');
    if (commas + points <= 1) {
      return Optional.of(digits.replace(',', '.'));
    }
    if (commas == 0 || points == 0) {
      Pattern groups = commas == 0 ? GROUPED_POINT : GROUPED_COMMA;
      return groups.matcher(digits).matches()
          ? Optional.of(digits.replace(",", "").replace(".", ""))
          : Optional.empty();
    }
    char decimal = digits.lastIndexOf('.') > digits.lastIndexOf(',') ? '.' : ',';
    int at = digits.lastIndexOf(decimal);
    String whole = digits.substring(0, at);
    Pattern groups = decimal == '.' ? GROUPED_COMMA : GROUPED_POINT;
    return groups.matcher(whole).matches()
        ? Optional.of(whole.replace(",", "").replace(".", "") + "." + digits.substring(at + 1))
        : Optional.empty();
  }

  private static int count(String text, char wanted) {
    return (int) text.chars().filter(c -> c == wanted).count();
  }

  private static double signed(String sign, double value) {
    return sign.equals("-") ? -value : value;
  }

  private static double number(String digits) {
    return Double.parseDouble(digits);
  }
}
