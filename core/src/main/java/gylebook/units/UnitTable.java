package gylebook.units;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/// The table of units. The first of each quantity is the one used inside.
///
/// Factors are built from the few exact definitions below; each unit has a row with its source in
/// the reference table that the tests check.
@AnyUnit("holds factors between units")
final class UnitTable {
  private static final double KG_IN_LB = 0.45359237;
  private static final double G_IN_LB = 453.59237;
  private static final double OZ_IN_LB = 16;
  private static final double L_IN_US_GAL = 3.785411784;
  private static final double L_IN_IMP_GAL = 4.54609;
  private static final double L_IN_FT3 = 28.316846592;
  private static final double M_IN_FT = 0.3048;
  private static final double M_IN_INCH = 0.0254;
  private static final double K_IN_F = 5.0 / 9.0;
  private static final double KPA_IN_PSI = 4.4482216152605e-3 / (M_IN_INCH * M_IN_INCH);
  private static final double J_IN_BTU = 1055.05585262;
  private static final double MIN = 60;
  private static final double HOUR = 3600;
  private static final double DAY = 86_400;

  /// The calendar repeats itself after 400 years, of which 97 are leap years.
  private static final double DAYS_IN_YEAR = 365.2425;

  private static final double EBC_IN_SRM = 25 / 12.7;

  /// Grams of CO2 in a litre of it at 0 °C and 101.325 kPa, as an ideal gas: 44.0095 / 22.41397.
  private static final double G_PER_L_IN_VOLUMES = 44.0095 / 22.41397;

  private static final Map<Quantity, List<Unit>> UNITS = new EnumMap<>(Quantity.class);

  static {
    masses();
    volumes();
    temperatures();
    times();
    beer();
    engineering();
    electrics();
    ratios();
  }

  private UnitTable() {}

  static List<Unit> of(Quantity quantity) {
    List<Unit> units = UNITS.get(quantity);
    return units == null ? List.of() : List.copyOf(units);
  }

  static Unit inside(Quantity quantity) {
    return of(quantity).getFirst();
  }

  static List<Unit> all() {
    return UNITS.values().stream().flatMap(List::stream).toList();
  }

  private static void masses() {
    straight(Quantity.MASS, "kg", "kilogram", 1, 2);
    straight(Quantity.MASS, "g", "gram", 1e-3, 0);
    straight(Quantity.MASS, "mg", "milligram", 1e-6, 0);
    straight(Quantity.MASS, "lb", "pound", KG_IN_LB, 2);
    straight(Quantity.MASS, "oz", "ounce", KG_IN_LB / OZ_IN_LB, 1);
    straight(Quantity.SMALL_MASS, "g", "gram", 1, 1);
    straight(Quantity.SMALL_MASS, "kg", "kilogram", 1000, 3);
    straight(Quantity.SMALL_MASS, "mg", "milligram", 1e-3, 0);
    straight(Quantity.SMALL_MASS, "oz", "ounce", G_IN_LB / OZ_IN_LB, 2);
    straight(Quantity.SMALL_MASS, "lb", "pound", G_IN_LB, 3);
    straight(Quantity.MASS_FLOW, "kg/s", "kilogram per second", 1, 4);
    straight(Quantity.MASS_FLOW, "kg/min", "kilogram per minute", 1 / MIN, 2);
    straight(Quantity.MASS_FLOW, "kg/h", "kilogram per hour", 1 / HOUR, 2);
    straight(Quantity.MASS_FLOW, "lb/h", "pound per hour", KG_IN_LB / HOUR, 2);
  }

