package gylebook.rig;

/// Pump and hose: the way from the valve back to the top of the bag.
///
/// @param present whether there is a pump at all
/// @param hoseM length of the return hose
/// @param boreM its bore
/// @param outerM its outer diameter
/// @param hoseWPerK heat the whole hose loses per kelvin
/// @param mashLPerSec flow while mashing
/// @param whirlpoolLPerSec flow while standing after the boil
/// @param suctionM height of the kettle's floor above the pump's eye
/// @param suctionLossM head lost before the pump at mash flow
/// @param wantedNpshM suction head the pump wants
public record Loop(
    boolean present,
    Parameter hoseM,
    Parameter boreM,
    Parameter outerM,
    Parameter hoseWPerK,
    Parameter mashLPerSec,
    Parameter whirlpoolLPerSec,
    Parameter suctionM,
    Parameter suctionLossM,
    Parameter wantedNpshM) {

  /// Wort standing in the hose.
  public double hoseL() {
    double bore = boreM.value();
    return Math.PI * bore * bore / 4 * hoseM.value() * 1000;
  }
}
