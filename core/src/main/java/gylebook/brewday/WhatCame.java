package gylebook.brewday;

import gylebook.estimate.FaceValue;
import gylebook.estimate.Instrument;
import gylebook.estimate.Reading;
import gylebook.journal.Event;
import gylebook.rig.Probe;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Typed;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/// What came on a day, from its notes alone: a forecast is never held against itself.
///
/// A time is that of the tick; warmth, litres and strengths are what was read near the point, as
/// [FaceValue] has it. Of several readings the surest counts, of those alike the nearest. How near
/// is our judgement: what drifts from the point to the reading is to be less than the instrument's
/// own doubt.
@AnyUnit("what was foreseen names the unit")
final class WhatCame {
  /// How sharply a brewer sees that something is reached; as the belief assumes of the boil.
  static final double TICKED_SEC = 45;

  private static final double MIN_SEC = 60;
  private static final double DAY_SEC = 86_400;

  /// Of litres read off a fermenter's marks, as for the sugar that primes them: a habit, no source.
  private static final double MARKS_DOUBT_RATIO = 0.03;

  private static final String CAST = "cast";
  private static final String BOIL = "boilReached";

  private final Instant began;
  private final List<Instrument> instruments;
  private final Map<String, DayNote> tickByPoint = new TreeMap<>();
  private final List<DayNote> readings = new ArrayList<>();

  /// @param happened what stands of the notes, in the order it happened
  /// @param instruments what can be read on the rig
  WhatCame(Instant began, List<DayNote> happened, List<Instrument> instruments) {
    this.began = began;
    this.instruments = List.copyOf(instruments);
    for (DayNote note : happened) {
      switch (note.event()) {
        case Event.PointReached(String point) -> tickByPoint.putIfAbsent(point, note);
        case Event.ReadingTaken _ -> readings.add(note);
        default -> {}
      }
    }
  }

  /// Whether a brewer waits for a point, and neither a clock nor their own hands make it come.
  static boolean waitedFor(String point) {
    return point.startsWith("toRest.")
        || point.startsWith("standAt.")
        || List.of("strikeReady", BOIL, "chilled", CAST).contains(point);
  }

  /// What came of a number that was foreseen; empty when nobody saw it.
  Optional<Came> of(String point, String key) {
    if (key.equals(Foreseen.AT)) {
      return waitedFor(point)
          ? tick(point).map(note -> new Came(note.seq(), "", sec(note), TICKED_SEC))
          : Optional.empty();
    }
    return point.equals(Foreseen.DAY) ? ofDay(key) : at(point, key);
  }

  private Optional<Came> ofDay(String key) {
    return switch (key) {
      case "firstWortPlato" -> {
        String rest = lastRest();
        yield strength(from(rest, -3 * MIN_SEC), from(DayOrder.BAG_OUT, -1), tick(rest));
      }
      case "preBoilPlato" ->
          strength(from(DayOrder.BAG_OUT, 0), from(BOIL, 5 * MIN_SEC), tick(BOIL));
      case "strengthPlato" -> strength(from(CAST, 0), from(CAST, DAY_SEC), tick(CAST));
      case "castC" -> chilled();
      case "fermenterL" -> inFermenter();
      default -> Optional.empty();
    };
  }

  private String lastRest() {
    return tickByPoint.values().stream()
        .filter(
            note -> note.event() instanceof Event.PointReached(String key) && DayOrder.inRest(key))
        .max(Comparator.comparing(DayNote::at))
        .map(note -> ((Event.PointReached) note.event()).milestone())
        .orElse("");
  }

  private Optional<Came> at(String point, String key) {
    double before = point.equals("rest.0") ? 10 * MIN_SEC : 3 * MIN_SEC;
    double afterSec = point.equals("settled") ? 5 * MIN_SEC : 2 * MIN_SEC;
    return switch (key) {
      case "grainC" ->
          warmth(Probe.Place.BED, from(point, -before), from(point, afterSec), tick(point));
      case "wortC" ->
          warmth(
              Probe.Place.KETTLE, from(point, -3 * MIN_SEC), from(point, 2 * MIN_SEC), tick(point));
      case "hotL" -> {
        // With the bag in, the grain stands in the litres.
        double earlySec = point.equals(DayOrder.BAG_OUT) ? 0 : 2 * MIN_SEC;
        yield litres(from(point, -earlySec), from(point, 5 * MIN_SEC), tick(point));
      }
      case "wortPlato" -> strength(from(point, -2 * MIN_SEC), from(CAST, -MIN_SEC), tick(point));
      default -> Optional.empty();
    };
  }

  private Optional<DayNote> tick(String point) {
    return Optional.ofNullable(tickByPoint.get(point));
  }

  private double sec(DayNote note) {
    return Telling.sec(began, note.at());
  }

  /// So long after a point; NaN, which nothing is before or after, when nobody ticked it off.
  private double from(String point, double bySec) {
    return tick(point).map(note -> sec(note) + bySec).orElse(Double.NaN);
  }

