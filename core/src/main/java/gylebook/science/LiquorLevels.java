package gylebook.science;

import gylebook.units.AnyUnit;

/// What a mash liquor holds, or what is wanted of it; NaN is not known, or does not matter.
///
/// @param calciumMgPerL Ca
/// @param magnesiumMgPerL Mg
/// @param sodiumMgPerL Na
/// @param chlorideMgPerL Cl
/// @param sulfateMgPerL SO4
/// @param bicarbonateMgPerL alkalinity as HCO3, acid taken off
/// @param mashPh pH of the mash that it makes, read cold
@AnyUnit("a column of ions and a pH")
public record LiquorLevels(
    double calciumMgPerL,
    double magnesiumMgPerL,
    double sodiumMgPerL,
    double chlorideMgPerL,
    double sulfateMgPerL,
    double bicarbonateMgPerL,
    double mashPh) {
  static final int COUNT = 7;
  static final int PH = 6;
  static final int BICARBONATE = 5;

  double[] column() {
    return new double[] {
      calciumMgPerL,
      magnesiumMgPerL,
      sodiumMgPerL,
      chlorideMgPerL,
      sulfateMgPerL,
      bicarbonateMgPerL,
      mashPh
    };
  }
}
