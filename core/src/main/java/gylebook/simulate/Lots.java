package gylebook.simulate;

import gylebook.recipe.Analysis;
import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Recipe;
import gylebook.science.Colour;
import gylebook.science.Humulinone;
import java.util.List;

/// The member's numbers of the recipe: what its lots really hold, and what the models leave open.
///
/// A scratch object, filled anew for each member.
public final class Lots {
  /// An empty one, to be filled.
  public Lots() {}

  // The packet's alpha is one sample of a harvest (assumed: 6 % of the value).
  private static final double ALPHA_DOUBT_RATIO = 0.06;
  // Three rules for the colour of a grist part by about so much from 11 to 37 malt colour units;
  // how
  // beers scatter about any of them nobody whom we read says.
  private static final double COLOUR_DOUBT_RATIO = 0.10;
  // Malt to malt, attenuation differs by 3 % absolute (hot-side sheet, read spread).
  private static final double ATTENUATION_DOUBT_FRAC = 0.03;
  // Humulinones in pellets: 0.2 to 0.5 % by weight (Maye 2015).
  // Pellets 5 to 10 L, whole cones 10 to 15 L: common practice, no source.
  private static final double PELLET_HOLDS_L_PER_KG = 7.5;
  private static final double LEAF_HOLDS_L_PER_KG = 12.5;
  // Loose pellets in beer 5 to 10 L, 7.5 when unknown (a supplier's trial, second-hand).
  private static final double DRY_HOP_HOLDS_L_PER_KG = 7.5;
  private static final double MG_PER_G = 1000;
  private static final double G_PER_KG = 1000;
  private static final double WORT_KG_PER_L = 1.04;
  private static final double HUMULINONE_FRAC = 0.003;
  private static final double HUMULINONE_DOUBT_RATIO = 0.25;

  double maltKg;
  double maltMoistureFrac;
  double maltExtractFrac;
  double kettleExtractKg;
  double kettleWaterKg;
  double fermenterExtractKg;
  double potentialKg;
  double maltPotentialKg;
  double colourLovibondKg;
  double attenuationOffsetFrac;
  double liquorFactor;
  double yeastFactor;
  double wettingFactor;
  double isoFactor;
  double boilColourEbc;
  double colourFactor;
  double kettleKeepsFrac;
  double fermentKeepsFrac;
  double pelletHoldsLPerKg;
  double leafHoldsLPerKg;
  double dryHopHoldsLPerKg;
  double dryBitterMgPerL;
  double dryHopKg;
  final ColdSide cold = new ColdSide();
  final TreatedLiquor liquor = new TreatedLiquor();
  final double[] alphaMg = new double[BrewState.MOST_HOPS];

  /// Reads the member's numbers of the recipe, scaled as set.
  void read(Recipe recipe, Settings settings, Doubts doubts) {
    if (recipe.hops().size() > BrewState.MOST_HOPS) {
      throw new IllegalArgumentException(
          "The recipe has "
              + recipe.hops().size()
              + " additions of hops; we can follow "
              + BrewState.MOST_HOPS
              + ".");
    }
    liquorFactor = doubts.factor("recipe.liquorFactor", 0.007);
    attenuationOffsetFrac = doubts.around("recipe.attenuationFrac", 0, ATTENUATION_DOUBT_FRAC);
    yeastFactor = doubts.factor("recipe.yeastFactor", 0.02);
    wettingFactor = doubts.factor("model.wettingFactor", 0.15);
    isoFactor = doubts.factor("model.isoFactor", 0.08);
    boilColourEbc = Math.max(0, doubts.around("model.boilColourEbc", 1.5, 0.5));
    kettleKeepsFrac = doubts.share("model.kettleKeepsFrac", 0.90, 0.03);
    fermentKeepsFrac = doubts.share("model.fermentKeepsFrac", 0.75, 0.035);
    pelletHoldsLPerKg = PELLET_HOLDS_L_PER_KG * doubts.factor("model.pelletHoldsLPerKg", 0.2);
    leafHoldsLPerKg = LEAF_HOLDS_L_PER_KG * doubts.factor("model.leafHoldsLPerKg", 0.15);
    dryHopHoldsLPerKg = DRY_HOP_HOLDS_L_PER_KG * doubts.factor("model.dryHopHoldsLPerKg", 0.2);
    grist(recipe.grist(), settings.gristFactor(), doubts);
    hops(recipe.hops(), settings.hopFactor(), doubts);
    liquor.read(recipe, settings, doubts);
    cold.read(recipe, doubts);
    colourFactor = doubts.factor("model.colourFactor", COLOUR_DOUBT_RATIO);
  }

