package gylebook.journal;

/// What happened. Past tense and immutable; kept for ever, so a name on disk never changes.
public sealed interface Event {

  /// A page of the book was opened for one gyle.
  ///
  /// @param name what the brewer calls it
  /// @param invented whether it is there to look round with
  record GyleOpened(String name, boolean invented) implements Event {}

  /// A recipe was written down, whole; it stands in place of the one before.
  ///
  /// @param document the recipe in the form of our own files
  /// @param because what was changed, in words; for the line that offers to undo it
  record RecipeKept(String document, String because) implements Event {}

  /// A rig was written down, whole; it stands in place of the one before.
  ///
  /// @param document the rig in the form of our own files
  /// @param because what was changed, in words
  record RigKept(String document, String because) implements Event {}

  /// A plan was made the plan of the day. The same engine computes it again from what is pinned
  /// here; what it said is kept as text, because engines change.
  ///
  /// @param recipeSeq entry of the recipe it was made of
  /// @param rigSeq entry of the rig it was made for
  /// @param engine revision of the model that made it
  /// @param seed of the draws
  /// @param days how many days were simulated
  /// @param report what the plan said, as the brewer read it
  record PlanFixed(long recipeSeq, long rigSeq, String engine, long seed, int days, String report)
      implements Event {}

  /// Somebody likes to read a quantity in this unit, or everything in this set.
  ///
  /// @param quantity the quantity's name; empty when a whole set was chosen
  /// @param symbol the unit's symbol, or the set's name
  record UnitsChosen(String quantity, String symbol) implements Event {}

  /// An instrument was tied to the house, from where its readings come; a tie under the same name
  /// stands in place of the one before.
  ///
  /// @param name what the brewer calls the instrument
  /// @param place where it sits, in the brewer's words
  /// @param document how it is reached and what it measures, in our own form
  record InstrumentTied(String name, String place, String document) implements Event {}

  /// An instrument is listened to no longer; its readings stay.
  record InstrumentLoosed(String name) implements Event {}

  /// The day began: cold liquor stands in the kettle.
  ///
  /// @param planSeq entry of the plan it is brewed by
  record DayStarted(long planSeq) implements Event {}

  /// A day began for practice: a hidden rig is brewed on, nothing is heated. A page with such a day
  /// never holds a real one.
  ///
  /// @param planSeq entry of the plan it is brewed by
  /// @param seed of everything that is hidden
  /// @param pace how many times faster than life the day's own clock goes
  record PracticeStarted(long planSeq, long seed, int pace) implements Event {}

  /// A point of the day was seen to be reached.
  ///
  /// @param milestone its name in the plan: `boilReached`
  record PointReached(String milestone) implements Event {}

  /// An instrument was read.
  ///
  /// @param instrument what the brewer calls it
  /// @param place where its tip, or the sample, was: `BED`
  /// @param mixed whether the wort was stirred or pumped round before
  /// @param asRead what it showed, unit and all: `66.2 °C`
  /// @param sampleAsRead temperature of the sample, unit and all; empty when it does not matter
  record ReadingTaken(
      String instrument, String place, boolean mixed, String asRead, String sampleAsRead)
      implements Event {}

  /// Something was switched otherwise than planned, or back.
  ///
  /// @param what heater, pump or lid
  /// @param state what it is now: `40 %`, `on`, `off`; empty when it is as planned again
  record SwitchSet(String what, String state) implements Event {}

  /// Something happened that no instrument shows.
  ///
  /// @param kind its short name
  /// @param words as the brewer said it
  record WordSaid(String kind, String words) implements Event {}

  /// A screen was taken to the kettle: its hands count from now on, the others watch.
  ///
  /// @param screen the name the screen gave itself
  /// @param called what people call it
  record KettleTaken(String screen, String called) implements Event {}

  /// A way to put the day right was taken: the day goes on by another plan, which stands beside the
  /// one that was fixed.
  ///
  /// @param says what is done otherwise, as the brewer read it
  /// @param document the same as data, and what is wanted from then on, in our own form
  record PlanChanged(String says, String document) implements Event {}

  /// What was forecast of a gyle, as it was given; kept as numbers, because engines change. It is
  /// written by the program itself, on a page of its own, so that it comes in nobody's way.
  ///
  /// @param gyleId the gyle it is about
  /// @param afterSeq the entry it was given after: a plan that was fixed, or a point that was
  ///   reached
  /// @param document the numbers, in our own form
  record ForecastGiven(String gyleId, long afterSeq, String document) implements Event {}

  /// An earlier entry counts no longer. It stays in the book, struck through.
  ///
  /// @param undoneSeq the entry that is struck
  record Undone(long undoneSeq) implements Event {}
}
