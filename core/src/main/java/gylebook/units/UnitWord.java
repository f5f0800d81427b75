package gylebook.units;

import java.util.Arrays;
import java.util.Optional;

/// The words a name in the code spells its unit with: `lossWPerK` ends in `W`, `Per`, `K`.
public enum UnitWord {
  KG("Kg", "kg", Kind.PLAIN),
  G("G", "g", Kind.PLAIN),
  MG("Mg", "mg", Kind.PLAIN),
  UG("Ug", "µg", Kind.PLAIN),
  L("L", "L", Kind.PLAIN),
  ML("Ml", "mL", Kind.PLAIN),
  HL("Hl", "hL", Kind.PLAIN),
  M("M", "m", Kind.PLAIN),
  CM("Cm", "cm", Kind.PLAIN),
  MM("Mm", "mm", Kind.PLAIN),
  UM("Um", "µm", Kind.PLAIN),
  NM("Nm", "nm", Kind.PLAIN),
  SEC("Sec", "s", Kind.PLAIN),
  MIN("Min", "min", Kind.PLAIN),
  HR("Hr", "h", Kind.PLAIN),
  DAY("Day", "d", Kind.PLAIN),
  J("J", "J", Kind.PLAIN),
  KJ("Kj", "kJ", Kind.PLAIN),
  KCAL("Kcal", "kcal", Kind.PLAIN),
  KWH("Kwh", "kWh", Kind.PLAIN),
  W("W", "W", Kind.PLAIN),
  KW("Kw", "kW", Kind.PLAIN),
  K("K", "K", Kind.PLAIN),
  N("N", "N", Kind.PLAIN),
  PA("Pa", "Pa", Kind.PLAIN),
  KPA("Kpa", "kPa", Kind.PLAIN),
  BAR("Bar", "bar", Kind.PLAIN),
  PSI("Psi", "psi", Kind.PLAIN),
  MOL("Mol", "mol", Kind.PLAIN),
  MMOL("Mmol", "mmol", Kind.PLAIN),
  UMOL("Umol", "µmol", Kind.PLAIN),
  MEQ("Meq", "meq", Kind.PLAIN),
  EQ("Eq", "eq", Kind.PLAIN),
  V("V", "V", Kind.PLAIN),
  MV("Mv", "mV", Kind.PLAIN),
  A("A", "A", Kind.PLAIN),
  MA("Ma", "mA", Kind.PLAIN),
  OHM("Ohm", "Ω", Kind.PLAIN),
  US("Us", "µS", Kind.PLAIN),
  HZ("Hz", "Hz", Kind.PLAIN),
  RAD("Rad", "rad", Kind.PLAIN),
  PPM("Ppm", "ppm", Kind.PLAIN),
  IBU("Ibu", "IBU", Kind.PLAIN),
  VOL("Vol", "vol", Kind.PLAIN),
  LB("Lb", "lb", Kind.PLAIN),
  OZ("Oz", "oz", Kind.PLAIN),
  FT("Ft", "ft", Kind.PLAIN),
  INCH("Inch", "in", Kind.PLAIN),
  GAL("Gal", "US gal", Kind.PLAIN),
  BTU("Btu", "BTU", Kind.PLAIN),
  C("C", "°C", Kind.SCALE),
  F("F", "°F", Kind.SCALE),
  KELVIN("Kelvin", "K", Kind.SCALE),
  PLATO("Plato", "°P", Kind.SCALE),
  SG("Sg", "SG", Kind.SCALE),
  EBC("Ebc", "EBC", Kind.SCALE),
  SRM("Srm", "SRM", Kind.SCALE),
  LOVIBOND("Lovibond", "°L", Kind.SCALE),
  PH("Ph", "pH", Kind.SCALE),
  WK("Wk", "°WK", Kind.SCALE),
  LINTNER("Lintner", "°Lintner", Kind.SCALE),
  FRAC("Frac", "", Kind.BARE),
  RATIO("Ratio", "", Kind.BARE),
  FACTOR("Factor", "", Kind.BARE),
  NUMBER("Number", "", Kind.BARE),
  COUNT("Count", "", Kind.BARE);

  /// How a word joins others.
  public enum Kind {
    /// Multiplies and divides: `W`, `Kg`.
    PLAIN,
    /// Has a zero of its own or a bent scale, and is never multiplied out: `C`, `Plato`.
    SCALE,
    /// Has no dimension: `Frac`, `Ratio`.
    BARE
  }

  private final String spelling;
  private final String symbol;
  private final Kind kind;

  UnitWord(String spelling, String symbol, Kind kind) {
    this.spelling = spelling;
    this.symbol = symbol;
    this.kind = kind;
  }

  /// As it stands in a name: `Kpa`.
  public String spelling() {
    return spelling;
  }

  /// As a reader sees it: `kPa`.
  public String symbol() {
    return symbol;
  }

  /// How it joins others.
  public Kind kind() {
    return kind;
  }

  /// The word that is spelled so, power left out.
  public static Optional<UnitWord> of(String spelling) {
    return Arrays.stream(values()).filter(word -> word.spelling.equals(spelling)).findFirst();
  }
}
