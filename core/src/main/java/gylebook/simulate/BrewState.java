package gylebook.simulate;

/// The brew at one moment: conserved masses first, temperatures second, what the instruments and
/// the controller remember third.
///
/// Zones: the kettle (wort below and round the bag), the bed (malt and the wort in it), the head
/// (wort on the bed), the wall, the hose, the stub in which the probe sits. Volumes, levels and
/// gravities are views of it ([Views]).
public final class BrewState {
  /// An empty vessel.
  public BrewState() {}

  double clockSec;

  // Masses. Bed and kettle exchange extract with the flow; water is one pool.
  double waterKg;
  double kettleExtractKg;
  double bedExtractKg;
  double grainKg;
  double inertKg;
  double solubleKg;
  double starchKg;
  double pastedKg;
  double fermentableKg;

  // Temperatures.
  double kettleC;
  double bedC;
  double headC;
  double wallC;
  double hoseC;
  double stubC;
  double probeC;
  double integralFrac;
  double setC;
  final double[] gaugeC = new double[Gauge.MOST];
  boolean boiling;
  boolean bagIn;

  // Enzymes: share of the activity at dough-in.
  double alphaFrac;
  double betaFrac;

  // Hops: one pair of pools an addition, in mg; dimethyl sulphide as a share of what malt brought.
  final double[] alphaMg = new double[MOST_HOPS];
  final double[] isoMg = new double[MOST_HOPS];
  int hopCount;
  double hopWortKg;
  double precursorFrac;
  double sulfideFrac;

  // What left, and what was spent: the accounts.
  double steamKg;
  double bagWaterKg;
  double bagExtractKg;
  double bagUndissolvedKg;
  double keptWaterKg;
  double keptExtractKg;
  double castWaterKg;
  double castExtractKg;
  double castFermentableKg;
  final double[] castIsoMg = new double[MOST_HOPS];
  double castSulfideFracKg;
  double castHeatJ;
  double elementJ;
  double wallLossJ;
  double surfaceLossJ;
  double hoseLossJ;
  double chilledJ;
  double carriedJ;
  double loopDoseMin;
  double chillWaterKg;
  double dutyFrac;
  double dutySec;

  /// How many additions of hops one gyle can have.
  static final int MOST_HOPS = 24;

  /// Malt that is not in solution: inert matter and what has yet to dissolve.
  double solidsKg() {
    return inertKg + solubleKg + starchKg + pastedKg;
  }

  /// Everything dissolved, bed and kettle together.
  double extractKg() {
    return kettleExtractKg + bedExtractKg;
  }

  /// All liquid in the vessel.
  double liquidKg() {
    return waterKg + kettleExtractKg + bedExtractKg;
  }

  /// Strength of the whole, as a share by mass.
  double extractFrac() {
    double liquidKg = liquidKg();
    return liquidKg > 0 ? extractKg() / liquidKg : 0;
  }
}
