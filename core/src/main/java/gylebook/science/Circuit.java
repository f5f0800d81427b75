package gylebook.science;

/// The circuit that feeds the element. It only computes: local codes rule, and wiring belongs to
/// licensed people. Ground-fault protection always.
public final class Circuit {
  private Circuit() {}

  /// Current of a heater: `I = P / V`.
  @Source(key = "electric-heater-code", at = "worked example, 4500 W on 240 V", trust = Trust.READ)
  @Reckoned(
      name = "heater-current",
      says = "What current does a heater draw?",
      equation = "I = P / V",
      range = "a voltage above 0; wiring follows local codes and licensed people")
  public static double currentA(double powerW, double mainsV) {
    return Require.notBelow0("power", powerW) / Require.above0("voltage", mainsV);
  }

  /// Current that the conductors of a continuous load are sized for: `1.25 P / V`.
  @Source(key = "electric-heater-code", at = "continuous load, 125 %", trust = Trust.READ)
  @Reckoned(
      name = "conductor-current",
      says = "For what current are a heater's conductors sized?",
      equation = "I = 1.25 P / V",
      range = "a US rule for continuous loads; local codes and licensed people decide")
  public static double conductorA(
      double powerW, double mainsV, @Usually(1.25) double continuousFactor) {
    return currentA(powerW, mainsV) * Require.above0("factor", continuousFactor);
  }

  /// Heat of a solid-state relay: `P = I U`, U its drop when on (makers' figures: 1.0 to 1.5 V).
  @Source(key = "ohms-law", at = "power of a drop", trust = Trust.COMPUTED)
  @Reckoned(
      name = "relay-dissipation",
      says = "How much heat must a solid-state relay shed?",
      equation = "P = I U",
      range = "a drop of 1.0 to 1.5 V is usual; it needs a heat sink")
  public static double relayW(double heaterA, @Usually(1.2) double dropV) {
    return Require.notBelow0("current", heaterA) * Require.notBelow0("drop", dropV);
  }

  /// Voltage lost in a cable, there and back: `U = 2 L rho I / A`, copper at 20 C 1.72e-8 ohm m.
  @Source(key = "ohms-law", at = "resistance of copper", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "cable-drop",
      says = "How much voltage is lost in the cable to the heater?",
      equation = "U = 2 L 1.72e-8 I / A",
      range = "copper near 20 C, two conductors; warm copper loses more")
  public static double cableDropV(double heaterA, double lengthM, double sectionM2) {
    return 2
        * 1.72e-8
        * Require.notBelow0("current", heaterA)
        * Require.notBelow0("length", lengthM)
        / Require.above0("conductor section", sectionM2);
  }
}
