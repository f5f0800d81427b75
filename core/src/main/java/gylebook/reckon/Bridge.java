package gylebook.reckon;

import gylebook.science.Atmosphere;
import gylebook.science.Saturation;
import gylebook.science.WaterDensity;
import gylebook.units.AnyUnit;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Typed;
import gylebook.units.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// Takes an amount of another kind where people say it so: an altitude for an air pressure, litres
/// of water for kilograms, a gravity for a share of extract. How it was taken is always said.
@AnyUnit("turns amounts of one unit into another")
final class Bridge {
  private static final double LIQUOR_C = 20;
  private static final MathContext DIGITS = new MathContext(6);

  /// Between hot and cold wort of ordinary strength; said whenever it is used.
  private static final double WORT_KG_PER_L = 1.03;

  private static final String WORT_SAID = " of wort at 1.03 kg/L";
  private static final Set<String> WATERS = Set.of("liquor", "water", "rinse", "mass", "cold");
  private static final Set<String> THICK = Set.of("thickness", "liquor");
  private static final Set<String> ALTITUDES = Set.of("m", "km", "ft");
  private static final Set<String> AIRS = Set.of("pressure", "air");

  private Bridge() {}

  /// An amount as the input takes it, and in words what was done.
  record Crossed(String value, String how) {}

  /// Whether people say this mass as a volume, because it is one of water.
  static boolean saidInLitres(Named wanted) {
    List<String> stem = wanted.unitName().map(name -> name.stem()).orElse(List.of());
    return wanted.symbol().equals("kg") && !stem.isEmpty() && WATERS.contains(stem.getLast());
  }

  /// What a typed amount is worth for an input of another kind; empty when nothing is.
  static Optional<Crossed> cross(Named wanted, String typed, ReadingUnits units) {
    List<String> stem = wanted.unitName().map(name -> name.stem()).orElse(List.of());
    String last = stem.isEmpty() ? "" : stem.getLast();
    String unit = wanted.symbol();
    Optional<String> sized = Said.inUnit(typed, unit);
    if (sized.isPresent()) {
      return Optional.of(new Crossed(sized.get(), typed));
    }
    if (unit.equals("kPa") && AIRS.contains(last)) {
      return altitudeM(typed).flatMap(m -> pressure(m, typed));
    }
    if (unit.equals("kg") && WATERS.contains(last)) {
      return inside(typed, Quantity.VOLUME.inside())
          .map(l -> new Crossed(digits(l * kgPerL()) + " kg", typed + " of water at 20 °C"));
    }
    if (unit.equals("kg") && last.equals("wort")) {
      return inside(typed, Quantity.VOLUME.inside())
          .map(l -> new Crossed(digits(l * WORT_KG_PER_L) + " kg", typed + WORT_SAID));
    }
    if (unit.equals("L") && WATERS.contains(last)) {
      return inside(typed, Quantity.MASS.inside())
          .map(kg -> new Crossed(digits(kg / kgPerL()) + " L", typed + " of water at 20 °C"));
    }
    if (unit.equals("kg/s") && WATERS.contains(last)) {
      return inside(typed, Quantity.FLOW.inside())
          .map(flow -> new Crossed(digits(flow * kgPerL()) + " kg/s", typed + " of cold water"));
    }
    if (unit.equals("kg/s") && last.equals("wort")) {
      return inside(typed, Quantity.FLOW.inside())
          .map(flow -> new Crossed(digits(flow * WORT_KG_PER_L) + " kg/s", typed + WORT_SAID));
    }
    if (unit.equals("kg/kg") && THICK.contains(last)) {
      return inside(typed, Unit.known(Quantity.SPECIFIC_VOLUME, "L/kg"))
          .map(each -> new Crossed(digits(each * kgPerL()) + " kg/kg", typed + " of water"));
    }
    if (unit.equals("°C") && last.equals("boil")) {
      return altitudeM(typed)
          .filter(Bridge::standard)
          .map(m -> Saturation.boilingC(Atmosphere.stationKpa(m)))
          .map(c -> new Crossed(digits(c) + " °C", "where water boils at " + typed));
    }
    boolean share = wanted.javaName().endsWith("Frac");
    if (share && last.equals("extract")) {
      return inside(typed, units.unit(Quantity.GRAVITY))
          .filter(plato -> plato >= 0 && plato <= 80)
          .map(plato -> new Crossed(digits(plato / 100), typed + " as a share of extract"));
    }
    return Optional.empty();
  }

  private static double kgPerL() {
    return WaterDensity.waterKgPerL(LIQUOR_C);
  }

  /// A bare number is no altitude and no volume: only what names its unit is taken across.
  private static Optional<Double> inside(String typed, Unit usual) {
    return Typed.parse(typed, usual) instanceof Typed.Read read
        ? Optional.of(read.entered().inside())
        : Optional.empty();
  }

  /// A height above the sea is told in metres or feet; 40 cm are the width of a kettle.
  private static Optional<Double> altitudeM(String typed) {
    return Typed.parse(typed, Unit.known(Quantity.LENGTH, "m")) instanceof Typed.Read read
            && ALTITUDES.contains(read.entered().unit().symbol())
        ? Optional.of(read.entered().inside())
        : Optional.empty();
  }

  /// Why a height is none that an air pressure is known for; empty when it is no height.
  static Optional<String> tooHigh(Named wanted, String typed) {
    List<String> stem = wanted.unitName().map(name -> name.stem()).orElse(List.of());
    boolean air = wanted.symbol().equals("kPa") && !stem.isEmpty() && AIRS.contains(stem.getLast());
    return (air ? altitudeM(typed) : Optional.<Double>empty())
        .filter(height -> !standard(height))
        .map(height -> typed + " is no altitude here; it must lie between -500 and 11000 m.");
  }

  private static boolean standard(double altitudeM) {
    return altitudeM >= -500 && altitudeM <= 11_000;
  }

  private static Optional<Crossed> pressure(double altitudeM, String typed) {
    if (!standard(altitudeM)) {
      return Optional.empty();
    }
    String kpa = digits(Atmosphere.stationKpa(altitudeM));
    return Optional.of(new Crossed(kpa + " kPa", "air at " + typed + " in standard weather"));
  }

  private static String digits(double value) {
    return new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
  }
}
