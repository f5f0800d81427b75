package gylebook.telling;

import gylebook.plan.Band;
import gylebook.plan.Note;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Unit;
import gylebook.units.UnitName;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/// Figures as a brewer reads them; the name of a figure says which unit it is in.
@AnyUnit("shows every quantity")
public final class Shown {
  private static final double SEC_PER_MIN = 60;
  private static final long LONG_MIN = 72 * 60;
  private static final double MIN_PER_DAY = 1440;

  /// Names are words of our own code, so there are only so many.
  private static final Map<String, Optional<UnitName>> NAMED = new ConcurrentHashMap<>();

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
    return named(key).flatMap(UnitName::unit);
  }

  /// A page asks for the same names hundreds of times.
  private static Optional<UnitName> named(String key) {
    return NAMED.computeIfAbsent(key, UnitName::of);
  }

  /// One value with its unit.
  public String value(String key, double value) {
    if (!Double.isFinite(value)) {
      return "none";
    }
    Optional<Unit> inside = inside(key);
    if (key.endsWith("Sec")) {
      return timeSpan(value);
    }
    if (key.endsWith("LPerHr")) {
      return units.shown(Quantity.VOLUME, value) + "/h";
    }
    if (key.endsWith("M3")) {
      return room(value);
    }
    if (inside.isEmpty()) {
      String symbol = named(key).map(UnitName::symbol).orElse("");
      return (String.format(Locale.ROOT, "%.3g", value) + " " + symbol).strip();
    }
    double held = inside.get().toInside(value);
    return inside.get().quantity() == Quantity.VOLUME
        ? Amounts.shownVolume(held, units)
        : units.shown(inside.get().quantity(), held);
  }

  /// The room of a house, which nobody counts in litres or gallons.
  private String room(double roomM3) {
    boolean metric = units.unit(Quantity.VOLUME).symbol().equals("L");
    Unit unit = Unit.known(Quantity.VOLUME, metric ? "m³" : "ft³");
    double number = unit.fromInside(Unit.known(Quantity.VOLUME, "m³").toInside(roomM3));
    String digits = number < 10 ? "%.1f " : "%.0f ";
    return String.format(Locale.ROOT, digits, number) + unit.symbol();
  }

  /// An amount, whatever it was typed in; a count stands before what it counts: `2 ×`.
  public String amount(Entered entered) {
    if (entered.unit().quantity() == Quantity.VOLUME) {
      return Amounts.shownVolume(entered.inside(), units);
    }
    return entered.unit().quantity() == Quantity.NUMBER
        ? entered.unit().shownNumber(entered.inside()).replaceAll("\\.0+$", "") + " ×"
        : units.shown(entered);
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
      return signed(change, 2) + " " + named(key).map(UnitName::symbol).orElse("");
    }
    Unit reading = units.unit(inside.get().quantity());
    double from = reading.fromInside(inside.get().toInside(near));
    double to = reading.fromInside(inside.get().toInside(near + change));
    int decimals = Math.max(reading.decimals(), Math.abs(to - from) < 0.1 ? 3 : 1);
    if (reading.quantity() == Quantity.SHARE) {
      // A change of a share in per cent of what? Points leave no doubt.
      return signed(to - from, decimals) + " points";
    }
    return withSymbol(signed(to - from, decimals), reading);
  }

  private static String withSymbol(String number, Unit unit) {
    String symbol = unit.symbol();
    return symbol.isEmpty() || symbol.equals("SG") ? number : number + " " + symbol;
  }

  private static String signed(double value, int decimals) {
    String number = String.format(Locale.ROOT, "%+." + decimals + "f", value);
    return number.matches("[+-][0.]*")
        ? "less than " + BigDecimal.ONE.movePointLeft(decimals).toPlainString()
        : number;
  }

  /// The unit a difference of this figure is read in.
  private Optional<Unit> spanUnit(String key) {
    return inside(key)
        .map(
            unit ->
                unit.quantity() == Quantity.TEMPERATURE_DIFFERENCE
                    ? degree(units.unit(Quantity.TEMPERATURE).symbol())
                    : units.unit(unit.quantity()));
  }

  /// Degrees as the reader's thermometer counts them, not kelvin.
  private static Unit degree(String symbol) {
    return Unit.known(Quantity.TEMPERATURE_DIFFERENCE, symbol);
  }

  /// Half the width of a band, in the reader's unit without its symbol: the "give or take".
  public String giveOrTake(String key, Band band) {
    Optional<Unit> inside = inside(key);
    if (inside.isEmpty() || !Double.isFinite(band.giveOrTake())) {
      return "";
    }
    Unit reading = units.unit(inside.get().quantity());
    double low = reading.fromInside(inside.get().toInside(band.low()));
    double high = reading.fromInside(inside.get().toInside(band.high()));
    // Never "0": at least one step of the last decimal shown.
    double least = Math.pow(10, -reading.decimals());
    double half = Math.max(least, Math.abs(high - low) / 2);
    return String.format(Locale.ROOT, "%." + reading.decimals() + "f", half);
  }

  /// A deviation in the reader's unit: `1 L`, `2 °F`, `10 points` of duty.
  public String span(String key, double span) {
    Optional<Unit> unit = spanUnit(key);
    if (unit.isEmpty()) {
      return String.format(Locale.ROOT, "%.3g", span);
    }
    double number = spanNumber(key, span);
    String plain =
        new BigDecimal(number)
            .round(new MathContext(3, RoundingMode.HALF_UP))
            .stripTrailingZeros()
            .toPlainString();
    return key.startsWith("duty") ? plain + " points" : plain + " " + unit.get().symbol();
  }

  /// A deviation of about this size that is round in the reader's unit: 1 L becomes 0.25 US gal.
  public double round(String key, double span) {
    double number = spanNumber(key, span);
    double power = Math.pow(10, Math.floor(Math.log10(number)));
    double best = power;
    for (double step : new double[] {1, 2, 2.5, 5, 10}) {
      if (Math.abs(Math.log(step * power / number)) < Math.abs(Math.log(best / number))) {
        best = step * power;
      }
    }
    return span * best / number;
  }

  /// The largest deviation of one digit in the reader's unit that is no larger than this.
  double roundDown(String key, double span) {
    double number = spanNumber(key, span);
    double power = Math.pow(10, Math.floor(Math.log10(number) + 1e-9));
    return span * Math.floor(number / power + 1e-9) * power / number;
  }

  private double spanNumber(String key, double span) {
    return spanUnit(key)
        .map(unit -> unit.fromInside(inside(key).orElseThrow().toInside(span)))
        .orElse(span);
  }

  /// A time span in words: `25 min`, `3 h 5 min`.
  private static String timeSpan(double sec) {
    long minutes = Math.round(sec / SEC_PER_MIN);
    if (minutes <= 90) {
      return minutes + " min";
    }
    if (minutes > LONG_MIN) {
      return Math.round(minutes / MIN_PER_DAY) + " days";
    }
    return minutes / 60 + " h" + (minutes % 60 == 0 ? "" : " " + minutes % 60 + " min");
  }

  /// A point of the day in hours and minutes: `3:05`.
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
        text.append(value(note.key(), note.band().middle()));
      }
    }
    return text.toString();
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
