package gylebook.interchange;

import java.util.Arrays;
import java.util.stream.Collectors;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.exc.InvalidFormatException;
import tools.jackson.databind.exc.MismatchedInputException;
import tools.jackson.databind.exc.UnrecognizedPropertyException;

/// What is wrong with a JSON file, in words for who typed it and not for who wrote its reader.
final class BrokenJson {
  static final int MOST_DEPTH = 50;

  private BrokenJson() {}

  /// Of a text that is not whole JSON.
  static String plain(String said) {
    if (said.startsWith("Duplicate")) {
      return "the key " + said.replaceAll(".*?['\"](.*?)['\"].*", "'$1'") + " stands twice";
    }
    if (said.contains("Non-standard token") || said.contains("NaN")) {
      return "it holds a number that is none (NaN or infinity)";
    }
    if (said.contains("depth")) {
      return "it is nested deeper than " + MOST_DEPTH + " levels";
    }
    if (said.contains("end-of-input")) {
      return "it ends in the middle";
    }
    return "something stands where it must not";
  }

  /// Of whole JSON that is not what is expected there.
  static String plain(DatabindException wrong) {
    if (wrong.getCause() instanceof IllegalArgumentException ours && ours.getMessage() != null) {
      String line = ours.getMessage().lines().findFirst().orElse("");
      return line.endsWith(".") ? line.substring(0, line.length() - 1) : line;
    }
    if (wrong instanceof UnrecognizedPropertyException unknown) {
      return "nothing here is called '" + Refusal.shortened(unknown.getPropertyName()) + "'";
    }
    if (wrong instanceof InvalidFormatException format) {
      return "'"
          + Refusal.shortened(String.valueOf(format.getValue()))
          + "' is "
          + expected(format.getTargetType());
    }
    String said = String.valueOf(wrong.getOriginalMessage());
    if (said.contains("Null value") || said.contains("null") || said.contains("Missing")) {
      return "it is not there";
    }
    return wrong instanceof MismatchedInputException mismatched
        ? "what stands there is " + expected(mismatched.getTargetType())
        : "something stands where it must not";
  }

  private static String expected(Class<?> type) {
    if (type != null && type.isEnum()) {
      return "none of "
          + Arrays.stream(type.getEnumConstants())
              .map(String::valueOf)
              .collect(Collectors.joining(", "));
    }
    if (type == double.class || type == int.class || type == long.class) {
      return "no number";
    }
    if (type == boolean.class) {
      return "neither true nor false";
    }
    return type == String.class ? "no text" : "not what is expected there";
  }
}
