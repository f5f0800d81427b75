package gylebook.simulate;

import gylebook.recipe.Goods;
import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.science.ResidualAlkalinity;
import gylebook.science.Salt;
import gylebook.units.AnyUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/// One member's liquor with its salts and acids, and the pH of the mash that it makes.
///
/// The mash sees the liquor that the malt goes into; the beer sees all of it, liquor held back and
/// salts in the kettle included. The pH is that of a proton balance, read cold: each malt's own pH
/// with distilled water, a straight buffer, the residual alkalinity of the mash liquor, acid.
///
/// A scratch object, filled anew for each member.
@AnyUnit("columns of ions in mg/L, in the order of the ions")
final class TreatedLiquor {
  static final int CALCIUM = 0;
  static final int MAGNESIUM = 1;
  static final int SODIUM = 2;
  static final int CHLORIDE = 3;
  static final int SULFATE = 4;
  static final int ION_COUNT = 5;

  private static final double MG_PER_MEQ_BICARBONATE = 61.017;
  private static final double MG_PER_MEQ_CALCIUM = 40.078 / 2;
  private static final double MG_PER_MEQ_MAGNESIUM = 24.305 / 2;

  // 9 in 10 between 22 and 50 meq/(kg pH): what was found for malts and whole mashes.
  private static final double BUFFER_MEQ_PER_KG_PH = 33.2;
  private static final double BUFFER_DOUBT_RATIO = 0.25;
  // Pale malts lie between 5.6 and 5.8 (from memory): two standard deviations of that.
  private static final double MALT_DOUBT_PH = 0.06;
  // Water works report means; a tap wanders about them (assumed).
  private static final double IONS_DOUBT_RATIO = 0.10;
  // Chalk and lime give the mash less than they hold (deLange 2013); how much less is assumed.
  private static final double CHALK_GIVES_FRAC = 0.6;
  private static final double CHALK_DOUBT_FRAC = 0.15;
  private static final double DELIVERED_AT_PH = 5.4;
  private static final double LEAST_PH = 3.5;
  private static final double MOST_PH = 8;

  // Reading a formula is dear and a dose is a straight line: a gram of each, once.
  private static final Map<Salt, Salt.Ions> OF_A_GRAM =
      Arrays.stream(Salt.values())
          .collect(Collectors.toUnmodifiableMap(salt -> salt, salt -> salt.ionsOf(1)));

  final double[] mashMgPerL = new double[ION_COUNT];
  final double[] wholeMgPerL = new double[ION_COUNT];
  double mashAlkalinityMeqPerL;
  double wholeAlkalinityMeqPerL;
  double mashPh;

  private double bufferFactor;
  private double maltShiftPh;
  private double ionsFactor;
  private double alkalinityFactor;
  private double chalkFrac;
  private double mashAcidMeq;
  private double wholeAcidMeq;

  /// Reads the member's liquor.
  void read(Recipe recipe, Settings settings, Doubts doubts) {
    bufferFactor = doubts.factor("model.maltBufferFactor", BUFFER_DOUBT_RATIO);
    maltShiftPh = doubts.around("model.maltPh", 0, MALT_DOUBT_PH);
    ionsFactor = doubts.factor("recipe.ionsFactor", IONS_DOUBT_RATIO);
    alkalinityFactor = doubts.factor("recipe.alkalinityFactor", IONS_DOUBT_RATIO);
    chalkFrac = doubts.share("model.chalkFrac", CHALK_GIVES_FRAC, CHALK_DOUBT_FRAC);
    source(recipe.liquor().source());
    double wholeL = settings.liquorL() + settings.topUpL();
    for (Liquor.Addition addition : recipe.liquor().additions()) {
      add(addition, settings.liquorL(), wholeL);
    }
    acids(recipe.liquor().additions(), DELIVERED_AT_PH);
    mashPh = mashPh(recipe.grist(), settings);
    if (mashAcidMeq > 0) {
      // Lactic acid gives a little less in a sourer mash: once more at the pH found.
      acids(recipe.liquor().additions(), Math.clamp(mashPh, 4, 7));
      mashPh = mashPh(recipe.grist(), settings);
    }
    mashAlkalinityMeqPerL -= mashAcidMeq / settings.liquorL();
    wholeAlkalinityMeqPerL -= wholeAcidMeq / wholeL;
  }

