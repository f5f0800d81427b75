package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
import gylebook.testing.Cases;
import gylebook.testing.Integrated;
import org.junit.jupiter.api.Test;

/// Hops, boil and colour: mistakes that are easily made, each shown to be one and not to be ours.
class HopTrapsTest {
  private static final IF97 STEAM = new IF97(IF97.UnitSystem.SI);

  /// Malowicki and Shellhammer: half of the alpha acid is gone in 55.5 min at 100 C, and iso-alpha
  /// acid is at its most after 149 min; at 110 C the rates are 2.8627e-2 and 7.6611e-3 per minute.
  @Test
  void boilingOnDestroysMoreThanItMakes() {
    double k1 = 60 * HopIsomerisation.formationPerSec(100);
    assertThat(Math.log(2) / k1).isCloseTo(55.5, within(0.05));
    double most = HopIsomerisation.isoFrac(100, 148.6);
    assertThat(HopIsomerisation.isoFrac(100, 140)).isLessThan(most);
    assertThat(HopIsomerisation.isoFrac(100, 157)).isLessThan(most);
    assertThat(60 * HopIsomerisation.formationPerSec(110)).isCloseTo(2.8627e-2, within(1e-6));
    assertThat(60 * HopIsomerisation.lossPerSec(110)).isCloseTo(7.6611e-3, within(1e-7));
  }

  /// Tinseth's 0.04 per minute is no rate of isomerisation: it is three times the measured one,
  /// since it holds losses, and its gravity term is loss too: the rates know no gravity.
  @Test
  void theConventionIsNotChemistry() {
    double k1 = 60 * HopIsomerisation.formationPerSec(100);
    assertThat(0.04 / k1).isBetween(3.0, 3.4);
    double thin = HopUtilisation.tinsethFrac(1.030, 60);
    assertThat(HopUtilisation.tinsethFrac(1.070, 60) / thin).isCloseTo(0.698, within(0.002));
    assertThat(HopUtilisation.RANGE.caution(1.020)).isPresent();
  }

  /// Of the alpha acid of a 60 min addition a brewery of 50 barrels found 44.0 % as bitterness in
  /// the wort (Justus 2018); brewhouses isomerise under 50 % (HVG); about 30 % reach the glass
  /// (Kappler 2011).
  @Test
  void theYieldOfTheRatesIsThatOfBreweries() {
    double formed = HopIsomerisation.isoFrac(100, 60);
    assertThat(0.44 / formed).as("what kettle and trub keep").isBetween(0.85, 0.95);
    assertThat(formed).isLessThan(0.5);
    assertThat(formed * HopUtilisation.kettleToGlassFrac(0.10, 0.25)).isCloseTo(0.30, within(0.03));
    assertThat(formed * 0.9 * (1 - 0.337)).isCloseTo(0.30, within(0.03));
  }

  /// A kettle that cools by itself from 98 C to 25 C with a time constant of two hours: 0.1479 in
  /// half an hour; evenly to 78 C in 40 min: 0.1748 (two integrators of libraries agree to 1e-5).
  @Test
  void aCoolingKettleGoesOnMakingBitterness() {
    assertThat(HopIsomerisation.freeCoolingIsoFrac(98, 25, 120, 30))
        .isCloseTo(0.1479, within(1e-4));
    assertThat(HopIsomerisation.evenCoolingIsoFrac(98, 78, 40)).isCloseTo(0.1748, within(1e-4));
  }

  /// A stand at 80 C for half an hour is not half an hour of boiling: a fifth of it, where the
  /// convention would count it in full.
  @Test
  void aStandIsNotABoil() {
    double ratio = HopIsomerisation.isoFrac(100, 30) / HopIsomerisation.isoFrac(80, 30);
    assertThat(ratio).isBetween(4.7, 5.3);
    assertThat(HopIsomerisation.RANGE.caution(80).orElseThrow()).contains("extrapolated");
  }

  /// A small addition dissolves at once; a large one is as the integrator has it.
  @Test
  void moreHopsThanDissolveAreNotMoreBitterInProportion() {
    Cases.each(
        20,
        random -> {
          double hopG = 5 + 300 * random.nextDouble();
          double wortC = 90 + 12 * random.nextDouble();
          double heldMin = 5 + 120 * random.nextDouble();
          AlphaSolubility.Left left =
              AlphaSolubility.left(hopG, 0.10, 20, heldMin, wortC, 0.1, 0.25);
          double least = 0.675 * integrated(hopG * 5, 90, wortC, heldMin);
          double middle = 0.675 * integrated(hopG * 5, 240, wortC, heldMin);
          assertThat(left.leastMgPerL()).isCloseTo(least, within(2e-4 * least));
          assertThat(left.middleMgPerL()).isCloseTo(middle, within(2e-4 * middle));
          assertThat(left.middleMgPerL())
              .isBetween(left.leastMgPerL() - 1e-9, left.mostMgPerL() + 1e-9);
          assertThat(left.undissolvedMin() > 0).isEqualTo(hopG * 5 > 90);
        });
    // 500 mg/L: at most 90 x k1 = 1.124 mg/L a minute, 61 mg/L in an hour by hand, and not 238.
    AlphaSolubility.Left large = AlphaSolubility.left(100, 0.10, 20, 60, 100, 0, 0);
    double k2 = 60 * HopIsomerisation.lossPerSec(100);
    assertThat(large.leastMgPerL())
        .isCloseTo(90 * 1.2490e-2 / k2 * (1 - Math.exp(-60 * k2)), within(0.05));
    assertThat(large.mostMgPerL()).isCloseTo(500 * 0.4759, within(0.1));
    AlphaSolubility.Left small = AlphaSolubility.left(15, 0.10, 20, 60, 100, 0, 0);
    assertThat(small.leastMgPerL()).isCloseTo(small.mostMgPerL(), within(1e-9));
  }

