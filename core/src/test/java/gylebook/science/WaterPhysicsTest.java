package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/// Measured numbers and limiting laws of salt water, a bed and several thermometers: what a broken
/// formula of theirs would be noticed by.
class WaterPhysicsTest {
  private static final DebyeHuckel AT_25 = new DebyeHuckel(25);

  private static double gamma(Species species, double strength) {
    return Math.pow(10, AT_25.logGamma(species, strength));
  }

  /// Mean activity coefficients at 25 C and 0.1 mol/kg: sodium chloride 0.778 (Robinson and Stokes,
  /// from memory), calcium chloride 0.517 (a table of the CRC Handbook, read).
  @Test
  void meanActivitiesOfCommonSaltsAreThoseThatWereMeasured() {
    double sodium = Math.sqrt(gamma(Species.NA, 0.1) * gamma(Species.CL, 0.1));
    assertThat(sodium).isCloseTo(0.778, within(0.008));
    double calcium = Math.cbrt(gamma(Species.CA, 0.3) * Math.pow(gamma(Species.CL, 0.3), 2));
    assertThat(calcium).isCloseTo(0.517, within(0.012));
  }

  /// In dilute water every ion obeys `log g = -0.509 z^2 sqrt(I)`, whatever its size.
  @Test
  void diluteIonsObeyTheLimitingLaw() {
    double strength = 1e-6;
    for (Species species : Species.values()) {
      int z2 = species.charge() * species.charge();
      assertThat(AT_25.logGamma(species, strength))
          .as(species.name())
          .isCloseTo(-0.509 * z2 * 1e-3, within(0.01e-3 * z2 + 2e-7));
    }
  }

  /// An ion without a size follows Davies: 0.7816 at 0.1 mol/kg, by hand with 0.509.
  @Test
  void ionsWithoutASizeFollowDavies() {
    double root = Math.sqrt(0.1);
    double byHand = -0.509 * (root / (1 + root) - 0.03);
    assertThat(AT_25.logGamma(Species.HSO4, 0.1)).isCloseTo(byHand, within(0.0003));
    assertThat(gamma(Species.HSO4, 0.1)).isCloseTo(0.7816, within(0.001));
  }

  /// Salt drives uncharged gas out of water, the more the saltier.
  @Test
  void saltDrivesCarbonDioxideOut() {
    assertThat(AT_25.logGamma(Species.CO2, 1)).isBetween(0.05, 0.11);
    assertThat(AT_25.logGamma(Species.CO2, 0.5))
        .isCloseTo(AT_25.logGamma(Species.CO2, 1) / 2, within(1e-12));
  }

  /// Equivalent conductances at 25 C, Robinson and Stokes, from memory: sodium chloride 118.5 at
  /// 0.01 mol/L and 123.7 at 0.001; half calcium chloride 120.4 at 0.01 and 130.4 at 0.001.
  @Test
  void simpleSaltsConductAsTheyWereMeasured() {
    assertThat(TapWater.salted(0, 0, 0, 0.5844, 0).conductanceUsPerCm())
        .isCloseTo(1185, within(0.015 * 1185));
    assertThat(TapWater.salted(0, 0, 0, 0.05844, 0).conductanceUsPerCm())
        .isCloseTo(123.7, within(0.015 * 123.7));
    assertThat(TapWater.salted(0, 0.73504, 0, 0, 0).conductanceUsPerCm())
        .isCloseTo(1204, within(0.02 * 1204));
    assertThat(TapWater.salted(0, 0.073504, 0, 0, 0).conductanceUsPerCm())
        .isCloseTo(130.4, within(0.02 * 130.4));
  }

  /// Salts are neutral: all of them together leave soda's mild pH, and each adds its own.
  @Test
  void allSaltsTogetherStayNeutralAndConductMore() {
    TapWater.Salted all = TapWater.salted(0.2, 0.2, 0.2, 0.2, 0.1);
    assertThat(all.saltedPh()).isBetween(7.5, 8.7);
    double least = all.conductanceUsPerCm();
    assertThat(TapWater.salted(0, 0.2, 0.2, 0.2, 0.1).conductanceUsPerCm()).isLessThan(least);
    assertThat(TapWater.salted(0.2, 0, 0.2, 0.2, 0.1).conductanceUsPerCm()).isLessThan(least);
    assertThat(TapWater.salted(0.2, 0.2, 0, 0.2, 0.1).conductanceUsPerCm()).isLessThan(least);
    assertThat(TapWater.salted(0.2, 0.2, 0.2, 0, 0.1).conductanceUsPerCm()).isLessThan(least);
    assertThat(TapWater.salted(0.2, 0.2, 0.2, 0.2, 0).conductanceUsPerCm()).isLessThan(least);
  }

