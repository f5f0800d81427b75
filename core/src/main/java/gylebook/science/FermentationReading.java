package gylebook.science;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/// One reading of the apparent extract.
///
/// @param clockHr hours since pitching, counted as hours at 20 C: the thermal time for a rate of 1
/// @param extractPlato as read, degassed and at its temperature
/// @param doubtPlato the instrument's alone: what the curve is not is counted apart
/// @param by what it was read with
public record FermentationReading(
    double clockHr, double extractPlato, double doubtPlato, Instrument by) {
  /// So wide that a float's offset is free: all its readings may lie equally far off.
  private static final double FREE_PLATO = 5;

  private static final String WRITTEN =
      "hours and degrees Plato as 24:9.1 48:4.7, and what it was read with as 60:3.5:float";

  /// Refuses what cannot be a reading.
  public FermentationReading {
    Require.notBelow0("time of a reading in h", clockHr);
    Require.within("reading in P", extractPlato, -10, 45);
    Require.within("doubt of a reading in P", doubtPlato, 0.01, 5);
  }

  /// What an extract is read with. Doubts by habit: no source was read.
  public enum Instrument {
    /// Degassed and at its temperature: 0.20 P (0.0008 of gravity).
    HYDROMETER(0.20),
    /// By its alcohol and the original extract: 0.35 P.
    REFRACTOMETER(0.35),
    /// A sensor that floats in the beer: 0.5 P, and all its readings may be off alike.
    FLOAT(0.5);

    private final double doubtPlato;

    Instrument(double doubtPlato) {
      this.doubtPlato = doubtPlato;
    }

    /// Standard deviation of one reading.
    public double doubtPlato() {
      return doubtPlato;
    }
  }

  /// With the doubt that such instruments usually have.
  public FermentationReading(double clockHr, double extractPlato, Instrument by) {
    this(clockHr, extractPlato, by.doubtPlato(), by);
  }

  /// By the hydrometer.
  public FermentationReading(double clockHr, double extractPlato) {
    this(clockHr, extractPlato, Instrument.HYDROMETER);
  }

  /// Standard deviation of what two readings are off by in common: the offset of one float.
  double sharedPlato(FermentationReading other) {
    return by == Instrument.FLOAT && other.by == Instrument.FLOAT ? FREE_PLATO : 0;
  }

  /// Readings as they are written.
  ///
  /// @param clockRatio hours of the clock in an hour of the ferment
  /// @param doubtPlato of each reading that names no instrument: it is a hydrometer's
  static List<FermentationReading> read(String readings, double clockRatio, double doubtPlato) {
    List<FermentationReading> found = new ArrayList<>();
    for (String each : readings.strip().split("[\\s;]+", -1)) {
      String[] parts = each.split(":", -1);
      if (parts.length < 2 || parts.length > 3) {
        throw new IllegalArgumentException("'" + each + "' is no reading; write " + WRITTEN + ".");
      }
      double clock = Require.number(parts[0], WRITTEN) * clockRatio;
      double extract = Require.number(parts[1], WRITTEN);
      found.add(
          parts.length == 2
              ? new FermentationReading(clock, extract, doubtPlato, Instrument.HYDROMETER)
              : new FermentationReading(clock, extract, instrument(parts[2])));
    }
    return List.copyOf(found);
  }

  private static Instrument instrument(String named) {
    for (Instrument each : Instrument.values()) {
      if (each.name().equals(named.toUpperCase(Locale.ROOT))) {
        return each;
      }
    }
    throw new IllegalArgumentException(
        "'" + named + "' reads no extract here; write hydrometer, refractometer or float.");
  }
}