  private static double integrated(
      double alphaMgPerL, double solubleMgPerL, double wortC, double heldMin) {
    double k1 = 7.9e11 * Math.exp(-11_858 / (wortC + 273.15));
    double k2 = 4.1e12 * Math.exp(-12_994 / (wortC + 273.15));
    return Integrated.after(
        heldMin,
        0.5,
        new double[] {alphaMgPerL, 0},
        (_, y) -> {
          double turned = k1 * Math.min(y[0], solubleMgPerL);
          return new double[] {-turned, turned - k2 * y[1]};
        })[1];
  }

  /// The factor 50 of the bitterness unit is 70, that of iso-alpha acid alone, times the five
  /// sevenths that hop matter held of it in beers of the 1950s (Oxford Companion): so the unit is
  /// not milligrams of iso-alpha acid for other beers.
  @Test
  void aBitternessUnitHoldsAnAssumptionAboutOldHops() {
    assertThat(BitternessUnits.unitsNumber(1)).isCloseTo(70 * 5.0 / 7, within(1e-9));
  }

  /// What the index says of hops: crops of 1969 to 1977 had slopes of 101.8 to 114.6 (Nickerson and
  /// Likens 1979), which is a doubt of a tenth in the loss.
  @Test
  void theStorageIndexIsNoBetterThanItsSlope() {
    assertThat(HopStorage.lostFrac(0.40, 1.10)).isCloseTo(0.225, within(0.0005));
    assertThat(HopStorage.lostFrac(0.50, 1.10)).isCloseTo(0.331, within(0.0005));
    double least = HopStorage.lostFrac(0.40, 1.018);
    assertThat(HopStorage.lostFrac(0.40, 1.146) / least).isCloseTo(1.126, within(0.001));
    assertThat(HopStorage.lostFrac(0.24, 1.10)).isZero();
  }

  /// 35 % lost in 180 d at 20 C; after a year 0.418, 0.659 and 0.860 are left at 20, 4 and -18 C
  /// (first order, halved per 15 K; Garetz 1994 after Green 1978).
  @Test
  void hopsAgeByTheirWarmth() {
    assertThat(HopAge.leftFrac(0.35, 180, 20, 20, 365, 1)).isCloseTo(0.418, within(0.001));
    assertThat(HopAge.leftFrac(0.35, 180, 20, 4, 365, 1)).isCloseTo(0.659, within(0.001));
    assertThat(HopAge.leftFrac(0.35, 180, 20, -18, 365, 1)).isCloseTo(0.860, within(0.001));
  }

  /// Up a mountain of 1600 m (94.6 C) an hour's boil splits as much precursor as 32 min by the sea
  /// (half-lives doubled per 6 K); 98, 95 and 90 C: 44, 62 and 111 min. The rule is an activation
  /// energy of 131.6 kJ/mol between 94 and 100 C.
  @Test
  void anHourInTheMountainsIsHalfAnHourByTheSea() {
    double sea = DimethylSulfide.halfLifeFromBoilMin(100, 35);
    double high = DimethylSulfide.halfLifeFromBoilMin(94.62, 35);
    assertThat(60 * sea / high).isCloseTo(32.2, within(0.1));
    assertThat(DimethylSulfide.halfLifeFromBoilMin(98, 35)).isCloseTo(44, within(0.2));
    assertThat(DimethylSulfide.halfLifeFromBoilMin(95, 35)).isCloseTo(62.4, within(0.1));
    double arrhenius = Math.exp(131_594 / 8.314462618 * (1 / 367.15 - 1 / 373.15));
    assertThat(DimethylSulfide.halfLifeFromBoilMin(94, 35) / sea)
        .isCloseTo(arrhenius, within(0.001));
  }

  /// 3500 W at 0.70 less 400 W boil off 3.258 kg/h at 89.9 kPa; the latent heat of sea level would
  /// be 0.4 % wrong there, the power of a sagging mains 19 %.
  @Test
  void theMainsMatterMoreThanTheMountains() {
    double there = Boil.evaporationKgPerHr(3500, 0.70, 400, 89.876);
    assertThat(there).isCloseTo(3.258, within(0.001));
    assertThat(Boil.evaporationKgPerHr(3500, 0.70, 400, 101.325) / there)
        .isCloseTo(1.004, within(0.001));
    assertThat(Element.sagLossFrac(0.90)).isCloseTo(0.19, within(1e-9));
  }

