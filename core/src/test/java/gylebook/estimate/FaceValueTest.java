package gylebook.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.rig.Parameter;
import gylebook.rig.Probe;
import org.junit.jupiter.api.Test;

/// What a reading says by itself, worked by hand from what is known of the instrument.
class FaceValueTest {
  private static Instrument thermometer(double highK, double doubtK) {
    return new Instrument(
        "thermometer",
        Instrument.Measures.TEMPERATURE,
        Probe.Place.BED,
        Parameter.measured(highK, doubtK, ""),
        Parameter.assumed(0, 0.003, ""),
        Parameter.exact(0),
        0.4,
        Instrument.Role.CARRIED);
  }

  @Test
  void aThermometerIsCorrectedByWhatIsKnownOfItAndItsDoubtsAdd() {
    Reading read = Reading.temperature("thermometer", Probe.Place.BED, 66.5, 60);
    FaceValue face = FaceValue.of(thermometer(0.5, 0.3), read);
    assertThat(face.value()).isCloseTo(66.0, within(1e-9));
    // 0.4 and 0.3 together are 0.5; the span adds 0.003 of 1.5 K.
    assertThat(face.doubt()).isCloseTo(Math.hypot(0.5, 0.0045), within(1e-9));

    Reading cool = Reading.temperature("thermometer", Probe.Place.KETTLE, 20, 60);
    assertThat(FaceValue.of(thermometer(0, 0.3), cool).doubt())
        .as("45 K from where its bias counts")
        .isCloseTo(Math.hypot(0.5, 0.135), within(1e-9));
  }

  @Test
  void aWarmSampleIsBroughtToTheScaleAndAPoorOneIsLessSure() {
    Instrument hydrometer = Instrument.hydrometer();
    FaceValue cold = FaceValue.of(hydrometer, plato(20, true));
    assertThat(cold.value()).isCloseTo(10, within(1e-9));
    assertThat(cold.doubt()).isCloseTo(Math.hypot(0.25, 0.12), within(1e-9));
    assertThat(FaceValue.of(hydrometer, plato(40, true)).value()).isBetween(11.0, 12.5);
    assertThat(FaceValue.of(hydrometer, plato(20, false)).doubt()).isGreaterThan(0.9);
  }

  private static Reading plato(double sampleC, boolean mixed) {
    return new Reading("hydrometer", Probe.Place.KETTLE, mixed, sampleC, 10, 60);
  }
}
