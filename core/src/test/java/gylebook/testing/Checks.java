package gylebook.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;

/// What answers the rows of a reference table: by the kind of the row, or by its id where one kind
/// needs several.
public final class Checks {
  /// Answers one row with a number in the row's unit.
  @FunctionalInterface
  public interface Answer {
    double to(ReferenceRow row);
  }

  /// Answers one row with text (bytes, lists).
  @FunctionalInterface
  public interface Words {
    String to(ReferenceRow row);
  }

  private final Map<String, Answer> answers = new HashMap<>();
  private final Map<String, Words> words = new HashMap<>();

  /// Registers what answers every row of a kind (or the row of one id).
  public Checks kind(String kindOrId, Answer answer) {
    if (answers.put(kindOrId, answer) != null || words.containsKey(kindOrId)) {
      throw new AssertionError("two answers for " + kindOrId);
    }
    return this;
  }

  /// The same for rows whose value is text.
  public Checks words(String kindOrId, Words answer) {
    if (words.put(kindOrId, answer) != null || answers.containsKey(kindOrId)) {
      throw new AssertionError("two answers for " + kindOrId);
    }
    return this;
  }

  /// Whether some answer claims the row.
  public boolean claims(ReferenceRow row) {
    return Stream.of(row.id(), row.kind())
        .anyMatch(key -> answers.containsKey(key) || words.containsKey(key));
  }

  /// A test a row; a row that nothing answers fails.
  public Stream<DynamicTest> tests(List<ReferenceRow> rows) {
    return rows.stream()
        .map(row -> DynamicTest.dynamicTest(row.id() + " " + row.quantity(), () -> check(row)));
  }

  private void check(ReferenceRow row) {
    String key =
        answers.containsKey(row.id()) || words.containsKey(row.id()) ? row.id() : row.kind();
    if (words.containsKey(key)) {
      assertThat(words.get(key).to(row)).as(row.toString()).isEqualTo(row.expected());
      return;
    }
    Answer answer = answers.get(key);
    assertThat(answer).as("nothing answers " + row).isNotNull();
    assertThat(answer.to(row))
        .as(row.toString())
        .isCloseTo(row.expectedNumber(), within(row.toleranceNumber() * (1 + 1e-9) + 1e-15));
  }
}
