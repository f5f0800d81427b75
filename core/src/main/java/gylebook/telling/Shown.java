package gylebook.telling;

import gylebook.plan.Band;
import gylebook.plan.Note;
import gylebook.units.AnyUnit;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Unit;
import gylebook.units.UnitName;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/// Figures as a brewer reads them; the name of a figure says which unit it is in.
@AnyUnit("shows every quantity")
public final class Shown {
  private static final double SEC_PER_MIN = 60;
  private static final double CM_PER_M = 100;

  private final ReadingUnits units;

  /// Shows in these units.
  public Shown(ReadingUnits units) {
    this.units = units;
  }

  /// The unit in which a figure of this name is read, where it has one.
  public Optional<Unit> unit(String key) {
    return inside(key).map(unit -> units.unit(unit.quantity()));
  }

  private static Optional<Unit> inside(String key) {
    return UnitName.of(key).flatMap(UnitName::unit);
  }

  /// One value with its unit.
  public String value(String key, double value) {
    if (!Double.isFinite(value)) {
      return "none";
    }
    Optional<Unit> inside = inside(key);
    if (key.endsWith("Sec")) {
      return clock(value);
    }
    if (key.endsWith("LPerHr")) {
      return units.shown(Quantity.VOLUME, value) + "/h";
    }
    if (inside.isEmpty()) {
      String symbol = UnitName.of(key).map(UnitName::symbol).orElse("");
      return (String.format(Locale.ROOT, "%.3g", value) + " " + symbol).strip();
    }
    return units.shown(inside.get().quantity(), inside.get().toInside(value));
  }

  /// Low to high of a band.
  public String range(String key, Band band) {
    if (!Double.isFinite(band.low()) || !Double.isFinite(band.high())) {
      return "none";
    }
    String low = value(key, band.low());
    String high = value(key, band.high());
    int space = low.indexOf(' ');
    // "2.2 to 3.8 L": the unit once, where both are read in the same.
    boolean alike = space > 0 && high.endsWith(low.substring(space));
    return (alike ? low.substring(0, space) : low) + " to " + high;
  }

  /// A difference, with its sign, near a value.
  public String change(String key, double near, double change) {
    Optional<Unit> inside = inside(key);
    if (inside.isEmpty()) {
      return signed(change, 2) + " " + UnitName.of(key).map(UnitName::symbol).orElse("");
    }
    Unit reading = units.unit(inside.get().quantity());
    double from = reading.fromInside(inside.get().toInside(near));
    double to = reading.fromInside(inside.get().toInside(near + change));
    int decimals = Math.max(reading.decimals(), Math.abs(to - from) < 0.1 ? 3 : 1);
    return (signed(to - from, decimals) + " " + reading.symbol()).strip();
  }

  private static String signed(double value, int decimals) {
    return String.format(Locale.ROOT, "%+." + decimals + "f", value);
  }

  /// Hours and minutes: `3:05`.
  public static String clock(double sec) {
    long minutes = Math.round(sec / SEC_PER_MIN);
    return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
  }

  /// A sentence with its figures.
  public String sentence(List<Note> notes) {
    StringBuilder text = new StringBuilder();
    for (Note note : notes) {
      text.append(note.words());
      if (note.hasFigure()) {
        text.append(level(note));
      }
    }
    return text.toString();
  }

  /// Heights in a kettle are read in centimetres, whatever lengths are read in elsewhere.
  private String level(Note note) {
    double middle = note.band().middle();
    boolean small = note.key().endsWith("M") && Math.abs(middle) < 1;
    return small
        ? String.format(Locale.ROOT, "%.0f cm", middle * CM_PER_M)
        : value(note.key(), middle);
  }

  /// A share as odds in plain words: `3 days in 10`.
  public static String odds(double shareFrac) {
    if (shareFrac >= 0.995) {
      return "Almost every day";
    }
    if (shareFrac >= 0.15 && shareFrac < 0.95) {
      return Math.round(shareFrac * 10) + " days in 10";
    }
    long days = Math.max(1, Math.round(shareFrac * 100));
    return days == 1 ? "1 day in 100" : days + " days in 100";
  }
}