  private void grist(List<Goods> grist, double gristFactor, Doubts doubts) {
    maltKg = 0;
    kettleExtractKg = 0;
    kettleWaterKg = 0;
    fermenterExtractKg = 0;
    potentialKg = 0;
    colourLovibondKg = 0;
    double waterKg = 0;
    double malt = 0;
    double offsetFracKg = 0;
    for (int i = 0; i < grist.size(); i++) {
      Goods line = grist.get(i);
      Analysis analysis = line.analysis();
      double massKg = line.massKg().inside() * gristFactor;
      double extractFrac =
          doubts.share(
              "grist." + i + ".extractFrac", analysis.extractFrac(), analysis.extractDoubtFrac());
      double extractKg = massKg * (1 - analysis.moistureFrac()) * extractFrac;
      potentialKg += extractKg;
      colourLovibondKg += massKg * lovibond(analysis.colourEbc());
      switch (line.kind().mashed() ? Goods.Use.MASH : line.use()) {
        case MASH -> {
          maltKg += massKg;
          waterKg += massKg * analysis.moistureFrac();
          malt += extractKg;
          offsetFracKg += extractKg * analysis.attenuationOffsetFrac();
        }
        case BOIL -> {
          kettleExtractKg += extractKg;
          kettleWaterKg += massKg * analysis.moistureFrac();
        }
        case FERMENTER -> fermenterExtractKg += extractKg;
      }
    }
    maltPotentialKg = malt;
    maltMoistureFrac = maltKg > 0 ? waterKg / maltKg : 0;
    maltExtractFrac = maltKg > 0 ? malt / (maltKg - waterKg) : 0;
    attenuationOffsetFrac += malt > 0 ? offsetFracKg / malt : 0;
  }

  private static double lovibond(double maltEbc) {
    return maltEbc > 0 ? Colour.maltLovibond(maltEbc) : 0;
  }

  private void hops(List<Hop> hops, double hopFactor, Doubts doubts) {
    dryHopKg = 0;
    double humulinoneFrac =
        HUMULINONE_FRAC * doubts.factor("model.humulinoneFrac", HUMULINONE_DOUBT_RATIO);
    double dryG = 0;
    for (int i = 0; i < hops.size(); i++) {
      Hop hop = hops.get(i);
      boolean dry = hop.when() instanceof Hop.When.Dry;
      double massG = hop.massG().inside() * (dry ? 1 : hopFactor);
      double alphaFactor = doubts.factor("hops." + i + ".alphaFrac", ALPHA_DOUBT_RATIO);
      double alphaFrac = hop.alphaFrac().inside() * AgedHop.leftFrac(hop);
      alphaMg[i] = dry ? 0 : massG * MG_PER_G * alphaFrac * alphaFactor;
      dryG += dry ? massG : 0;
    }
    dryHopKg = dryG / G_PER_KG;
    // Reckoned as if all went into one litre; the day's litres divide it later.
    double inOneLitre = dryG;
    dryBitterMgPerL = dryG > 0 ? bitterMgPerL(inOneLitre, humulinoneFrac) : 0;
  }

  private static double bitterMgPerL(double dryHopGPerL, double humulinoneFrac) {
    return Humulinone.isoEquivalentMgPerL(dryHopGPerL, humulinoneFrac, 0.675);
  }

  /// Wort that these hops hold back.
  double heldKg(Hop hop, double hopFactor) {
    double massG = hop.massG().inside() * hopFactor;
    double massKg = massG / G_PER_KG;
    double holdsLPerKg =
        switch (hop.form()) {
          case LEAF, WET_LEAF, PLUG -> leafHoldsLPerKg;
          case PELLET, POWDER -> pelletHoldsLPerKg;
          case EXTRACT -> 0;
        };
    return massKg * holdsLPerKg * WORT_KG_PER_L;
  }
}