  private static void volumes() {
    straight(Quantity.VOLUME, "L", "litre", 1, 1);
    straight(Quantity.VOLUME, "mL", "millilitre", 1e-3, 0);
    straight(Quantity.VOLUME, "hL", "hectolitre", 100, 2);
    straight(Quantity.VOLUME, "m³", "cubic metre", 1000, 3);
    straight(Quantity.VOLUME, "ft³", "cubic foot", L_IN_FT3, 2);
    straight(Quantity.VOLUME, "US gal", "US gallon", L_IN_US_GAL, 2);
    straight(Quantity.VOLUME, "US qt", "US quart", L_IN_US_GAL / 4, 1);
    straight(Quantity.VOLUME, "US pt", "US pint", L_IN_US_GAL / 8, 1);
    straight(Quantity.VOLUME, "US cup", "US cup", L_IN_US_GAL / 16, 1);
    straight(Quantity.VOLUME, "US fl oz", "US fluid ounce", L_IN_US_GAL / 128, 1);
    straight(Quantity.VOLUME, "US tbsp", "US tablespoon", L_IN_US_GAL / 256, 1);
    straight(Quantity.VOLUME, "US tsp", "US teaspoon", L_IN_US_GAL / 768, 1);
    straight(Quantity.VOLUME, "US bbl", "US beer barrel", L_IN_US_GAL * 31, 3);
    straight(Quantity.VOLUME, "imp gal", "imperial gallon", L_IN_IMP_GAL, 2);
    straight(Quantity.VOLUME, "imp qt", "imperial quart", L_IN_IMP_GAL / 4, 1);
    straight(Quantity.VOLUME, "imp pt", "imperial pint", L_IN_IMP_GAL / 8, 1);
    straight(Quantity.VOLUME, "imp fl oz", "imperial fluid ounce", L_IN_IMP_GAL / 160, 1);
    straight(Quantity.VOLUME, "imp bbl", "imperial beer barrel", L_IN_IMP_GAL * 36, 3);
    straight(Quantity.FLOW, "L/s", "litre per second", 1, 3);
    straight(Quantity.FLOW, "L/min", "litre per minute", 1 / MIN, 1);
    straight(Quantity.FLOW, "L/h", "litre per hour", 1 / HOUR, 1);
    straight(Quantity.FLOW, "mL/min", "millilitre per minute", 1e-3 / MIN, 0);
    straight(Quantity.FLOW, "m³/s", "cubic metre per second", 1000, 6);
    straight(Quantity.FLOW, "m³/h", "cubic metre per hour", 1000 / HOUR, 2);
    straight(Quantity.FLOW, "US gal/min", "US gallon per minute", L_IN_US_GAL / MIN, 2);
    straight(Quantity.FLOW, "US gal/h", "US gallon per hour", L_IN_US_GAL / HOUR, 1);
    straight(Quantity.FLOW, "imp gal/min", "imperial gallon per minute", L_IN_IMP_GAL / MIN, 2);
    straight(Quantity.FLOW, "imp gal/h", "imperial gallon per hour", L_IN_IMP_GAL / HOUR, 1);
  }

  private static void temperatures() {
    straight(Quantity.TEMPERATURE, "°C", "degree Celsius", 1, 1);
    shifted(Quantity.TEMPERATURE, "°F", "degree Fahrenheit", K_IN_F, 32, 1);
    shifted(Quantity.TEMPERATURE, "K", "kelvin", 1, 273.15, 1);
    straight(Quantity.TEMPERATURE_DIFFERENCE, "K", "kelvin", 1, 1);
    straight(Quantity.TEMPERATURE_DIFFERENCE, "°C", "Celsius degree of difference", 1, 1);
    straight(Quantity.TEMPERATURE_DIFFERENCE, "°F", "Fahrenheit degree of difference", K_IN_F, 1);
  }

  private static void times() {
    straight(Quantity.TIME, "s", "second", 1, 0);
    straight(Quantity.TIME, "min", "minute", MIN, 0);
    straight(Quantity.TIME, "h", "hour", HOUR, 1);
    straight(Quantity.TIME, "d", "day", DAY, 1);
    straight(Quantity.TIME, "wk", "week", 7 * DAY, 1);
    straight(Quantity.TIME, "mo", "month of the mean calendar year", DAYS_IN_YEAR / 12 * DAY, 1);
    straight(Quantity.TIME, "yr", "mean calendar year", DAYS_IN_YEAR * DAY, 2);
  }

