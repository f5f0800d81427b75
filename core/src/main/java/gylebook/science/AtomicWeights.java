package gylebook.science;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Molar masses from formulas, with the abridged standard atomic weights.
public final class AtomicWeights {
  private static final Map<String, Double> WEIGHTS =
      Map.ofEntries(
          Map.entry("H", 1.008),
          Map.entry("C", 12.011),
          Map.entry("N", 14.007),
          Map.entry("O", 15.999),
          Map.entry("Na", 22.990),
          Map.entry("Mg", 24.305),
          Map.entry("P", 30.974),
          Map.entry("S", 32.06),
          Map.entry("Cl", 35.45),
          Map.entry("K", 39.098),
          Map.entry("Ca", 40.078));

  private static final Pattern PART = Pattern.compile("([A-Z][a-z]?|\\(([^()]+)\\))(\\d*)");
  private static final Pattern PORTION = Pattern.compile("(\\d*)(.+)");

  private AtomicWeights() {}

  /// Molar mass of a formula such as `CaCl2.2H2O` or `Ca(OH)2`.
  ///
  /// Knows the elements of brewing salts and acids (H C N O Na Mg P S Cl K Ca); refuses others.
  @Source(key = "iupac-weights", at = "abridged table", trust = Trust.READ)
  @Reckoned(
      name = "molar-mass",
      says = "The molar mass of a salt or an acid from its formula.",
      equation = "M = sum n A",
      range = "elements H C N O Na Mg P S Cl K Ca")
  public static double molarGPerMol(String formula) {
    double sum = 0;
    for (String portion : formula.strip().split("[.*]", -1)) {
      Matcher counted = PORTION.matcher(portion);
      if (!counted.matches()) {
        throw unknown(formula);
      }
      sum += count(counted.group(1)) * unitGPerMol(counted.group(2), formula);
    }
    return sum;
  }

  private static double unitGPerMol(String portion, String formula) {
    Matcher part = PART.matcher(portion);
    double sum = 0;
    int end = 0;
    while (part.lookingAt()) {
      String group = part.group(2);
      double weight =
          group == null ? weightGPerMol(part.group(1), formula) : unitGPerMol(group, formula);
      sum += weight * count(part.group(3));
      end = part.end();
      part.region(end, portion.length());
    }
    if (end != portion.length()) {
      throw unknown(formula);
    }
    return sum;
  }

  private static double weightGPerMol(String symbol, String formula) {
    Double weight = WEIGHTS.get(symbol);
    if (weight == null) {
      throw unknown(formula);
    }
    return weight;
  }

  private static int count(String digits) {
    return digits.isEmpty() ? 1 : Integer.parseInt(digits);
  }

  private static IllegalArgumentException unknown(String formula) {
    return new IllegalArgumentException(
        "formula is '" + formula + "'; it must be made of H C N O Na Mg P S Cl K Ca.");
  }
}
