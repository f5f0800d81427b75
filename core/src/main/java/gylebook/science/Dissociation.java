package gylebook.science;

/// The constants by which the acids of brewing liquor give up their hydrogen ions, as pK at zero
/// ionic strength.
public final class Dissociation {
  private Dissociation() {}

  /// pK of water itself.
  @Source(key = "phreeqc", at = "phreeqc.dat", trust = Trust.READ)
  @Reckoned(
      name = "water-pk",
      says = "The ionic product of water as pK.",
      equation = "log K = a1 + a2 T + a3/T + a4 log T + a6 T^2",
      range = "0 to 100 C")
  public static double waterPkNumber(@Usually(25) double waterC) {
    return -Equilibrium.WATER.log(waterC);
  }

  /// Both steps of carbonic acid; the first counts all dissolved carbon dioxide as acid.
  public record Carbonic(double firstNumber, double secondNumber) {}

  /// pK of both steps of carbonic acid.
  @Source(key = "phreeqc", at = "phreeqc.dat", trust = Trust.READ)
  @Reckoned(
      name = "carbonic-acid-pk",
      says = "The two pK of carbonic acid.",
      equation = "log K = a1 + a2 T + a3/T + a4 log T + a5/T^2",
      range = "0 to 100 C")
  public static Carbonic carbonic(@Usually(25) double waterC) {
    double second = Equilibrium.BICARBONATE.log(waterC);
    return new Carbonic(Equilibrium.CARBON_DIOXIDE.log(waterC) - second, second);
  }

  /// The three steps of phosphoric acid.
  public record Phosphoric(double firstNumber, double secondNumber, double thirdNumber) {}

  /// pK of the three steps of phosphoric acid.
  @Source(key = "phreeqc", at = "phreeqc.dat", trust = Trust.READ)
  @Reckoned(
      name = "phosphoric-acid-pk",
      says = "The three pK of phosphoric acid.",
      equation = "log K = log K25 - dH/(R ln 10) (1/T - 1/298.15)",
      range = "0 to 100 C, by one heat of reaction each")
  public static Phosphoric phosphoric(@Usually(25) double waterC) {
    double one = Species.HPO4.log(waterC);
    double two = Species.H2PO4.log(waterC);
    double three = Species.H3PO4.log(waterC);
    return new Phosphoric(three - two, two - one, one);
  }

  /// pK of lactic acid at 25 C; its small change with temperature is left out.
  @Source(key = "llnl-organics", at = "lactate", trust = Trust.READ)
  @Reckoned(
      name = "lactic-acid-pk",
      says = "The pK of lactic acid.",
      equation = "pK = 3.8629",
      range = "25 C; taken as constant")
  public static double lacticPkNumber() {
    return Equilibrium.LACTIC.log(25);
  }

  /// pK of the second step of sulfuric acid.
  @Source(key = "phreeqc", at = "phreeqc.dat", trust = Trust.READ)
  @Reckoned(
      name = "sulfuric-acid-second-pk",
      says = "The second pK of sulfuric acid.",
      equation = "log K = a1 + a2 T + a3/T + a4 log T",
      range = "0 to 100 C")
  public static double hydrogenSulfatePkNumber(@Usually(25) double waterC) {
    return Equilibrium.HYDROGEN_SULFATE.log(waterC);
  }
}