  private Optional<Came> warmth(
      Probe.Place place, double fromSec, double toSec, Optional<DayNote> near) {
    return read(Instrument.Measures.TEMPERATURE, place, fromSec, toSec, near);
  }

  private Optional<Came> litres(double fromSec, double toSec, Optional<DayNote> near) {
    return read(Instrument.Measures.HOT_VOLUME, Probe.Place.KETTLE, fromSec, toSec, near);
  }

  private Optional<Came> strength(double fromSec, double toSec, Optional<DayNote> near) {
    return read(Instrument.Measures.STRENGTH, Probe.Place.KETTLE, fromSec, toSec, near);
  }

  /// One reading that may say what came.
  private record Candidate(Came came, double awaySec) {}

  private Optional<Came> read(
      Instrument.Measures measures,
      Probe.Place place,
      double fromSec,
      double toSec,
      Optional<DayNote> near) {
    List<Candidate> all = new ArrayList<>();
    for (DayNote note : readings) {
      double atSec = sec(note);
      boolean inTime = atSec >= fromSec && atSec <= toSec;
      if (inTime && note.event() instanceof Event.ReadingTaken taken && near.isPresent()) {
        double awaySec = Math.abs(atSec - sec(near.get()));
        came(note, taken, measures, place).ifPresent(c -> all.add(new Candidate(c, awaySec)));
      }
    }
    return best(all);
  }

  private static Optional<Came> best(List<Candidate> all) {
    return all.stream()
        .min(
            Comparator.comparingDouble((Candidate one) -> one.came().doubt())
                .thenComparingDouble(Candidate::awaySec))
        .map(Candidate::came);
  }

  private Optional<Came> came(
      DayNote note, Event.ReadingTaken taken, Instrument.Measures measures, Probe.Place place) {
    boolean strength = measures == Instrument.Measures.STRENGTH;
    if (strength && !taken.mixed()) {
      // A poor sample of the whole.
      return Optional.empty();
    }
    return instruments.stream()
        .filter(one -> one.name().equals(taken.instrument()) && one.measures() == measures)
        .findFirst()
        .flatMap(
            one ->
                AsRead.reading(one, taken, sec(note))
                    .filter(read -> strength || read.place() == place)
                    .map(read -> came(note, one, read)));
  }

  private static Came came(DayNote note, Instrument instrument, Reading reading) {
    FaceValue face = FaceValue.of(instrument, reading);
    return new Came(note.seq(), instrument.name(), face.value(), face.doubt());
  }

  /// The wort as it runs into the fermenter: at the chiller's end, or in a kettle that was chilled.
  private Optional<Came> chilled() {
    List<Candidate> all = new ArrayList<>();
    double fromSec = from("knockOut", 0);
    double toSec = from(CAST, 2 * MIN_SEC);
    for (DayNote note : readings) {
      boolean inTime = sec(note) >= fromSec && sec(note) <= toSec;
      if (inTime && note.event() instanceof Event.ReadingTaken taken) {
        chilled(note, taken).ifPresent(came -> all.add(new Candidate(came, toSec - sec(note))));
      }
    }
    return best(all)
        .or(() -> warmth(Probe.Place.KETTLE, from("chilled", -MIN_SEC), toSec, tick("chilled")));
  }

  /// The wort in the fermenter, by its marks: the last that was read, for more may run in after.
  private Optional<Came> inFermenter() {
    double fromSec = from(CAST, -10 * MIN_SEC);
    double toSec = from(CAST, DAY_SEC);
    Optional<Came> last = Optional.empty();
    for (DayNote note : readings) {
      boolean inTime = sec(note) >= fromSec && sec(note) <= toSec;
      if (inTime
          && note.event() instanceof Event.ReadingTaken taken
          && taken.instrument().equals(Sighting.IN_FERMENTER.says())
          && Typed.parse(taken.asRead(), Quantity.VOLUME.inside())
              instanceof Typed.Read(Entered read)) {
        double volumeL = read.inside();
        double doubtL = MARKS_DOUBT_RATIO * volumeL;
        last = Optional.of(new Came(note.seq(), taken.instrument(), volumeL, doubtL));
      }
    }
    return last;
  }

  /// By a thermometer that was carried there, of which no more is known than of the one at hand.
  private Optional<Came> chilled(DayNote note, Event.ReadingTaken taken) {
    boolean named = taken.instrument().equals(Sighting.CHILLED.says());
    if (!named
        || !(Typed.parse(taken.asRead(), Quantity.TEMPERATURE.inside())
            instanceof Typed.Read(Entered read))) {
      return Optional.empty();
    }
    return instruments.stream()
        .filter(one -> one.role() == Instrument.Role.CARRIED)
        .filter(one -> one.measures() == Instrument.Measures.TEMPERATURE)
        .findFirst()
        .map(
            one -> {
              Reading reading =
                  Reading.temperature(one.name(), Probe.Place.KETTLE, read.inside(), sec(note));
              Came at = came(note, one, reading);
              return new Came(at.seq(), taken.instrument(), at.value(), at.doubt());
            });
  }
}
