package gylebook.simulate;

import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.units.AnyUnit;

/// A treated liquor at a glance, with every number at its middle.
///
/// @param mash ions of the liquor that the malt goes into, salts and acid in
/// @param whole ions of all liquor together
/// @param mashPh pH of the mash, read cold; NaN without malt
@AnyUnit("ions name their unit themselves")
public record LiquorLook(Liquor.Ions mash, Liquor.Ions whole, double mashPh) {

  /// What the recipe's liquor and its additions come to.
  public static LiquorLook of(Recipe recipe, Settings settings) {
    Doubts doubts = new Doubts(0);
    doubts.turnTo(-1);
    TreatedLiquor liquor = new TreatedLiquor();
    liquor.read(recipe, settings, doubts);
    return new LiquorLook(
        ions(liquor.mashMgPerL, liquor.mashBicarbonateMgPerL()),
        ions(liquor.wholeMgPerL, liquor.wholeBicarbonateMgPerL()),
        liquor.mashPh);
  }

  private static Liquor.Ions ions(double[] mgPerL, double bicarbonateMgPerL) {
    return new Liquor.Ions(
        mgPerL[TreatedLiquor.CALCIUM],
        mgPerL[TreatedLiquor.MAGNESIUM],
        mgPerL[TreatedLiquor.SODIUM],
        mgPerL[TreatedLiquor.CHLORIDE],
        mgPerL[TreatedLiquor.SULFATE],
        bicarbonateMgPerL);
  }
}
