package gylebook.science;

import gylebook.testing.Checks;
import gylebook.testing.ReferenceRow;
import gylebook.testing.ReferenceRows;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/// Section A of the rig's table (properties of water and air) and its unit factor.
class RigPropertiesReferenceTest {
  private static final double ZERO_C_KELVIN = 273.15;
  private static final double PA_PER_PSI = 6894.757293168;

  static Checks checks() {
    return new Checks()
        .kind("saturation pressure of water", RigPropertiesReferenceTest::pressure)
        .kind("saturation temperature of water", RigPropertiesReferenceTest::temperature)
        .kind("standard atmosphere", row -> 1000 * Atmosphere.stationKpa(row.number("z")))
        .kind("boiling-point elevation by extract", RigPropertiesReferenceTest::rise)
        .kind("unit factor", row -> wattPerM2());
  }

  private static double pressure(ReferenceRow row) {
    String given = row.text("T");
    double t = row.number("T");
    double waterC =
        given.endsWith("K")
            ? t - ZERO_C_KELVIN
            : given.endsWith("F") ? Unit.known(Quantity.TEMPERATURE, "°F").toInside(t) : t;
    double kpa = Saturation.saturationKpa(waterC);
    return switch (row.unit()) {
      case "Pa" -> kpa * 1000;
      case "psi" -> kpa * 1000 / PA_PER_PSI;
      default -> kpa;
    };
  }

  private static double temperature(ReferenceRow row) {
    if (row.has("depth")) {
      // The row's density, 1.04 * 958 kg/m3, is that of a wort of this strength at the boil.
      double extractFrac = WortDensity.extractFrac(1.04 * 0.958, 100);
      return BoilingRise.depthRiseK(row.number("depth"), extractFrac, 101.325);
    }
    if (row.has("z")) {
      return Saturation.boilingC(Atmosphere.stationKpa(row.number("z")));
    }
    double kpa = row.text("p").endsWith("MPa") ? row.number("p") * 1000 : row.number("p") / 1000;
    double waterC = Saturation.boilingC(kpa);
    return row.unit().equals("K") ? waterC + ZERO_C_KELVIN : waterC;
  }

  private static double rise(ReferenceRow row) {
    return BoilingRise.idealRiseK(0.120, row.number("M"));
  }

  /// One Btu an hour on a square foot, by the unit table.
  private static double wattPerM2() {
    double watt = Unit.known(Quantity.POWER, "BTU/h").toInside(1);
    double footM = Unit.known(Quantity.LENGTH, "ft").toInside(1);
    return watt / (footM * footM);
  }

  @TestFactory
  Stream<DynamicTest> meetsThePublishedProperties() {
    return checks()
        .tests(
            ReferenceRows.of("rig.csv").stream()
                .filter(row -> row.id().startsWith("A") || row.id().equals("B11"))
                .filter(row -> !row.id().equals("A10"))
                .toList());
  }
}
