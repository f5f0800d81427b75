package gylebook.simulate;

import gylebook.recipe.Liquor;
import gylebook.science.Acid;
import gylebook.science.Salt;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// What an addition to the liquor is and gives, from the brewer's words and amount.
///
/// An acid's strength is read off its name, "lactic acid 80 %"; where it does not say, lactic is
/// taken as 88 % and phosphoric as 10 % (as they are often sold; no source). Concentrated acid
/// burns skin and eyes: goggles and gloves, acid into water, and the supplier's safety sheet.
public final class Dose {
  /// Lactic acid of which no strength is said.
  public static final double USUAL_LACTIC_FRAC = 0.88;

  /// Phosphoric acid of which no strength is said.
  public static final double USUAL_PHOSPHORIC_FRAC = 0.10;

  private static final double WATER_KG_PER_L = 0.998;
  // Through the densities of the usual strengths (tables): lactic 88 % 1.206 kg/L; phosphoric 10,
  // 75, 85 % 1.053, 1.579, 1.685, where the parabola has 1.056, 1.579, 1.682. At 30 and 40 % it is
  // 1 % above the CRC Handbook's 1.180 and 1.254.
  private static final double LACTIC_SLOPE_KG_PER_L = 0.236;
  private static final double PHOSPHORIC_SLOPE_KG_PER_L = 0.55;
  private static final double PHOSPHORIC_BEND_KG_PER_L = 0.30;
  private static final double ML_PER_L = 1000;
  private static final double G_PER_KG = 1000;
  private static final double PERCENT_NUMBER = 100;
  private static final Pattern STRENGTH = Pattern.compile("(\\d{1,2}(?:[.,]\\d+)?) ?%");

  private Dose() {}

  /// The salt that an addition is, where it is one.
  public static Optional<Salt> salt(Liquor.Agent agent) {
    return switch (agent) {
      case GYPSUM -> Optional.of(Salt.GYPSUM);
      case CALCIUM_CHLORIDE_DIHYDRATE -> Optional.of(Salt.CALCIUM_CHLORIDE_DIHYDRATE);
      case CALCIUM_CHLORIDE_ANHYDROUS -> Optional.of(Salt.CALCIUM_CHLORIDE);
      case EPSOM_SALT -> Optional.of(Salt.EPSOM);
      case MAGNESIUM_CHLORIDE -> Optional.of(Salt.MAGNESIUM_CHLORIDE);
      case TABLE_SALT -> Optional.of(Salt.TABLE_SALT);
      case BAKING_SODA -> Optional.of(Salt.SODA);
      case CHALK -> Optional.of(Salt.CHALK);
      case SLAKED_LIME -> Optional.of(Salt.LIME);
      case LACTIC_ACID, PHOSPHORIC_ACID, UNKNOWN -> Optional.empty();
    };
  }

  /// The mass of an addition; 0 when it was measured by volume or count.
  public static double massG(Liquor.Addition addition) {
    Entered amount = addition.amountNumber();
    return switch (amount.unit().quantity()) {
      case SMALL_MASS -> amount.inside();
      case MASS -> amount.inside() * G_PER_KG;
      default -> 0;
    };
  }

  /// Whether an addition can be counted: a known agent, in an amount that says how much.
  public static boolean counted(Liquor.Addition addition) {
    Quantity quantity = addition.amountNumber().unit().quantity();
    boolean mass = quantity == Quantity.SMALL_MASS || quantity == Quantity.MASS;
    return switch (addition.agent()) {
      case UNKNOWN -> false;
      case LACTIC_ACID, PHOSPHORIC_ACID -> mass || quantity == Quantity.VOLUME;
      default -> mass;
    };
  }

  /// The acid that an addition gives, down to a pH; 0 for what is no acid.
  public static double acidMeq(Liquor.Addition addition, double targetPh) {
    if (addition.agent() != Liquor.Agent.LACTIC_ACID
        && addition.agent() != Liquor.Agent.PHOSPHORIC_ACID) {
      return 0;
    }
    double acidFrac = strengthFrac(addition);
    double acidKgPerL = acidKgPerL(addition.agent(), acidFrac);
    return volumeMl(addition, acidKgPerL)
        * acidMeqPerMl(addition.agent(), acidFrac, acidKgPerL, targetPh);
  }

  /// What a millilitre of an acid gives, down to a pH.
  public static double acidMeqPerMl(Liquor.Agent agent, double acidFrac, double targetPh) {
    return acidMeqPerMl(agent, acidFrac, acidKgPerL(agent, acidFrac), targetPh);
  }

  private static double acidMeqPerMl(
      Liquor.Agent agent, double acidFrac, double acidKgPerL, double targetPh) {
    return agent == Liquor.Agent.LACTIC_ACID
        ? Acid.lacticMeqPerMl(acidFrac, acidKgPerL, targetPh)
        : Acid.phosphoricMeqPerMl(acidFrac, acidKgPerL, targetPh);
  }

  private static double volumeMl(Liquor.Addition addition, double acidKgPerL) {
    Entered amount = addition.amountNumber();
    return amount.unit().quantity() == Quantity.VOLUME
        ? amount.inside() * ML_PER_L
        : massG(addition) / acidKgPerL;
  }

  private static double acidKgPerL(Liquor.Agent agent, double acidFrac) {
    return agent == Liquor.Agent.LACTIC_ACID
        ? WATER_KG_PER_L + LACTIC_SLOPE_KG_PER_L * acidFrac
        : WATER_KG_PER_L
            + acidFrac * (PHOSPHORIC_SLOPE_KG_PER_L + PHOSPHORIC_BEND_KG_PER_L * acidFrac);
  }

  /// The strength that the name of an acid says, or what is usual.
  public static double strengthFrac(Liquor.Addition addition) {
    Matcher said = STRENGTH.matcher(addition.name());
    if (said.find()) {
      return Double.parseDouble(said.group(1).replace(',', '.')) / PERCENT_NUMBER;
    }
    return addition.agent() == Liquor.Agent.LACTIC_ACID ? USUAL_LACTIC_FRAC : USUAL_PHOSPHORIC_FRAC;
  }

  /// Whether the name of an acid says how strong it is.
  public static boolean saysStrength(Liquor.Addition addition) {
    return STRENGTH.matcher(addition.name()).find();
  }
}
