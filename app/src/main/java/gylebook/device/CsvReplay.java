package gylebook.device;

import gylebook.units.AnyUnit;
import java.io.IOException;
import java.io.Reader;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;
import tools.jackson.dataformat.csv.CsvSchema;

/// Plays a table of readings as if the instruments spoke now: one row is one moment. The readings
/// take the same way as those of a wire, and carry the times of the table.
///
/// The first line has the headings; commas or semicolons between cells, whichever the headings use.
/// A time is a moment with its offset (`2026-11-25T08:00:00Z`) or seconds from the start.
@AnyUnit("plays readings of any quantity")
public final class CsvReplay {
  private final Instant start;
  private final List<Row> rows;

  /// Lets time pass between two rows.
  public interface Wait {
    /// Returns when this long has passed.
    void pass(Duration gap) throws InterruptedException;
  }

  private record Cell(Instrument instrument, Decoded decoded) {}

  private record Row(Instant at, List<Cell> cells) {}

  private CsvReplay(Instant start, List<Row> rows) {
    this.start = start;
    this.rows = List.copyOf(rows);
  }

  /// Reads a table.
  ///
  /// @param timeHeading heading of the column with the time
  /// @param start the moment of second 0, where the table counts seconds
  /// @throws IOException when there is no such table: a heading is missing, or it cannot be read
  public static CsvReplay read(
      Reader table, String timeHeading, List<CsvColumn> columns, Instant start) throws IOException {
    String text = table.readAllAsString();
    String first = text.lines().findFirst().orElse("");
    char comma = first.contains(";") ? ';' : ',';
    CsvMapper csv = CsvMapper.builder().enable(CsvReadFeature.WRAP_AS_ARRAY).build();
    CsvSchema schema = CsvSchema.emptySchema().withColumnSeparator(comma);
    List<String[]> lines = new ArrayList<>();
    try (MappingIterator<String[]> all =
        csv.readerFor(String[].class).with(schema).readValues(text.replace("\uFEFF", ""))) {
      all.forEachRemaining(lines::add);
    } catch (JacksonException broken) {
      throw new IOException("the table is broken: " + broken.getOriginalMessage(), broken);
    }
    if (lines.isEmpty()) {
      throw new IOException("the table is empty");
    }
    List<String> headings = List.of(lines.getFirst()).stream().map(String::strip).toList();
    int timeAt = place(headings, timeHeading);
    List<Integer> places = new ArrayList<>();
    for (CsvColumn column : columns) {
      places.add(place(headings, column.heading()));
    }
    List<Row> rows = new ArrayList<>();
    for (String[] line : lines.subList(1, lines.size())) {
      Instant before = rows.isEmpty() ? start : rows.getLast().at();
      rows.add(row(line, timeAt, columns, places, start, before));
    }
    return new CsvReplay(start, rows);
  }

  private static int place(List<String> headings, String heading) throws IOException {
    int at = headings.indexOf(heading);
    if (at < 0) {
      throw new IOException("the table has no column '" + heading + "', but " + headings);
    }
    return at;
  }

  private static Row row(
      String[] line,
      int timeAt,
      List<CsvColumn> columns,
      List<Integer> places,
      Instant start,
      Instant before) {
    String written = cell(line, timeAt);
    Optional<Instant> at = moment(written, start);
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      Instrument instrument = columns.get(i).instrument();
      String sent = cell(line, places.get(i));
      if (!sent.isEmpty()) {
        Decoded decoded =
            at.isPresent()
                ? PlainText.decode(instrument, sent)
                : Decoded.garbled(sent, "has no time: '" + Received.shown(written) + "'");
        cells.add(new Cell(instrument, decoded));
      }
    }
    return new Row(at.orElse(before), cells);
  }

  private static String cell(String[] line, int at) {
    return at < line.length ? line[at].strip() : "";
  }

  private static Optional<Instant> moment(String written, Instant start) {
    try {
      return written.matches("\\d{1,9}([.,]\\d{1,9})?")
          ? Optional.of(start.plusMillis(millis(written)))
          : Optional.of(OffsetDateTime.parse(written).toInstant());
    } catch (DateTimeException _) {
      return Optional.empty();
    }
  }

  private static long millis(String sec) {
    return Math.round(Double.parseDouble(sec.replace(',', '.')) * 1000);
  }

  /// How many rows there are.
  public int rowCount() {
    return rows.size();
  }

  /// Plays the table to its end.
  ///
  /// @param paceFactor how many times faster than it happened
  public void play(double paceFactor, Wait wait, Consumer<Heard> ear) throws InterruptedException {
    if (!(paceFactor > 0) || Double.isInfinite(paceFactor)) {
      throw new IllegalArgumentException(
          "paceFactor is " + paceFactor + "; it must be finite and above 0.");
    }
    Instant[] now = {rows.isEmpty() ? start : rows.getFirst().at()};
    Watch watch = new Watch(() -> now[0], ear);
    for (Row row : rows) {
      Duration gap = Duration.between(now[0], row.at());
      if (gap.isPositive()) {
        wait.pass(Duration.ofNanos(Math.round(gap.toNanos() / paceFactor)));
      }
      now[0] = row.at();
      row.cells().forEach(cell -> watch.hear(cell.instrument(), cell.decoded()));
    }
  }
}
