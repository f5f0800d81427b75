package gylebook.estimate;

import gylebook.rig.Parameter;
import gylebook.rig.Probe;
import gylebook.simulate.Gauge;
import gylebook.simulate.Luck;
import gylebook.simulate.Sight;
import gylebook.simulate.Twins;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// What each twin holds of each instrument: bias and gain as rows of draws; lag lives with the
/// twins themselves.
@AnyUnit("rows in standard deviations, predictions in the instrument's unit")
final class Traits {
  static final double MIDDLE_C = 65;
  private static final double UNMIXED_FACTOR = 4;

  private final List<Instrument> instruments;
  private final double[][] bias;
  private final double[][] gain;

  private Traits(List<Instrument> instruments, double[][] bias, double[][] gain) {
    this.instruments = instruments;
    this.bias = bias;
    this.gain = gain;
  }

  static Traits drawn(List<Instrument> instruments, long seed, int count) {
    double[][] bias = new double[instruments.size()][count];
    double[][] gain = new double[instruments.size()][count];
    for (int i = 0; i < bias.length; i++) {
      String name = instruments.get(i).name();
      Arrays.setAll(bias[i], j -> Luck.z(seed, "bias of " + name, j));
      Arrays.setAll(gain[i], j -> Luck.z(seed, "gain of " + name, j));
    }
    return new Traits(List.copyOf(instruments), bias, gain);
  }

  Traits copy() {
    return new Traits(instruments, copied(bias), copied(gain));
  }

  Traits with(List<Instrument> others) {
    return new Traits(List.copyOf(others), copied(bias), copied(gain));
  }

  private static double[][] copied(double[][] rows) {
    return Arrays.stream(rows).map(double[]::clone).toArray(double[][]::new);
  }

  /// Thermometers that stay in a place and steer nothing.
  static List<Gauge> gauges(List<Instrument> instruments) {
    return instruments.stream()
        .filter(i -> i.role() == Instrument.Role.STAYS)
        .map(i -> new Gauge(i.name(), i.place(), i.lagSec()))
        .toList();
  }

  List<Instrument> instruments() {
    return instruments;
  }

  Instrument named(String name) {
    return instruments.get(index(name));
  }

  private int index(String name) {
    for (int i = 0; i < instruments.size(); i++) {
      if (instruments.get(i).name().equals(name)) {
        return i;
      }
    }
    throw new IllegalArgumentException("There is no instrument '" + name + "'.");
  }

  List<double[]> rows() {
    List<double[]> rows = new ArrayList<>(Arrays.asList(bias));
    rows.addAll(Arrays.asList(gain));
    return rows;
  }

  /// The draws of how far an instrument reads high at 65 C, in standard deviations.
  double[] biasDraws(String name) {
    return bias[index(name)];
  }

  /// How far each twin holds an instrument to read high at a temperature.
  double[] high(Twins twins, String name, double[] placeC) {
    int i = index(name);
    Instrument instrument = instruments.get(i);
    double[] high = new double[placeC.length];
    double[] z = steered(twins, instrument) ? twins.draws("probe.biasK") : bias[i];
    Parameter biases = instrument.bias();
    Parameter gains = instrument.gainPerK();
    for (int j = 0; j < high.length; j++) {
      high[j] = biases.at(z[j]) + gains.at(gain[i][j]) * (placeC[j] - MIDDLE_C);
    }
    return high;
  }

  private static boolean steered(Twins twins, Instrument instrument) {
    return instrument.role() == Instrument.Role.STEERS && twins.doubts().contains("probe.biasK");
  }

  /// What each twin expects a reading to show.
  double[] expected(Twins twins, String name, Probe.Place place, boolean mixed) {
    Instrument instrument = named(name);
    double[] expected =
        switch (instrument.measures()) {
          case TEMPERATURE -> felt(twins, instrument, place);
          case HOT_VOLUME -> twins.sees(Sight.HOT_L);
          case STRENGTH -> twins.sees(mixed ? Sight.MIXED_PLATO : Sight.WORT_PLATO);
        };
    double[] high = high(twins, name, expected);
    for (int j = 0; j < expected.length; j++) {
      expected[j] += high[j];
    }
    return expected;
  }

  private double[] felt(Twins twins, Instrument instrument, Probe.Place place) {
    return switch (instrument.role()) {
      case STAYS -> twins.gauge(stayingIndex(instrument));
      case STEERS -> unbiased(twins);
      case CARRIED -> twins.sees(sight(place));
    };
  }

  private static double[] unbiased(Twins twins) {
    double[] shown = twins.sees(Sight.READ_C);
    boolean doubtful = twins.doubts().contains("probe.biasK");
    Parameter bias = twins.probeBias();
    for (int j = 0; j < shown.length; j++) {
      shown[j] -= doubtful ? bias.at(twins.draws("probe.biasK")[j]) : bias.value();
    }
    return shown;
  }

  private int stayingIndex(Instrument wanted) {
    List<String> staying = gauges(instruments).stream().map(Gauge::name).toList();
    return staying.indexOf(wanted.name());
  }

  static Sight sight(Probe.Place place) {
    return switch (place) {
      case SUCTION -> Sight.SUCTION_C;
      case RETURN -> Sight.RETURN_C;
      case KETTLE -> Sight.WORT_C;
      case BED -> Sight.GRAIN_C;
    };
  }

  /// Scatter of one reading; wort that was not mixed is a poor sample of the whole.
  static double noise(Instrument instrument, Reading reading) {
    boolean poor = instrument.measures() == Instrument.Measures.STRENGTH && !reading.mixed();
    return poor ? UNMIXED_FACTOR * instrument.noise() : instrument.noise();
  }
}
