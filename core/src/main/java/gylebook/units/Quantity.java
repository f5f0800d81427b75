package gylebook.units;

import java.util.List;

/// What is measured. Every quantity has exactly one unit inside; the edge converts.
///
/// The least and the most are sanity limits of the edge, in the inside unit: what lies outside is a
/// slip of the hand, not a brew. They are assumptions of ours, wide on purpose.
@AnyUnit("holds limits of every quantity, each in its own inside unit")
public enum Quantity {
  MASS("mass", 0, 100_000),
  SMALL_MASS("small mass (hops, salts)", 0, 10_000_000),
  VOLUME("volume", 0, 1_000_000),
  TEMPERATURE("temperature", -100, 500),
  TEMPERATURE_DIFFERENCE("temperature difference", -500, 500),
  TIME("time span", 0, 1e9),
  PRESSURE("pressure", 0, 100_000),
  GRAVITY("gravity", -10, 80),
  COLOUR("colour", 0, 10_000),
  BITTERNESS("bitterness", 0, 10_000),
  POWER("power", 0, 10_000_000),
  ENERGY("energy", 0, 1e13),
  LENGTH("length", -1_000, 20_000),
  AREA("area", 0, 1_000_000),
  FLOW("flow", 0, 10_000),
  MASS_FLOW("mass flow", 0, 10_000),
  VOLTAGE("voltage", 0, 100_000),
  CURRENT("current", 0, 100_000),
  RESISTANCE("resistance", 0, 1e12),
  CONDUCTIVITY("conductivity of water", 0, 200_000),
  SHARE("share", 0, 1),
  CONCENTRATION("concentration", 0, 2_000_000),
  DENSITY("density", 0, 30),
  DIASTATIC_POWER("diastatic power", -16, 10_000),
  SPECIFIC_VOLUME("specific volume", 0, 100_000),
  SPECIFIC_HEAT("specific heat", 0, 100_000),
  VISCOSITY("viscosity", 0, 10_000),
  CARBONATION("carbonation", 0, 100),
  PH("pH", 0, 14),
  NUMBER("number", -1e15, 1e15);

  private final String words;
  private final double least;
  private final double most;

  Quantity(String words, double least, double most) {
    this.words = words;
    this.least = least;
    this.most = most;
  }

  /// The quantity in plain words: `small mass (hops, salts)`.
  public String words() {
    return words;
  }

  /// The least sane value, in the inside unit.
  public double least() {
    return least;
  }

  /// The largest sane value, in the inside unit.
  public double most() {
    return most;
  }

  /// The one unit used inside.
  public Unit inside() {
    return UnitTable.inside(this);
  }

  /// Every unit this quantity may be typed or read in, the inside one first.
  public List<Unit> units() {
    return UnitTable.of(this);
  }

  /// Whether its zero means "none", so that a small value still has meaning by its digits.
  boolean countsFromNothing() {
    return switch (this) {
      case TEMPERATURE, GRAVITY, PH, COLOUR, BITTERNESS, DIASTATIC_POWER -> false;
      default -> true;
    };
  }
}
