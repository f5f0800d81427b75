package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/// Salts from the house, a pump's need from remarks, a fermentation whose start is not certain.
class LearntByRemarksTest {
  /// PHREEQC with phreeqc.dat: pure water with 0.300 g/L of gypsum and 0.200 g/L of CaCl2.2H2O
  /// holds Ca 3.1030, S 1.7426 and Cl 2.7208 mmol/kg. Asked for those, the doses must come back.
  @Test
  void theGeochemistsSaltsComeBackFromTheirIons() {
    double calcium = 3.1030 * AtomicWeights.molarGPerMol("Ca");
    double sulfate = 1.7426 * AtomicWeights.molarGPerMol("SO4");
    double chloride = 2.7208 * AtomicWeights.molarGPerMol("Cl");
    SaltDoses.Doses found =
        SaltDoses.doses(
            20,
            "Ca 0",
            "Ca " + calcium + " SO4 " + sulfate + " Cl " + chloride,
            "gypsum, calcium chloride, epsom salt, table salt",
            0.1);
    assertThat(found.gypsumG()).isCloseTo(6.0, within(0.05));
    assertThat(found.calciumChlorideG()).isCloseTo(4.0, within(0.05));
    assertThat(found.epsomG()).isZero();
    assertThat(found.tableSaltG()).isZero();
    assertThat(found.missedMgPerL()).isLessThan(1);
  }

  @Test
  void whatIsWeighedIsWhatIsTold() {
    Cases.each(
        60,
        random -> {
          double litres = 5 + 40 * random.nextDouble();
          String wanted =
              "Ca "
                  + (60 + 90 * random.nextDouble())
                  + " Cl "
                  + (20 + 150 * random.nextDouble())
                  + " SO4 "
                  + (20 + 250 * random.nextDouble());
          SaltDoses.Doses found =
              SaltDoses.doses(
                  litres,
                  "Ca 20 Mg 4 Na 9 HCO3 60",
                  wanted,
                  "gypsum, CaCl2.2H2O, epsom salt, table salt, baking soda",
                  0.1);
          double calcium =
              20
                  + Salt.GYPSUM.ionsOf(found.gypsumG() / litres).calciumMgPerL()
                  + Salt.CALCIUM_CHLORIDE_DIHYDRATE
                      .ionsOf(found.calciumChlorideG() / litres)
                      .calciumMgPerL();
          assertThat(found.calciumMgPerL()).isCloseTo(calcium, within(1e-9));
          double sodium =
              9
                  + Salt.TABLE_SALT.ionsOf(found.tableSaltG() / litres).sodiumMgPerL()
                  + Salt.SODA.ionsOf(found.sodaG() / litres).sodiumMgPerL();
          assertThat(found.sodiumMgPerL()).isCloseTo(sodium, within(1e-9));
          assertThat(found.gypsumG() * 10).isCloseTo(Math.rint(found.gypsumG() * 10), within(1e-9));
          double more =
              SaltDoses.doses(litres, "Ca 20 Mg 4 Na 9 HCO3 60", wanted, "gypsum", 0.1)
                  .missedMgPerL();
          assertThat(found.missedMgPerL()).isLessThanOrEqualTo(more + 1);
        });
  }

  /// All doses there are, one after the other: none of them comes nearer than those found.
  @Test
  void noDosesOnTheScaleComeNearer() {
    Cases.each(
        25,
        random -> {
          double calcium = 40 + 120 * random.nextDouble();
          double chloride = 20 + 120 * random.nextDouble();
          double sulfate = 20 + 200 * random.nextDouble();
          SaltDoses.Doses found =
              SaltDoses.doses(
                  20,
                  "Ca 10 Mg 5",
                  "Ca " + calcium + " Cl " + chloride + " SO4 " + sulfate,
                  "gypsum, calcium chloride, epsom salt",
                  1);
          double least = Double.POSITIVE_INFINITY;
          for (int gypsum = 0; gypsum < 14; gypsum++) {
            for (int flakes = 0; flakes < 14; flakes++) {
              for (int epsom = 0; epsom < 14; epsom++) {
                Salt.Ions first = Salt.GYPSUM.ionsOf(gypsum / 20.0);
                Salt.Ions second = Salt.CALCIUM_CHLORIDE_DIHYDRATE.ionsOf(flakes / 20.0);
                Salt.Ions third = Salt.EPSOM.ionsOf(epsom / 20.0);
                double off =
                    Math.pow(10 + first.calciumMgPerL() + second.calciumMgPerL() - calcium, 2)
                        + Math.pow(second.chlorideMgPerL() - chloride, 2)
                        + Math.pow(first.sulfateMgPerL() + third.sulfateMgPerL() - sulfate, 2)
                        + Math.pow(0.1 * third.magnesiumMgPerL(), 2);
                least = Math.min(least, off);
              }
            }
          }
          double ours =
              Math.pow(found.calciumMgPerL() - calcium, 2)
                  + Math.pow(found.chlorideMgPerL() - chloride, 2)
                  + Math.pow(found.sulfateMgPerL() - sulfate, 2)
                  + Math.pow(0.1 * (found.magnesiumMgPerL() - 5), 2);
          assertThat(ours).isLessThanOrEqualTo(least + 1e-6);
        });
  }

  /// On a scale of a milligram the way in steps would be long: the selections lead there at once.
  @Test
  void aFineScaleIsNoHindrance() {
    SaltDoses.Doses found =
        SaltDoses.doses(
            20, "Ca 0", "Ca 124.37 SO4 167.39 Cl 96.46", "gypsum, calcium chloride", 0.001);
    assertThat(found.gypsumG()).isCloseTo(6.0, within(0.003));
    assertThat(found.calciumChlorideG()).isCloseTo(4.0, within(0.003));
  }

  /// Sulfate brings a metal along: with table salt alone no sulfate comes, and the miss says so.
  @Test
  void whatCannotBeReachedIsTold() {
    SaltDoses.Doses found = SaltDoses.doses(20, "Ca 50", "Ca 50 SO4 200", "table salt", 0.1);
    assertThat(found.tableSaltG()).isZero();
    assertThat(found.missedMgPerL()).isCloseTo(200, within(1e-9));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SaltDoses.doses(20, "Ca 50", "Fe 3", "gypsum", 0.1))
        .withMessageContaining("'Fe'");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SaltDoses.doses(20, "Ca 50", "Ca 60", "plaster", 0.1))
        .withMessageContaining("'plaster'");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SaltDoses.doses(20, "soft", "Ca 60", "gypsum", 0.1))
        .withMessageContaining("'soft'");
  }

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
    assertThat(rms[5]).isLessThan(0.6 * rms[0]);
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
    int brews = 120;
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
      List<FermentationFit.Reading> readings = new ArrayList<>();
      for (int i = 1; i <= 5; i++) {
        double hr = 16 * i;
        double curve = FermentationCurve.extractPlato(start, end, 20, hr, rate, middle, skew);
        double read = curve + Math.hypot(0.2, 0.22) * random.nextGaussian();
        readings.add(new FermentationFit.Reading(hr * readAt20, read));
      }
      FermentationFit.Fitted fitted =
          FermentationFit.fitted(12, believedPlato, readings.subList(0, count), 0.3);
      squares += Math.pow(fitted.finalPlato() - end, 2);
    }
    return Math.sqrt(squares / brews);
  }
}