  private static void beer() {
    straight(Quantity.GRAVITY, "°P", "degree Plato", 1, 1);
    add(Quantity.GRAVITY, "SG", "specific gravity 20/20", new Scale.Spindle(false), 3);
    add(Quantity.GRAVITY, "points", "gravity points", new Scale.Spindle(true), 0);
    straight(Quantity.GRAVITY, "°Bx", "degree Brix", 1, 1);
    straight(Quantity.COLOUR, "EBC", "EBC colour unit", 1, 0);
    straight(Quantity.COLOUR, "SRM", "SRM colour unit", EBC_IN_SRM, 1);
    add(Quantity.COLOUR, "°L", "degree Lovibond", new Scale.MaltColour(), 1);
    straight(Quantity.BITTERNESS, "IBU", "bitterness unit", 1, 0);
    shifted(Quantity.DIASTATIC_POWER, "°WK", "degree Windisch-Kolbach", 1, 0, 0);
    shifted(Quantity.DIASTATIC_POWER, "°Lintner", "degree Lintner", 3.5, 16 / 3.5, 0);
    straight(Quantity.CARBONATION, "vol", "volumes of CO2", 1, 2);
    straight(Quantity.CARBONATION, "g/L", "gram CO2 per litre", 1 / G_PER_L_IN_VOLUMES, 1);
    straight(Quantity.PH, "pH", "pH", 1, 2);
    straight(Quantity.CONCENTRATION, "mg/L", "milligram per litre", 1, 0);
    straight(Quantity.CONCENTRATION, "g/L", "gram per litre", 1000, 2);
    straight(Quantity.CONCENTRATION, "µg/L", "microgram per litre", 1e-3, 0);
    straight(Quantity.CONCENTRATION, "ppm", "part per million", 1, 0);
    straight(Quantity.CONCENTRATION, "ppb", "part per billion", 1e-3, 0);
    straight(Quantity.DENSITY, "kg/L", "kilogram per litre", 1, 4);
    straight(Quantity.DENSITY, "kg/m³", "kilogram per cubic metre", 1e-3, 1);
    straight(Quantity.DENSITY, "g/mL", "gram per millilitre", 1, 4);
    straight(Quantity.SPECIFIC_VOLUME, "L/kg", "litre per kilogram", 1, 2);
    straight(Quantity.SPECIFIC_VOLUME, "L/g", "litre per gram", 1000, 4);
    straight(Quantity.SPECIFIC_VOLUME, "m³/kg", "cubic metre per kilogram", 1000, 4);
    straight(
        Quantity.SPECIFIC_VOLUME, "US qt/lb", "US quart per pound", L_IN_US_GAL / 4 / KG_IN_LB, 2);
    straight(
        Quantity.SPECIFIC_VOLUME, "US gal/lb", "US gallon per pound", L_IN_US_GAL / KG_IN_LB, 3);
    straight(
        Quantity.SPECIFIC_VOLUME,
        "US gal/oz",
        "US gallon per ounce",
        L_IN_US_GAL * OZ_IN_LB / KG_IN_LB,
        4);
    straight(
        Quantity.SPECIFIC_VOLUME,
        "US fl oz/oz",
        "US fluid ounce per ounce",
        L_IN_US_GAL / 128 * OZ_IN_LB / KG_IN_LB,
        2);
    straight(Quantity.SPECIFIC_VOLUME, "ft³/lb", "cubic foot per pound", L_IN_FT3 / KG_IN_LB, 3);
  }

