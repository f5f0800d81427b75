package gylebook.simulate;

import gylebook.recipe.Ferment;
import gylebook.recipe.Pack;
import gylebook.recipe.Recipe;
import gylebook.science.BeerGas;
import gylebook.science.FermentationCurve;
import gylebook.units.AnyUnit;
import java.util.List;

/// From the fermenter to the package: when the ferment ends, what is left to ferment when the
/// recipe's steps are over, and the gas in the package.
///
/// The clock of the ferment runs by the recipe's temperatures; its pace, its start and what warmth
/// does to it are priors with wide doubts. **Never package by it**: read the gravity.
@AnyUnit("volumes of gas, shares and hours of one cold side")
final class ColdSide {
  // Doubts of the same priors that a fit of readings starts from (8 in 10: 0.064 to 0.157 an hour).
  private static final double RATE_DOUBT_RATIO = 0.35;
  private static final double MIDPOINT_DOUBT_RATIO = 0.25;
  private static final double TEN_KELVIN_DOUBT_RATIO = 0.12;
  // Three forms of the solubility differ by 5 to 7 %.
  private static final double GAS_DOUBT_RATIO = 0.035;
  // Sugar is weighed for litres read off a fermenter.
  private static final double PRIMING_DOUBT_RATIO = 0.03;
  private static final double ENDED_FRAC = 0.02;
  private static final double SEC_PER_HR = 3600;
  private static final double COLDEST_C = 0;
  private static final double WARMEST_C = 40;
  private static final double MOST_VOL = 5;
  private static final double BEER_KG_PER_L = 1.01;
  private static final double REAL_PER_APPARENT_RATIO = 0.805;
  private static final double GAS_PER_EXTRACT_RATIO = 0.46286;

  private double rateAt20PerHr;
  private double midpointNumber;
  private double tenKelvinFactor;
  private double gasFactor;
  private double primingFactor;
  private double stepsTauNumber;

  double fermentEndSec;
  double leftFrac;

  /// Reads the member's ferment.
  void read(Recipe recipe, Doubts doubts) {
    rateAt20PerHr =
        FermentationCurve.RATE_PER_HR * doubts.factor("model.fermentRateFactor", RATE_DOUBT_RATIO);
    midpointNumber =
        FermentationCurve.MIDPOINT_NUMBER
            * doubts.factor("model.fermentMidpoint", MIDPOINT_DOUBT_RATIO);
    tenKelvinFactor =
        Math.clamp(
            FermentationCurve.Q10_FACTOR
                * doubts.factor("model.tenKelvinFactor", TEN_KELVIN_DOUBT_RATIO),
            1,
            6);
    gasFactor = doubts.factor("model.gasFactor", GAS_DOUBT_RATIO);
    primingFactor = doubts.factor("model.primingFactor", PRIMING_DOUBT_RATIO);
    clock(recipe.ferment().steps(), recipe.yeast().pitchC().inside());
  }

  private void clock(List<Ferment.Step> steps, double pitchC) {
    double wantedTau = midpointNumber + Math.log(1 / ENDED_FRAC - 1);
    stepsTauNumber = 0;
    double passedHr = 0;
    double endHr = Double.NaN;
    double lastC = pitchC;
    for (Ferment.Step step : steps) {
      double stepHr = step.holdSec().inside() / SEC_PER_HR;
      // The two ends and the middle, as Simpson's rule weighs them.
      double firstC = step.startC().inside();
      lastC = step.endC().inside();
      double middleC = firstC + (lastC - firstC) / 2;
      double perHr = (perHr(firstC) + 4 * perHr(middleC) + perHr(lastC)) / 6;
      if (Double.isNaN(endHr) && stepsTauNumber + perHr * stepHr >= wantedTau) {
        endHr = passedHr + (wantedTau - stepsTauNumber) / perHr;
      }
      stepsTauNumber += perHr * stepHr;
      passedHr += stepHr;
    }
    if (Double.isNaN(endHr)) {
      endHr = passedHr + (wantedTau - stepsTauNumber) / perHr(lastC);
    }
    fermentEndSec = endHr * SEC_PER_HR;
    leftFrac =
        FermentationCurve.leftFrac(stepsTauNumber, midpointNumber, FermentationCurve.SKEW_NUMBER);
  }

  private double perHr(double fermentC) {
    return FermentationCurve.ratePerHr(
        Math.clamp(fermentC, COLDEST_C, WARMEST_C), rateAt20PerHr, tenKelvinFactor);
  }

  /// Gas in the package when all that is left has fermented there.
  ///
  /// A keg holds what its regulator sets. Bottles and casks hold what the beer kept from the
  /// warmest step, the sugar weighed for the wanted gas, and what had still to ferment.
  double packagedVol(Recipe recipe, double airKpa, double leftPlato) {
    double wantedVol = wantedVol(recipe);
    if (recipe.pack().kind() == Pack.Kind.KEG) {
      return wantedVol * gasFactor;
    }
    double keptVol = keptVol(recipe, airKpa);
    double primedVol = Math.max(0, wantedVol - keptVol);
    double addedVol =
        BeerGas.addedVol(
            Math.clamp(leftPlato, 0, 40),
            BEER_KG_PER_L,
            REAL_PER_APPARENT_RATIO,
            GAS_PER_EXTRACT_RATIO);
    return keptVol * gasFactor + primedVol * primingFactor + addedVol;
  }

  /// Table sugar for the wanted gas; NaN where the gas comes from a bottle of its own.
  double primingG(Recipe recipe, double airKpa, double beerL) {
    return recipe.pack().kind() == Pack.Kind.KEG
        ? Double.NaN
        : BeerGas.priming(beerL, wantedVol(recipe), warmestC(recipe), airKpa).sucroseG();
  }

  private static double keptVol(Recipe recipe, double airKpa) {
    return BeerGas.residue(warmestC(recipe), airKpa).heldVol();
  }

  private static double wantedVol(Recipe recipe) {
    return Math.clamp(recipe.pack().carbonationRatio().inside(), 0, MOST_VOL);
  }

  private static double warmestC(Recipe recipe) {
    double warmestC =
        recipe.ferment().steps().stream()
            .mapToDouble(step -> Math.max(step.startC().inside(), step.endC().inside()))
            .max()
            .orElse(recipe.yeast().pitchC().inside());
    return Math.clamp(warmestC, COLDEST_C, WARMEST_C);
  }
}
