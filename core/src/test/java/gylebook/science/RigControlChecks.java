package gylebook.science;

import gylebook.testing.Checks;

/// What answers the rig table's rows on control and electricity.
final class RigControlChecks {
  private RigControlChecks() {}

  static void add(Checks checks) {
    tuning(checks);
    tests(checks);
    electricity(checks);
  }

  private static void tuning(Checks checks) {
    double[] lags = {2, 1, 0.4, 0.2, 0.05, 0.05, 0.05};
    double[] zeros = {-0.3, 0.08};
    checks
        .kind("F01", row -> ControllerTuning.settings(1, 2.5, 1.47, 1.47, 0).gainPerK())
        .kind("F02", row -> ControllerTuning.settings(1, 2.5, 1.47, 1.47, 0).integralSec())
        .kind("F04", row -> ControllerTuning.firstOrder(lags, zeros, 0).delaySec())
        .kind(
            "F06",
            row ->
                StepTest.rateKPerSec(
                    row.number("P"),
                    RigReferenceTest.before(row, "kg water"),
                    RigReferenceTest.before(row, "kg grain"),
                    4186,
                    1650))
        .kind(
            "F07",
            row ->
                ControllerTuning.kettleSettings(
                        row.number("k'"), row.number("theta"), row.number("tau_c"))
                    .gainPerK());
  }

  private static void tests(Checks checks) {
    checks
        .kind("F10", row -> RelayTest.periodSec(row.number("tau"), row.number("theta")))
        .kind(
            "F11",
            row ->
                RelayTest.describedGainPerK(
                    row.number("K"), row.number("tau"), row.number("theta")))
        .kind(
            "F15",
            row ->
                RelayTest.ultimateGainPerK(row.number("K"), row.number("tau"), row.number("theta")))
        .kind(
            "step identification (Smith)",
            row -> StepTest.lagAndDelay(row.number("t28.3"), row.number("t63.2")).lagSec())
        .kind(
            "time-proportioning ripple",
            row ->
                StepTest.rippleK(
                    row.number("P"),
                    row.number("u"),
                    row.number("window"),
                    1000 * row.number("C")));
  }

  private static void electricity(Checks checks) {
    checks
        .kind("J01", row -> Circuit.currentA(row.number("P"), row.number("V")))
        .kind("J03", row -> Circuit.conductorA(row.number("P"), row.number("V"), 1.25))
        .kind(
            "element power and voltage",
            row -> Element.powerW(row.number("P0"), 240, row.number("V")))
        .kind("J06", row -> 100 * Element.sagLossFrac(row.number("V/V0")))
        .kind("element surface load", row -> Element.surfaceLoadWPerM2(5500, 0.008, 3.2) / 1e4)
        .kind("supply wiring", row -> Circuit.relayW(row.number("I"), row.number("on-state drop")));
  }
}