  private static void engineering() {
    straight(Quantity.PRESSURE, "kPa", "kilopascal", 1, 1);
    straight(Quantity.PRESSURE, "Pa", "pascal", 1e-3, 0);
    straight(Quantity.PRESSURE, "hPa", "hectopascal", 0.1, 0);
    straight(Quantity.PRESSURE, "MPa", "megapascal", 1000, 4);
    straight(Quantity.PRESSURE, "mbar", "millibar", 0.1, 0);
    straight(Quantity.PRESSURE, "bar", "bar", 100, 2);
    straight(Quantity.PRESSURE, "psi", "pound-force per square inch", KPA_IN_PSI, 1);
    straight(Quantity.PRESSURE, "atm", "standard atmosphere", 101.325, 3);
    straight(Quantity.PRESSURE, "mmHg", "conventional millimetre of mercury", 0.1333224, 0);
    straight(Quantity.PRESSURE, "inHg", "conventional inch of mercury", 3.386389, 2);
    straight(Quantity.POWER, "W", "watt", 1, 0);
    straight(Quantity.POWER, "kW", "kilowatt", 1000, 2);
    straight(Quantity.POWER, "BTU/h", "British thermal unit per hour", J_IN_BTU / HOUR, 0);
    straight(Quantity.ENERGY, "J", "joule", 1, 0);
    straight(Quantity.ENERGY, "kJ", "kilojoule", 1000, 1);
    straight(Quantity.ENERGY, "MJ", "megajoule", 1e6, 2);
    straight(Quantity.ENERGY, "Wh", "watt hour", HOUR, 0);
    straight(Quantity.ENERGY, "kWh", "kilowatt hour", 1000 * HOUR, 2);
    straight(Quantity.ENERGY, "BTU", "British thermal unit", J_IN_BTU, 0);
    straight(Quantity.LENGTH, "m", "metre", 1, 2);
    straight(Quantity.LENGTH, "cm", "centimetre", 0.01, 1);
    straight(Quantity.LENGTH, "mm", "millimetre", 1e-3, 0);
    straight(Quantity.LENGTH, "µm", "micrometre", 1e-6, 0);
    straight(Quantity.LENGTH, "km", "kilometre", 1000, 2);
    straight(Quantity.LENGTH, "in", "inch", M_IN_INCH, 2);
    straight(Quantity.LENGTH, "ft", "foot", M_IN_FT, 1);
    straight(Quantity.AREA, "m²", "square metre", 1, 3);
    straight(Quantity.AREA, "cm²", "square centimetre", 1e-4, 0);
    straight(Quantity.AREA, "mm²", "square millimetre", 1e-6, 0);
    straight(Quantity.AREA, "in²", "square inch", M_IN_INCH * M_IN_INCH, 1);
    straight(Quantity.AREA, "ft²", "square foot", M_IN_FT * M_IN_FT, 2);
    straight(Quantity.SPECIFIC_HEAT, "J/(kg K)", "joule per kilogram kelvin", 1, 0);
    straight(Quantity.SPECIFIC_HEAT, "cal/(g °C)", "calorie (IT) per gram degree", 4186.8, 3);
    straight(
        Quantity.SPECIFIC_HEAT, "BTU/(lb °F)", "BTU (IT) per pound degree Fahrenheit", 4186.8, 3);
    straight(Quantity.VISCOSITY, "Pa s", "pascal second", 1, 5);
    straight(Quantity.VISCOSITY, "mPa s", "millipascal second", 1e-3, 2);
    straight(Quantity.VISCOSITY, "cP", "centipoise", 1e-3, 2);
  }

  private static void electrics() {
    straight(Quantity.VOLTAGE, "V", "volt", 1, 0);
    straight(Quantity.VOLTAGE, "mV", "millivolt", 1e-3, 1);
    straight(Quantity.CURRENT, "A", "ampere", 1, 1);
    straight(Quantity.CURRENT, "mA", "milliampere", 1e-3, 1);
    straight(Quantity.RESISTANCE, "Ω", "ohm", 1, 1);
    straight(Quantity.RESISTANCE, "kΩ", "kilohm", 1000, 2);
    straight(Quantity.CONDUCTIVITY, "µS/cm", "microsiemens per centimetre", 1, 1);
    straight(Quantity.CONDUCTIVITY, "mS/cm", "millisiemens per centimetre", 1000, 2);
    straight(Quantity.CONDUCTIVITY, "mS/m", "millisiemens per metre", 10, 1);
  }

  private static void ratios() {
    straight(Quantity.SHARE, "", "share of one", 1, 3);
    straight(Quantity.SHARE, "%", "per cent", 0.01, 1);
    straight(Quantity.NUMBER, "", "plain number", 1, 0);
  }

  private static void straight(
      Quantity quantity, String symbol, String spoken, double factor, int decimals) {
    shifted(quantity, symbol, spoken, factor, 0, decimals);
  }

  private static void shifted(
      Quantity quantity, String symbol, String spoken, double factor, double zero, int decimals) {
    add(quantity, symbol, spoken, new Scale.Straight(factor, zero), decimals);
  }

  private static void add(
      Quantity quantity, String symbol, String spoken, Scale scale, int decimals) {
    UNITS
        .computeIfAbsent(quantity, _ -> new ArrayList<>())
        .add(new Unit(quantity, symbol, spoken, scale, decimals));
  }
}
