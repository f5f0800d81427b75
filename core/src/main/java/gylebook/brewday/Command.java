package gylebook.brewday;

import gylebook.journal.Event;

/// What somebody wants to do to the book.
public sealed interface Command {

  /// Open a page for a gyle, with its recipe and its rig.
  ///
  /// @param name what the brewer calls it
  /// @param invented whether it is there to look round with
  /// @param recipe document of the recipe
  /// @param rig document of the rig
  record OpenGyle(String name, boolean invented, String recipe, String rig) implements Command {}

  /// Write the recipe down anew.
  ///
  /// @param document the whole recipe
  /// @param because what was changed, in words
  record KeepRecipe(String document, String because) implements Command {}

  /// Write the rig down anew.
  ///
  /// @param document the whole rig
  /// @param because what was changed, in words
  record KeepRig(String document, String because) implements Command {}

  /// Make the plan of recipe and rig, as they stand, the plan of the day.
  ///
  /// @param engine revision of the model
  /// @param seed of the draws
  /// @param days how many are simulated
  /// @param report what the plan says, as the brewer reads it
  record FixPlan(String engine, long seed, int days, String report) implements Command {}

  /// Read a quantity in a unit, or everything in a set.
  ///
  /// @param quantity the quantity's name; empty for a whole set
  /// @param symbol the unit's symbol, or the set's name
  record ChooseUnits(String quantity, String symbol) implements Command {}

  /// Listen to an instrument from now on.
  ///
  /// @param name what the brewer calls it
  /// @param place where it sits, in the brewer's words
  /// @param document how it is reached and what it measures
  record TieInstrument(String name, String place, String document) implements Command {}

  /// Listen to an instrument no longer.
  record LooseInstrument(String name) implements Command {}

  /// Strike the last change of recipe or rig that stands.
  record Undo() implements Command {}

  /// Begin the day by the plan that is fixed.
  record StartDay() implements Command {}

  /// Begin a day for practice by the plan that is fixed.
  ///
  /// @param seed of everything that is hidden
  /// @param pace how many times faster than life
  record StartPractice(long seed, int pace) implements Command {}

  /// Say that a point of the day is reached.
  ///
  /// @param milestone its name in the plan
  record Reach(String milestone) implements Command {}

  /// Note what an instrument showed.
  ///
  /// @param reading as it is kept
  record Note(Event.ReadingTaken reading) implements Command {}

  /// Note what is switched otherwise than planned.
  ///
  /// @param what heater, pump or lid
  /// @param state what it is now; empty when it is as planned again
  record Switch(String what, String state) implements Command {}

  /// Note something that happened.
  ///
  /// @param kind its short name
  /// @param words as the brewer said it
  record Say(String kind, String words) implements Command {}

  /// Let a screen be the one at the kettle.
  ///
  /// @param screen the name the screen gave itself
  /// @param called what people call it
  record TakeKettle(String screen, String called) implements Command {}

  /// Take a way to put the day right.
  ///
  /// @param says what is done otherwise, in the brewer's words
  /// @param document the same as data
  record ChangePlan(String says, String document) implements Command {}

  /// Keep what was forecast of a gyle.
  ///
  /// @param gyleId the gyle it is about
  /// @param afterSeq the plan or the point it was given after
  /// @param document the numbers
  record KeepForecast(String gyleId, long afterSeq, String document) implements Command {}

  /// Strike one entry of the day; it stays in the book, struck through.
  ///
  /// @param seq the entry
  record Strike(long seq) implements Command {}
}
