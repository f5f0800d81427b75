package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import org.junit.jupiter.api.Test;

/// What dry hops bring of bitterness and what they take.
class DryHopBitternessTest {
  /// Grams a litre of a pound in a US barrel: 453.59237 g in 117.347765 L.
  private static final double POUND_IN_BARREL_G_PER_L = 453.59237 / 117.347765;

  /// A hop house, 2017: six pounds a barrel of pellets with 0.23 % brought 48 mg/L of humulinones,
  /// of 53.3 that went in. The least reckons with that share, at 65 % of the bitterness.
  @Test
  void theLeastDissolvesAsInTheHeaviestTrial() {
    double doseGPerL = 6 * POUND_IN_BARREL_G_PER_L;
    assertThat(doseGPerL * 1000 * 0.0023).isCloseTo(53.3, within(0.1));
    double least = DryHopBitterness.after(0, doseGPerL, 0.0023).leastMgPerL();
    assertThat(least / 0.65).isCloseTo(48, within(0.1));
    assertThat(DryHopBitterness.after(0, doseGPerL, 0.0023).mostMgPerL())
        .isCloseTo(53.3 * 0.70, within(0.1));
  }

  /// Beers of 20 mg/L or less lose very little and so get more bitter (the same house); a more
  /// bitter one may get less bitter or more (its chemist, 2017), and what humulinones bring about
  /// makes up for the loss (Mitter 2016): as before lies within the range of a beer of 42 mg/L.
  @Test
  void aMildBeerGainsAndABitterOneMayGoEitherWay() {
    for (double pounds = 0.5; pounds <= 2; pounds += 0.5) {
      double doseGPerL = pounds * POUND_IN_BARREL_G_PER_L;
      assertThat(DryHopBitterness.after(20, doseGPerL, 0.0026).leastMgPerL()).isGreaterThan(20);
      DryHopBitterness.After bitter = DryHopBitterness.after(42, doseGPerL, 0.0023);
      assertThat(42.0).isBetween(bitter.leastMgPerL(), bitter.mostMgPerL());
      assertThat(bitter.leastMgPerL()).isLessThan(42);
    }
  }

  /// 5 g/L of 0.30 % bring 15 mg/L, 8.8 to 10.5 as bitter; in a beer of 40 mg/L a loss of a quarter
  /// undoes that, in one of 8 mg/L no loss could. All by hand.
  @Test
  void theShareThatMustGoForNothingToChange() {
    DryHopBitterness.After bitter = DryHopBitterness.after(40, 5, 0.003);
    assertThat(bitter.leastMgPerL()).isCloseTo(20 + 15 * 0.9 * 0.65, within(1e-9));
    assertThat(bitter.mostMgPerL()).isCloseTo(40 + 15 * 0.70, within(1e-9));
    assertThat(bitter.breakEvenLossFrac()).isCloseTo((8.775 + 10.5) / 2 / 40, within(1e-9));
    assertThat(DryHopBitterness.after(8, 5, 0.003).breakEvenLossFrac()).isEqualTo(1);
    double half = DryHopBitterness.after(40, 3.87 / 2, 0.003).leastMgPerL();
    assertThat(half).isCloseTo(40 - 20 * 0.5 + 1.935 * 3 * 0.9 * 0.65, within(1e-9));
    assertThat(DryHopBitterness.after(0, 0, 0.003).breakEvenLossFrac()).isEqualTo(1);
  }

  /// The trap: to add what dry hops bring and forget what they take is the far end, no middle; and
  /// without hops nothing changes.
  @Test
  void theGainAloneIsTheFarEnd() {
    Cases.each(
        60,
        random -> {
          double iso = random.nextDouble(0, 80);
          double dose = random.nextDouble(0, 12);
          double share = random.nextDouble(0.002, 0.005);
          DryHopBitterness.After after = DryHopBitterness.after(iso, dose, share);
          double gainOnly = iso + Humulinone.isoEquivalentMgPerL(dose, share, 0.70);
          assertThat(after.mostMgPerL()).isCloseTo(gainOnly, within(1e-9));
          assertThat(after.leastMgPerL()).isLessThanOrEqualTo(after.mostMgPerL());
          assertThat(after.leastMgPerL()).isGreaterThanOrEqualTo(Math.min(iso, 20));
          DryHopBitterness.After without = DryHopBitterness.after(iso, 0, share);
          assertThat(without.leastMgPerL()).isCloseTo(iso, within(1e-9));
          assertThat(without.mostMgPerL()).isCloseTo(iso, within(1e-9));
        });
  }

  @Test
  void nonsenseIsRefusedWithItsName() {
    assertThatThrownBy(() -> DryHopBitterness.after(-1, 5, 0.003))
        .hasMessageContaining("iso-alpha");
    assertThatThrownBy(() -> DryHopBitterness.after(30, Double.NaN, 0.003))
        .hasMessageContaining("dry hops");
    assertThatThrownBy(() -> DryHopBitterness.after(30, 5, 0.2))
        .hasMessageContaining("humulinones");
  }
}
