package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class ProbeLagFitTest {
  private static String text(double toSec, double everySec, DoubleUnaryOperator readC) {
    StringBuilder text = new StringBuilder();
    for (double t = 0; t <= toSec; t += everySec) {
      text.append(String.format(Locale.ROOT, "%s:%.6f ", t, readC.applyAsDouble(t)));
    }
    return text.toString();
  }

  /// A single lag is found back with its two ends, wherever the clock began: after each 10 s of a
  /// lag of 10 s one e-th of 46 K is left.
  @Test
  void aSingleLagComesBack() {
    String readings =
        "100:20 110:49.077545 120:59.774577 130:63.709802 140:65.157490 150:65.690063";
    ProbeLagFit.Found found = ProbeLagFit.lag(readings, 0.1);
    assertThat(found.lagSec()).isCloseTo(10, within(1e-4));
    assertThat(found.startC()).isCloseTo(20, within(1e-4));
    assertThat(found.placeC()).isCloseTo(66, within(1e-4));
    assertThat(found.missK()).isLessThan(1e-5);
  }

  /// A maker's response times of a sheath of 6 mm: half and nine tenths after 10.4 and 23.2 s in
  /// moving water, after 46.8 and 121 s in air. By the halves alone the lags are 15.0 and 67.5 s,
  /// by the nine tenths 10.1 and 52.5 s; the fit lies between, and a dry probe is about 4.5 times
  /// as slow.
  @Test
  void aDryProbeIsFourToFiveTimesSlower() {
    double wet = ProbeLagFit.lag("0:0 10.4:50 23.2:90 200:100 210:100", 0.1).lagSec();
    double dry = ProbeLagFit.lag("0:0 46.8:50 121:90 900:100 950:100", 0.1).lagSec();
    assertThat(wet).isBetween(23.2 / Math.log(10), 10.4 / Math.log(2));
    assertThat(dry).isBetween(121 / Math.log(10), 46.8 / Math.log(2));
    assertThat(dry / wet).isBetween(4.3, 5.2);
  }

  /// Readings that scatter: the lag lies within 1.645 of its doubts 9 times in 10. Of 400 days 360
  /// are expected, give or take 6; four of that.
  @Test
  void theDoubtIsHonest() {
    int[] held = {0};
    Cases.each(
        400,
        luck -> {
          double lagSec = 8 + 50 * luck.nextDouble();
          String readings =
              text(
                  4 * lagSec,
                  lagSec / 4,
                  t -> 66 - 46 * Math.exp(-t / lagSec) + 0.2 * luck.nextGaussian());
          ProbeLagFit.Found found = ProbeLagFit.lag(readings, 0.2);
          held[0] += Math.abs(found.lagSec() - lagSec) < 1.645 * found.doubtSec() ? 1 : 0;
        });
    assertThat(held[0]).isBetween(336, 384);
  }

  /// The doubt by the curve's own slopes, worked apart for seven readings each lag from 0 to 6 over
  /// a step of 46 K: with 0.1 K a reading, 0.1 divided by the length of what is left of the slope
  /// 46 t/tau^2 e^(-t/tau) when both ends may move. Twice the scatter, twice the doubt.
  @Test
  void theDoubtGoesWithTheScatterOfAReading() {
    String readings = text(60, 10, t -> 66 - 46 * Math.exp(-t / 10));
    double one = ProbeLagFit.lag(readings, 0.1).doubtSec();
    assertThat(ProbeLagFit.lag(readings, 0.2).doubtSec()).isCloseTo(2 * one, within(1e-6));
    double[] slope = new double[7];
    double[] decay = new double[7];
    double meanSlope = 0;
    double meanDecay = 0;
    for (int i = 0; i < 7; i++) {
      decay[i] = Math.exp(-i);
      slope[i] = 46 * i / 10.0 * decay[i];
      meanSlope += slope[i] / 7;
      meanDecay += decay[i] / 7;
    }
    double ss = 0;
    double sd = 0;
    double dd = 0;
    for (int i = 0; i < 7; i++) {
      ss += Math.pow(slope[i] - meanSlope, 2);
      sd += (slope[i] - meanSlope) * (decay[i] - meanDecay);
      dd += Math.pow(decay[i] - meanDecay, 2);
    }
    assertThat(one).isCloseTo(0.1 / Math.sqrt(ss - sd * sd / dd), within(1e-4));
  }

  /// Readings that scatter by more than they are said to: the scatter counts, its squares over all
  /// readings less the three numbers that were found.
  @Test
  void aScatterThatIsSeenCounts() {
    double[] readC = {20.4, 48.6, 60.3, 63.2, 65.5, 65.4, 66.2};
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 7; i++) {
      text.append(String.format(Locale.ROOT, "%d:%.1f ", 10 * i, readC[i]));
    }
    ProbeLagFit.Found found = ProbeLagFit.lag(text.toString(), 0.001);
    double squares = 0;
    for (int i = 0; i < 7; i++) {
      double curveC =
          found.placeC() + (found.startC() - found.placeC()) * Math.exp(-10 * i / found.lagSec());
      squares += Math.pow(readC[i] - curveC, 2);
    }
    assertThat(found.missK()).isCloseTo(Math.sqrt(squares / 7), within(1e-6));
    double ifOneKelvin = ProbeLagFit.lag(text.toString(), 1).doubtSec();
    assertThat(found.doubtSec()).isCloseTo(ifOneKelvin * Math.sqrt(squares / 4), within(1e-6));
  }

  /// At one reading a minute a lag of 10 s leaves a four-hundredth of the step: nothing to see. A
  /// straight line and a steady place show no bend either.
  @Test
  void whatShowsNoBendIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ProbeLagFit.lag("0:66 60:66.1 120:65.9 180:66.0 240:66.1", 0.1))
        .withMessageContaining("no bend");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ProbeLagFit.lag("0:20 10:30 20:40 30:50 40:60", 0.1))
        .withMessageContaining("no bend");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ProbeLagFit.lag("0:20 10:49 20:59", 0.1))
        .withMessageContaining("number of readings");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ProbeLagFit.lag("0:20 10:49 5:59 20:60", 0.1))
        .withMessageContaining("in order");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ProbeLagFit.lag("0=20", 0.1))
        .withMessageContaining("'0=20'");
  }
}
