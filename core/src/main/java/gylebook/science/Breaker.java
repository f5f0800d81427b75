package gylebook.science;

/// Breakers for a heater. It only computes: local codes rule, wiring belongs to licensed people,
/// ground-fault protection always. A solid-state relay fails closed and leaks when off: a contactor
/// or the plug must isolate.
public final class Breaker {
  private static final double CONTINUOUS_FACTOR = 1.25;
  private static final double[] SIZES = {15, 20, 25, 30, 35, 40, 45, 50, 60};

  private Breaker() {}

  /// What a continuous load asks of its breaker.
  ///
  /// @param loadA current of the load
  /// @param leastA the least rating: 125 % of it
  /// @param breakerA the next standard size
  public record Size(double loadA, double leastA, double breakerA) {}

  /// What trips a ground-fault protector.
  ///
  /// @param leastMa least current that trips class A (United States)
  /// @param mostMa most current that does not fail to trip it
  /// @param elsewhereMa usual residual-current device elsewhere (IEC)
  public record GroundFault(double leastMa, double mostMa, double elsewhereMa) {}

  /// Breaker for a load that may run three hours or more.
  ///
  /// `I >= 1.25 P / V`
  ///
  /// - Valid: the United States' rule; refused above 60 A. The wire's size follows from the
  ///   breaker, not the other way round.
  /// - Source: NEC 210.20(A); the standard sizes from memory.
  @Reckoned(
      name = "breaker-size",
      says = "What breaker a heater's continuous load asks for; follow your local code.",
      equation = "I >= 1.25 P / V",
      range = "United States, to 60 A; follow your local code; wiring by licensed people")
  @Source(key = "nec-210-20", at = "210.20(A)", trust = Trust.READ)
  public static Size size(double powerW, double mainsV) {
    double load = Circuit.currentA(powerW, mainsV);
    double least = CONTINUOUS_FACTOR * load;
    Require.within("least rating in A", least, 0, SIZES[SIZES.length - 1]);
    int at = 0;
    // A rating that is met to the last digit of the arithmetic is met.
    while (SIZES[at] < least * (1 - 1e-12)) {
      at++;
    }
    return new Size(load, least, SIZES[at]);
  }

  /// Power that a breaker carries for hours.
  ///
  /// `P = 0.8 I V`
  ///
  /// - Valid: as above.
  /// - Source: as above, solved for the power.
  @Reckoned(
      name = "breaker-continuous-power",
      says = "What power a breaker carries for hours; follow your local code.",
      equation = "P = I V / 1.25",
      range = "United States; follow your local code; wiring by licensed people")
  @Source(key = "nec-210-20", at = "210.20(A)", trust = Trust.READ)
  public static double continuousW(double breakerA, double mainsV) {
    Require.notBelow0("breaker in A", breakerA);
    return breakerA * Require.above0("voltage", mainsV) / CONTINUOUS_FACTOR;
  }

  /// Currents that trip ground-fault protection; follow your local code.
  ///
  /// - Valid: class A devices of the United States; 30 mA is usual elsewhere (from memory).
  /// - Source: UL 943 as the electrical code's definition notes it.
  @Reckoned(
      name = "ground-fault-trip",
      says = "What current trips a ground-fault protector; follow your local code.",
      equation = "4 to 6 mA (class A); 30 mA elsewhere",
      range = "follow your local code; try its button before every brew")
  @Source(key = "ul-943", at = "class A", trust = Trust.READ)
  public static GroundFault groundFault() {
    return new GroundFault(4, 6, 30);
  }
}
