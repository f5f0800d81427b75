package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/// Salts from the house, a pump's need from remarks, a fermentation whose start is not certain.
class LearntByRemarksTest {
  /// PHREEQC with phreeqc.dat: pure water with 0.300 g/L of gypsum and 0.200 g/L of CaCl2.2H2O
  /// holds Ca 3.1030, S 1.7426 and Cl 2.7208 mmol/kg. Asked for those, the doses must come back.
  /// The same posterior by another road: many draws of the prior, weighted by the remarks.
  @Test
  void aPumpsNeedIsBayesRule() {
    PumpNeed.Need need = PumpNeed.need("2.4:quiet 1.0:rattled 1.9:quiet");
    RandomGenerator random =
        java.util.random.RandomGeneratorFactory.of("L64X128MixRandom").create(7);
    double weights = 0;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < 400_000; i++) {
      double n = 1.5 * Math.exp(0.5 * random.nextGaussian());
      double weight = (1 - rattle(2.4, n)) * rattle(1.0, n) * (1 - rattle(1.9, n));
      weights += weight;
      sum += weight * n;
      squares += weight * n * n;
    }
    double mean = sum / weights;
    assertThat(need.needM()).isCloseTo(mean, within(0.005));
    assertThat(need.doubtM()).isCloseTo(Math.sqrt(squares / weights - mean * mean), within(0.005));
    assertThat(need.quietM()).isGreaterThan(need.needM() + need.doubtM());
  }

  private static double rattle(double head, double need) {
    return 1 / (1 + Math.exp((head - need) / 0.3));
  }

  @Test
  void remarksMoveThePumpsNeedTheirWay() {
    double one = PumpNeed.need("1.5:quiet").needM();
    assertThat(PumpNeed.need("1.5:rattled").needM()).isGreaterThan(one + 0.3);
    assertThat(PumpNeed.need("1.5:quiet 1.5:quiet 1.5:quiet").needM()).isLessThan(one);
    assertThat(PumpNeed.need("3:quiet 0.8:rattled").doubtM())
        .isLessThan(PumpNeed.need("3:quiet").doubtM());
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PumpNeed.need("3:loud"))
        .withMessageContaining("'3:loud'");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PumpNeed.need("30:quiet"))
        .withMessageContaining("30");
  }

  /// 75000 K belongs to 3.1e98: 628 kJ/mol over today's gas constant lets skin stand 44 C all day.
  @Test
  void theBurnLawIsNotSlowedByAnotherGasConstant() {
    double hours = Scald.deepSkinSec(44) / 3600;
    assertThat(hours).isBetween(3.0, 7.0);
    double slowed = Math.exp(628_000 / 8.314462618 / 317.15) / 3.1e98 / 3600;
    assertThat(slowed).isGreaterThan(20);
  }

  /// Truths drawn from the priors, readings with a spindle's doubt and the model's own error: on
  /// average no reading makes the forecast of the final extract worse.
  @Test
  void aReadingDoesNotMakeTheForecastWorseOnAverage() {
    double[] rms = new double[6];
    for (int count = 0; count < rms.length; count++) {
      rms[count] = finalRmsPlato(count, 0.15, 0.15);
    }
    for (int count = 1; count < rms.length; count++) {
      assertThat(rms[count]).as("with " + count).isLessThan(1.01 * rms[count - 1]);
    }
    // With the skew held as tightly as here it would be 0.6: the price of ferments that have a
    // tail.
    assertThat(rms[5]).isLessThan(0.66 * rms[0]);
  }

  /// A must whose start was guessed a degree off: a fit that holds it for certain is made worse by
  /// it, a free one is not.
  @Test
  void aStartThatIsNotCertainMustBeFree() {
    for (int count = 2; count < 5; count++) {
      assertThat(finalRmsPlato(count, 1.0, 1.0)).isLessThan(0.97 * finalRmsPlato(count, 1.0, 0));
    }
  }

  private static double finalRmsPlato(int count, double startOffPlato, double believedPlato) {
    int brews = 400;
    double squares = 0;
    for (int seed = 1; seed <= brews; seed++) {
      RandomGenerator random =
          java.util.random.RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
      double start = 12 + startOffPlato * random.nextGaussian();
      double end = start * (1 - (0.77 + 0.04 * random.nextGaussian()));
      double rate = 0.1 * Math.exp(0.35 * random.nextGaussian());
      double middle = 3.2 * Math.exp(0.25 * random.nextGaussian());
      double skew = Math.exp(0.4 * random.nextGaussian());
      double readAt20 = FermentationCurve.ratePerHr(20, 1, 2.2);
      List<FermentationReading> readings = new ArrayList<>();
      for (int i = 1; i <= 5; i++) {
        double hr = 16 * i;
        double curve = FermentationCurve.extractPlato(start, end, 20, hr, rate, middle, skew);
        double read = curve + Math.hypot(0.2, 0.22) * random.nextGaussian();
        readings.add(new FermentationReading(hr * readAt20, read));
      }
      FermentationFit.Fitted fitted =
          FermentationFit.fitted(
              FermentationFit.Brew.of(12, believedPlato), readings.subList(0, count));
      squares += Math.pow(fitted.finalPlato() - end, 2);
    }
    return Math.sqrt(squares / brews);
  }
}