  /// A bare wall of half a square metre at the boil loses 300 to 480 W, that is 8 to 12 W/(m2 K)
  /// (engineering figures from memory); steel from bright to dull is what lies between.
  @Test
  void aBareWallLosesWhatEngineersSay() {
    double convection = WallHeat.verticalWPerM2K(0.35, 100, 20, 101.325);
    double bright = convection + Radiation.coefficientWPerM2K(0.25, 100, 20);
    double dull = convection + Radiation.coefficientWPerM2K(0.7, 100, 20);
    assertThat(bright).isBetween(7.0, 10.0);
    assertThat(dull).isBetween(9.5, 13.0);
    assertThat(bright * 0.5 * 80).isBetween(280.0, 400.0);
  }

  /// Absorbances of bright beers add by volume (Lambert and Beer); the curve from malt does not:
  /// two grists in one kettle are not the sum of their beers.
  @Test
  void coloursOfBeersAddColoursOfRecipesDoNot() {
    double half = (Colour.absorbedSrm(1.0) + Colour.absorbedSrm(0.2)) / 2;
    assertThat(Colour.absorbedSrm(0.6)).isCloseTo(half, within(1e-12));
    double together = Colour.maltUnitsSrm(30);
    assertThat(Colour.maltUnitsSrm(10) + Colour.maltUnitsSrm(20)).isGreaterThan(1.15 * together);
    // Malt's scale is not beer's: 160 EBC of malt are 60.4 L by the rule, 81.3 SRM by the beer's.
    assertThat(Colour.maltLovibond(160)).isCloseTo(60.4, within(0.05));
    assertThat(Colour.beerSrm(160)).isCloseTo(81.3, within(0.05));
  }

  /// Morey drew his curve through the two lines and the units themselves: it lies within 2.1 SRM of
  /// both from 15 to 37 units, and within 3.1 SRM of the units up to 10.5.
  @Test
  void theCurveLiesAmongTheLinesItWasDrawnThrough() {
    for (double units = 15; units <= 37; units++) {
      Colour.Lines lines = Colour.lines(units);
      double curve = Colour.maltUnitsSrm(units);
      assertThat(lines.mosherSrm()).as("%s units", units).isCloseTo(curve, within(2.1));
      assertThat(lines.danielsSrm()).as("%s units", units).isCloseTo(curve, within(2.1));
    }
    for (double units = 2; units <= 10.5; units += 0.5) {
      assertThat(Colour.maltUnitsSrm(units)).as("%s units", units).isCloseTo(units, within(3.1));
    }
    assertThat(Colour.lines(0).danielsSrm()).as("no pale beer").isGreaterThan(8);
    Colour.Lines malt = Colour.ofMaltLines(5, 10, 20);
    assertThat(malt.mosherSrm()).isCloseTo(0.3 * 20.863 + 4.7, within(0.001));
    assertThat(malt.danielsSrm()).isCloseTo(0.2 * 20.863 + 8.4, within(0.001));
  }

  /// A weather report is reduced to sea level: taken for the pressure at 1609 m, the boil comes out
  /// 5.4 K too hot (94.62 C by IAPWS-IF97 and the standard atmosphere).
  @Test
  void theReportIsNotThePressureInTheKitchen() {
    double kitchen = Saturation.boilingC(Atmosphere.stationKpa(101.325, 1609.34));
    assertThat(kitchen).isCloseTo(94.62, within(0.005));
    assertThat(Saturation.boilingC(101.325) - kitchen).isCloseTo(5.35, within(0.01));
  }

  /// Ten centimetres of water add 0.26 K to its boil, of a wort of 12 % 0.27 K (the steam tables of
  /// a library). The ideal law of the rise is 1 % short at 10 P and 5 % at 20.
  @Test
  void depthAndExtractRaiseTheBoilALittle() {
    double boilKelvin = STEAM.saturationTemperatureP(101_325);
    double belowKelvin = STEAM.saturationTemperatureP(101_325 + 0.1 * 9.80665 * 958.345);
    assertThat(BoilingRise.depthRiseK(0.1, 0, 101.325))
        .isCloseTo(belowKelvin - boilKelvin, within(1e-4))
        .isCloseTo(0.26, within(0.002));
    assertThat(BoilingRise.depthRiseK(0.1, 0.12, 101.325)).isCloseTo(0.27, within(0.002));
    assertThat(BoilingRise.riseK(0.12, 101.325)).isCloseTo(0.209, within(0.0005));
    assertThat(BoilingRise.idealRiseK(0.10, 342.3)).isCloseTo(0.167, within(0.0005));
    assertThat(BoilingRise.idealRiseK(0.20, 342.3) / BoilingRise.riseK(0.20, 101.325))
        .isCloseTo(0.954, within(0.002));
  }
}