  private void source(Liquor.Ions ions) {
    mashMgPerL[CALCIUM] = ions.calciumMgPerL() * ionsFactor;
    mashMgPerL[MAGNESIUM] = ions.magnesiumMgPerL() * ionsFactor;
    mashMgPerL[SODIUM] = ions.sodiumMgPerL() * ionsFactor;
    mashMgPerL[CHLORIDE] = ions.chlorideMgPerL() * ionsFactor;
    mashMgPerL[SULFATE] = ions.sulphateMgPerL() * ionsFactor;
    System.arraycopy(mashMgPerL, 0, wholeMgPerL, 0, ION_COUNT);
    mashAlkalinityMeqPerL = ions.bicarbonateMgPerL() / MG_PER_MEQ_BICARBONATE * alkalinityFactor;
    wholeAlkalinityMeqPerL = mashAlkalinityMeqPerL;
  }

  private void add(Liquor.Addition addition, double mashL, double wholeL) {
    Optional<Salt> salt = Dose.salt(addition.agent());
    if (salt.isEmpty()) {
      return;
    }
    Salt.Ions perG = Objects.requireNonNull(OF_A_GRAM.get(salt.get()));
    double massG = Dose.massG(addition);
    double givesFrac = salt.get() == Salt.CHALK || salt.get() == Salt.LIME ? chalkFrac : 1;
    double givenG = massG * givesFrac;
    wholeAlkalinityMeqPerL += givenG / wholeL * perG.alkalinityMeqPerL();
    book(perG, givenG / wholeL, wholeMgPerL);
    if (addition.into() == Liquor.Into.MASH) {
      mashAlkalinityMeqPerL += givenG / mashL * perG.alkalinityMeqPerL();
      book(perG, givenG / mashL, mashMgPerL);
    }
  }

  private static void book(Salt.Ions perG, double givenGPerL, double[] mgPerL) {
    mgPerL[CALCIUM] += givenGPerL * perG.calciumMgPerL();
    mgPerL[MAGNESIUM] += givenGPerL * perG.magnesiumMgPerL();
    mgPerL[SODIUM] += givenGPerL * perG.sodiumMgPerL();
    mgPerL[CHLORIDE] += givenGPerL * perG.chlorideMgPerL();
    mgPerL[SULFATE] += givenGPerL * perG.sulfateMgPerL();
  }

  private void acids(List<Liquor.Addition> additions, double atPh) {
    mashAcidMeq = 0;
    wholeAcidMeq = 0;
    for (Liquor.Addition addition : additions) {
      double acidMeq = Dose.acidMeq(addition, atPh);
      wholeAcidMeq += acidMeq;
      mashAcidMeq += addition.into() == Liquor.Into.MASH ? acidMeq : 0;
    }
  }

  /// Straight buffers make the balance of the grist linear: no root has to be searched.
  private double mashPh(List<Goods> grist, Settings settings) {
    double bufferMeqPerPh = 0;
    double heldMeq = residual(mashMgPerL, mashAlkalinityMeqPerL) * settings.liquorL() - mashAcidMeq;
    for (Goods line : grist) {
      if (line.kind().mashed()) {
        double maltKg = line.massKg().inside() * settings.gristFactor();
        double lineMeqPerPh = maltKg * BUFFER_MEQ_PER_KG_PH * bufferFactor;
        bufferMeqPerPh += lineMeqPerPh;
        heldMeq += lineMeqPerPh * (MaltSourness.maltPh(line) + maltShiftPh);
        heldMeq -= maltKg * MaltSourness.acidMeqPerKg(line);
      }
    }
    return bufferMeqPerPh > 0
        ? Math.clamp(heldMeq / bufferMeqPerPh, LEAST_PH, MOST_PH)
        : Double.NaN;
  }

  /// Residual alkalinity of the mash liquor, acid counted as alkalinity taken away.
  double mashResidualMeqPerL() {
    return residual(mashMgPerL, mashAlkalinityMeqPerL);
  }

  /// By how much all liquor together moves the pH of the cast wort, against distilled water.
  double castShiftPh() {
    double residual = residual(wholeMgPerL, wholeAlkalinityMeqPerL);
    return ResidualAlkalinity.castWortShiftPh(Math.clamp(residual, -50, 50));
  }

  double mashBicarbonateMgPerL() {
    return Math.max(0, mashAlkalinityMeqPerL) * MG_PER_MEQ_BICARBONATE;
  }

  double wholeBicarbonateMgPerL() {
    return Math.max(0, wholeAlkalinityMeqPerL) * MG_PER_MEQ_BICARBONATE;
  }

  private static double residual(double[] mgPerL, double alkalinityMeqPerL) {
    return ResidualAlkalinity.residualMeqPerL(
        Math.clamp(alkalinityMeqPerL, -50, 50),
        mgPerL[CALCIUM] / MG_PER_MEQ_CALCIUM,
        mgPerL[MAGNESIUM] / MG_PER_MEQ_MAGNESIUM);
  }
}
