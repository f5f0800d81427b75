package gylebook.terminal;

/// A day of the book that a rehearsal is played for: by its plan, its clock and its names.
public interface RehearsedDay {
  /// The name under which an instrument of that day is tied.
  String tiedAs(String instrument);

  /// The time by that day's own clock, since it began.
  double nowSec();

  /// Notes that a point of the day was reached, where the rehearsal goes on by itself.
  void reached(String milestone, double atSec);

  /// How many days its plan was made from.
  int plannedCount();

  /// The seed of its plan.
  long plannedSeed();
}
