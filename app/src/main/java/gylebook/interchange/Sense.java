package gylebook.interchange;

import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.OptionalDouble;

/// Does a well-formed file make sense? What does not is said, and taken as it stands.
@AnyUnit("limits of sense, each in its own unit")
final class Sense {
  private static final double SG_LEAST = 0.98;
  private static final double SG_MOST = 1.20;

  private Sense() {}

  static void gravity(String path, Entered gravity, Ledger ledger) {
    double sg = Unit.known(Quantity.GRAVITY, "SG").fromInside(gravity.inside());
    if (!(sg >= SG_LEAST && sg <= SG_MOST)) {
      ledger.says(
          path,
          gravity.asTyped()
              + " lies outside 0.980 to 1.200, where worts and beers are; taken as"
              + " said.");
    }
  }

  static void volumes(String path, double lengthL, OptionalDouble preBoilL, Ledger ledger) {
    if (preBoilL.isPresent() && preBoilL.getAsDouble() > 0 && lengthL > preBoilL.getAsDouble()) {
      ledger.says(path, "Is more than the volume before the boil; taken as said.");
    }
  }
}
