package gylebook.estimate;

import java.util.List;
import java.util.OptionalDouble;

/// What is known of a rig at this moment beside the belief: what was read lately, what sends no
/// more, what is measured that the belief does not follow.
///
/// @param recent readings of the last quarter of an hour, in the order of their times
/// @param dutyFrac what the controller says it gives; empty when it says nothing
/// @param dutyForSec for how long it has said about that
/// @param flowLPerSec through the hose, by meter or by jug and clock
/// @param ringM level round the bag above the floor, measured while the pump runs
/// @param chilledC wort that leaves the chiller
/// @param silent what should send and how long it has not
/// @param otherLoadA what else hangs on the same circuit
/// @param shares what may be wrong, by the readings since the last point
public record Watch(
    List<Reading> recent,
    OptionalDouble dutyFrac,
    double dutyForSec,
    OptionalDouble flowLPerSec,
    OptionalDouble ringM,
    OptionalDouble chilledC,
    List<Silence> silent,
    double otherLoadA,
    List<Suspicion.Share> shares) {

  /// Copies the lists.
  public Watch {
    recent = List.copyOf(recent);
    silent = List.copyOf(silent);
    shares = List.copyOf(shares);
  }

  /// An instrument that should send by itself.
  ///
  /// @param instrument which
  /// @param forSec nothing has come for so long
  /// @param usualSec time between its readings
  public record Silence(String instrument, double forSec, double usualSec) {}

  /// Nothing is known but these readings.
  public static Watch of(List<Reading> recent) {
    return new Watch(
        recent,
        OptionalDouble.empty(),
        0,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        List.of(),
        0,
        List.of());
  }

  /// The same with a logged duty.
  public Watch withDuty(double newDutyFrac, double newDutyForSec) {
    return new Watch(
        recent,
        OptionalDouble.of(newDutyFrac),
        newDutyForSec,
        flowLPerSec,
        ringM,
        chilledC,
        silent,
        otherLoadA,
        shares);
  }

  /// The same with what is measured round the loop and the chiller.
  public Watch withLoop(
      OptionalDouble newFlowLPerSec, OptionalDouble newRingM, OptionalDouble newChilledC) {
    return new Watch(
        recent,
        dutyFrac,
        dutyForSec,
        newFlowLPerSec,
        newRingM,
        newChilledC,
        silent,
        otherLoadA,
        shares);
  }

  /// The same with what is silent.
  public Watch withSilent(List<Silence> newSilent) {
    return new Watch(
        recent, dutyFrac, dutyForSec, flowLPerSec, ringM, chilledC, newSilent, otherLoadA, shares);
  }

  /// The same with what else hangs on the circuit.
  public Watch withOtherLoad(double newOtherLoadA) {
    return new Watch(
        recent, dutyFrac, dutyForSec, flowLPerSec, ringM, chilledC, silent, newOtherLoadA, shares);
  }

  /// The same with what the bank of suppositions says.
  public Watch withShares(List<Suspicion.Share> newShares) {
    return new Watch(
        recent, dutyFrac, dutyForSec, flowLPerSec, ringM, chilledC, silent, otherLoadA, newShares);
  }

  /// How likely a supposition is by the readings since the last point.
  double chanceFrac(Supposition supposition) {
    return shares.stream()
        .filter(share -> share.supposition() == supposition)
        .mapToDouble(Suspicion.Share::shareFrac)
        .sum();
  }
}
