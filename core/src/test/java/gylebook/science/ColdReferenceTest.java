package gylebook.science;

import gylebook.testing.Checks;
import gylebook.testing.ReferenceRow;
import gylebook.testing.ReferenceRows;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/// The rows of the cold side's table, each with its source beside it. Chilling is asked elsewhere.
class ColdReferenceTest {
  @TestFactory
  Stream<DynamicTest> everyRowOfOurKindsIsAnswered() {
    return checks()
        .tests(
            ReferenceRows.of("cold-side.csv").stream()
                .filter(row -> !row.id().startsWith("CH-"))
                .toList());
  }

  /// What answers these kinds; also for other tables that ask the same kinds.
  static Checks checks() {
    Checks checks = new Checks();
    ColdBeerChecks.add(checks);
    ColdFermentChecks.add(checks);
    ColdServeChecks.add(checks);
    ColdSafetyChecks.add(checks);
    return checks;
  }

  /// The number that a pattern's first group finds in the inputs.
  static double found(ReferenceRow row, String pattern) {
    return foundIn(row.inputs(), pattern);
  }

  /// The number that a pattern's first group finds in a text.
  static double foundIn(String text, String pattern) {
    Matcher found = Pattern.compile(pattern).matcher(text);
    if (!found.find()) {
      throw new AssertionError("no " + pattern + " in: " + text);
    }
    return Double.parseDouble(found.group(1));
  }
}
