package gylebook.reckon;

import gylebook.units.ReadingUnits;

/// Lines in plain words, asked in a metric household.
final class Lines {
  private Lines() {}

  static Asked asked(String line) {
    return Question.read(line, ReadingUnits.METRIC);
  }

  static Asked.Meant meant(String line) {
    return switch (asked(line)) {
      case Asked.Meant meant -> meant;
      case Asked.Unclear unclear -> throw new AssertionError(line + ": " + unclear.sentence());
    };
  }

  static Reckoning.Answer answer(String line) {
    Asked.Meant meant = meant(line);
    return switch (meant.calculation().reckon(meant.typed(), ReadingUnits.METRIC)) {
      case Reckoning.Answer answer -> answer;
      case Reckoning.Unanswered refused -> throw new AssertionError(refused.sentence());
    };
  }
}
