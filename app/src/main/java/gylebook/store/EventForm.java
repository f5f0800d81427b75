package gylebook.store;

import gylebook.journal.Event;
import java.util.Arrays;
import java.util.Optional;

/// How each event is named in the file. A name is chosen once and kept for ever; a changed form
/// gets a new version, and the old one is lifted when it is read.
enum EventForm {
  GYLE_OPENED("gyle-opened", 1, Event.GyleOpened.class),
  RECIPE_KEPT("recipe-kept", 1, Event.RecipeKept.class),
  RIG_KEPT("rig-kept", 1, Event.RigKept.class),
  PLAN_FIXED("plan-fixed", 1, Event.PlanFixed.class),
  UNITS_CHOSEN("units-chosen", 1, Event.UnitsChosen.class),
  INSTRUMENT_TIED("instrument-tied", 1, Event.InstrumentTied.class),
  INSTRUMENT_LOOSED("instrument-loosed", 1, Event.InstrumentLoosed.class),
  DAY_STARTED("day-started", 1, Event.DayStarted.class),
  PRACTICE_STARTED("practice-started", 1, Event.PracticeStarted.class),
  POINT_REACHED("point-reached", 1, Event.PointReached.class),
  READING_TAKEN("reading-taken", 1, Event.ReadingTaken.class),
  SWITCH_SET("switch-set", 1, Event.SwitchSet.class),
  WORD_SAID("word-said", 1, Event.WordSaid.class),
  KETTLE_TAKEN("kettle-taken", 1, Event.KettleTaken.class),
  PLAN_CHANGED("plan-changed", 1, Event.PlanChanged.class),
  FORECAST_GIVEN("forecast-given", 1, Event.ForecastGiven.class),
  UNDONE("undone", 1, Event.Undone.class);

  private final String type;
  private final int version;
  private final Class<? extends Event> form;

  EventForm(String type, int version, Class<? extends Event> form) {
    this.type = type;
    this.version = version;
    this.form = form;
  }

  String type() {
    return type;
  }

  int version() {
    return version;
  }

  Class<? extends Event> form() {
    return form;
  }

  /// The form of an event; the switch does not compile until a new event has one.
  static EventForm of(Event event) {
    return switch (event) {
      case Event.GyleOpened _ -> GYLE_OPENED;
      case Event.RecipeKept _ -> RECIPE_KEPT;
      case Event.RigKept _ -> RIG_KEPT;
      case Event.PlanFixed _ -> PLAN_FIXED;
      case Event.UnitsChosen _ -> UNITS_CHOSEN;
      case Event.InstrumentTied _ -> INSTRUMENT_TIED;
      case Event.InstrumentLoosed _ -> INSTRUMENT_LOOSED;
      case Event.DayStarted _ -> DAY_STARTED;
      case Event.PracticeStarted _ -> PRACTICE_STARTED;
      case Event.PointReached _ -> POINT_REACHED;
      case Event.ReadingTaken _ -> READING_TAKEN;
      case Event.SwitchSet _ -> SWITCH_SET;
      case Event.WordSaid _ -> WORD_SAID;
      case Event.KettleTaken _ -> KETTLE_TAKEN;
      case Event.PlanChanged _ -> PLAN_CHANGED;
      case Event.ForecastGiven _ -> FORECAST_GIVEN;
      case Event.Undone _ -> UNDONE;
    };
  }

  static Optional<EventForm> of(String type, int version) {
    return Arrays.stream(values())
        .filter(form -> form.type.equals(type) && form.version == version)
        .findFirst();
  }
}
