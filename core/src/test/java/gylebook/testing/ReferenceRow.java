package gylebook.testing;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// One published (or openly computed) value: what is asked, from what, what comes out, who says so.
public record ReferenceRow(
    String id,
    String quantity,
    String inputs,
    String expected,
    String unit,
    String tolerance,
    String source,
    String provenance) {

  /// What kind of value it is: the words before the colon.
  public String kind() {
    int colon = quantity.indexOf(':');
    return (colon < 0 ? quantity : quantity.substring(0, colon)).strip();
  }

  /// The words behind the colon, or nothing.
  public String detail() {
    int colon = quantity.indexOf(':');
    return colon < 0 ? "" : quantity.substring(colon + 1).strip();
  }

  /// The number that stands behind `name=` in the inputs.
  public double number(String name) {
    Matcher found =
        Pattern.compile(
                "(?<![A-Za-z0-9_.])"
                    + Pattern.quote(name)
                    + "\\s*=\\s*([-+]?[0-9.]+(?:[eE][-+]?[0-9]+)?)")
            .matcher(inputs);
    if (!found.find()) {
      throw new AssertionError(id + " has no input '" + name + "' in: " + inputs);
    }
    return Double.parseDouble(found.group(1));
  }

  /// Whether `name=` stands in the inputs.
  public boolean has(String name) {
    return Pattern.compile("(?<![A-Za-z0-9_.])" + Pattern.quote(name) + "\\s*=")
        .matcher(inputs)
        .find();
  }

  /// The text behind `name=` up to the next semicolon.
  public String text(String name) {
    Matcher found =
        Pattern.compile("(?<![A-Za-z0-9_.])" + Pattern.quote(name) + "\\s*=\\s*([^;]+)")
            .matcher(inputs);
    if (!found.find()) {
      throw new AssertionError(id + " has no input '" + name + "' in: " + inputs);
    }
    return found.group(1).strip();
  }

  /// The value expected.
  public double expectedNumber() {
    return Double.parseDouble(expected);
  }

  /// How far off a result may be, in the row's unit; a tolerance in per cent is of the value.
  public double toleranceNumber() {
    if (tolerance.endsWith("%")) {
      return Math.abs(expectedNumber())
          * Double.parseDouble(tolerance.substring(0, tolerance.length() - 1).strip())
          / 100;
    }
    return Double.parseDouble(tolerance);
  }
}