  /// Phosphoric acid at 66.67 C by its heats of reaction, worked apart: 2.36, 7.12, 12.03; lactic
  /// 3.863 and hydrogen sulphate 1.988 at 25 C.
  @Test
  void acidsKeepTheirConstantsColdAndHot() {
    Dissociation.Phosphoric hot = Dissociation.phosphoric(66.67);
    assertThat(hot.firstNumber()).isCloseTo(2.36, within(0.02));
    assertThat(hot.secondNumber()).isCloseTo(7.12, within(0.02));
    assertThat(hot.thirdNumber()).isCloseTo(12.03, within(0.02));
    assertThat(Dissociation.lacticPkNumber()).isCloseTo(3.863, within(0.001));
    assertThat(Dissociation.hydrogenSulfatePkNumber(25)).isCloseTo(1.988, within(0.002));
  }

  /// A worked bed of an open fluids library: 0.8 mm, pores 0.4, 1.3262912 mm/s of water, half a
  /// metre: 892.3013 Pa. There inertia is 2 %; at a hundred times the speed it governs.
  @Test
  void ergunsBedIsAsInAWorkedCase() {
    assertThat(BedFlow.ergunPaPerM(0.0008, 0.4, 0.0013262912, 1000, 1e-3))
        .isCloseTo(2 * 892.3013, within(0.01));
    double fast = BedFlow.ergunPaPerM(0.0008, 0.4, 0.13262912, 1000, 1e-3);
    double faster = BedFlow.ergunPaPerM(0.0008, 0.4, 0.26525824, 1000, 1e-3);
    assertThat(faster / fast).isBetween(3.3, 4.0);
    for (double pores : new double[] {0, 1, Double.NaN}) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> BedFlow.ergunPaPerM(0.0008, pores, 0.001, 1000, 1e-3));
      assertThatIllegalArgumentException().isThrownBy(() -> BedFlow.permeabilityM2(0.0008, pores));
    }
    assertThatIllegalArgumentException().isThrownBy(() -> BedFlow.permeabilityM2(0, 0.4));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BedFlow.carmanPaPerM(0, 0.4, 0.001, 1000, 1e-3));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BedFlow.ergunPaPerM(0, 0.4, 0.001, 1000, 1e-3));
  }

  /// One alone agrees with itself; of two pairs that are equally large the closer one is kept; one
  /// far off is left out wherever it stands.
  @Test
  void theLargestAgreeingSetIsTheOneThatAgreesBest() {
    Thermometers.Reading lone = new Thermometers.Reading(66, 0.4);
    Thermometers.Together alone = Thermometers.of(List.of(lone));
    assertThat(alone.agree()).isTrue();
    assertThat(alone.probabilityFrac()).isEqualTo(1);
    assertThat(alone.birgeRatio()).isZero();
    assertThat(Thermometers.largestAgreeing(List.of(lone))).containsExactly(lone);
    Thermometers.Reading near = new Thermometers.Reading(66.1, 0.1);
    Thermometers.Reading mid = new Thermometers.Reading(66.0, 0.1);
    Thermometers.Reading off = new Thermometers.Reading(65.75, 0.1);
    Thermometers.Reading far = new Thermometers.Reading(80, 0.1);
    assertThat(Thermometers.largestAgreeing(List.of(off, far, mid, near)))
        .containsExactly(mid, near);
    assertThat(Thermometers.largestAgreeing(List.of(mid, near, far, off)))
        .containsExactly(mid, near);
    assertThat(Thermometers.largestAgreeing(Collections.nCopies(16, mid))).hasSize(16);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Thermometers.largestAgreeing(List.of()))
        .withMessageContaining("0 readings");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Thermometers.largestAgreeing(Collections.nCopies(17, mid)))
        .withMessageContaining("17 readings");
  }

  /// Weights are one over the squared doubt: a tenth of the doubt counts a hundredfold.
  @Test
  void aThermometerCountsByItsDoubtSquared() {
    var both =
        Thermometers.of(
            List.of(new Thermometers.Reading(60, 1), new Thermometers.Reading(61, 0.1)));
    assertThat(both.meanC()).isCloseTo(61 - 1 / 101.0, within(1e-9));
    assertThat(both.doubtK()).isCloseTo(1 / Math.sqrt(101), within(1e-9));
    assertThat(both.birgeRatio()).isCloseTo(Math.sqrt(both.chiSquareNumber()), within(1e-12));
  }
}
