package gylebook.estimate;

import gylebook.simulate.Leg;
import java.util.Optional;
import java.util.function.UnaryOperator;

/// What is really switched on, where it is known; the rest is as planned.
///
/// @param dutyFrac the logged duty; empty when the controller decides by itself
/// @param pumpOn whether the pump runs
/// @param lidOn whether the lid is on
public record Switched(Optional<Double> dutyFrac, Optional<Boolean> pumpOn, Optional<Boolean> lidOn)
    implements UnaryOperator<Leg> {

  /// All as planned.
  public static Switched asPlanned() {
    return new Switched(Optional.empty(), Optional.empty(), Optional.empty());
  }

  /// A logged duty, the rest as planned.
  public static Switched duty(double dutyFrac) {
    return new Switched(Optional.of(dutyFrac), Optional.empty(), Optional.empty());
  }

  /// The same without the logged duty: what holds on from now.
  Switched onward() {
    return new Switched(Optional.empty(), pumpOn, lidOn);
  }

  @Override
  public Leg apply(Leg leg) {
    Leg.Drive drive = dutyFrac.<Leg.Drive>map(Leg.Drive.ByHand::new).orElse(leg.drive());
    Leg.Pump pump =
        pumpOn
            .map(on -> !on ? Leg.Pump.OFF : leg.pump() == Leg.Pump.OFF ? Leg.Pump.MASH : leg.pump())
            .orElse(leg.pump());
    return leg.switched(drive, pump, lidOn.orElse(leg.lidOn()));
  }
}
