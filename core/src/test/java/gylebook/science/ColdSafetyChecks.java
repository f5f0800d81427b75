package gylebook.science;

import gylebook.testing.Checks;
import gylebook.testing.ReferenceRow;

/// What hurts: gas, heat, electricity, loads, drains, chemicals.
final class ColdSafetyChecks {
  private static final double SEA_KPA = 101.325;

  private ColdSafetyChecks() {}

  static void add(Checks checks) {
    checks
        .kind("CO2 in a closed room", ColdSafetyChecks::roomPpm)
        .kind("scald time", row -> Scald.thirdDegreeSec((row.number("water") - 32) / 1.8))
        .kind("breaker and load limits", ColdSafetyChecks::breaker)
        .kind("limit value", ColdSafetyChecks::limit)
        .kind("lifting limit (NIOSH)", ColdSafetyChecks::lift)
        .kind(
            "drain tempering",
            row -> Drain.coldRatio(row.number("hot"), row.number("limit"), row.number("cold")))
        .kind(
            "sanitiser dilution",
            row -> Sanitiser.doseMlPerL(row.number("stock") / 100, row.number("target")));
  }

  private static double roomPpm(ReferenceRow row) {
    if (row.has("RE drop")) {
      return RoomGas.fermentedPpm(
          row.number("wort"), row.number("RE drop"), row.number("room"), row.number("t"), SEA_KPA);
    }
    return RoomGas.releasedPpm(
        ColdReferenceTest.found(row, "([0-9.]+) kg"), row.number("room"), row.number("t"), SEA_KPA);
  }

  private static double breaker(ReferenceRow row) {
    if (row.has("P")) {
      Breaker.Size size = Breaker.size(row.number("P"), row.number("V"));
      return row.detail().startsWith("continuous") ? size.leastA() : size.loadA();
    }
    return Breaker.continuousW(row.number("I"), row.number("V"));
  }

  private static double limit(ReferenceRow row) {
    String asked = row.detail();
    if (asked.contains("immediately dangerous")) {
      return RoomGas.limits().dangerPpm();
    }
    if (asked.startsWith("OSHA CO2")) {
      return RoomGas.limits().averagePpm();
    }
    if (asked.startsWith("GFCI")) {
      Breaker.GroundFault trip = Breaker.groundFault();
      return asked.contains("lower") ? trip.leastMa() : trip.mostMa();
    }
    throw new AssertionError("which limit? " + row);
  }

  private static double lift(ReferenceRow row) {
    String asked = row.detail();
    if (asked.startsWith("frequency")) {
      return LiftFrequency.frequencyFactor(
          ColdReferenceTest.found(row, "^([0-9.]+) lifts"),
          ColdReferenceTest.found(row, "up to ([0-9.]+) h"));
    }
    if (row.has("LC")) {
      return LiftFrequency.multipliedLb(
          row.number("LC"),
          row.number("HM"),
          row.number("VM"),
          row.number("DM"),
          row.number("AM"),
          row.number("FM"),
          row.number("CM"));
    }
    if (row.unit().equals("lb")) {
      double often =
          LiftFrequency.frequencyFactor(
              ColdReferenceTest.found(row, "([0-9.]+) lifts/min"),
              ColdReferenceTest.found(row, "up to ([0-9.]+) h"));
      return LiftFrequency.limitLb(
          row.number("H"), row.number("V"), row.number("D"), row.number("A"), often, 0.95);
    }
    double limit =
        Lifting.limitKg(
            row.number("H") / 100,
            row.number("V") / 100,
            row.number("D") / 100,
            row.number("A"),
            row.number("FM"),
            row.number("CM"));
    return row.has("load") ? Lifting.indexRatio(row.number("load"), limit) : limit;
  }
}
