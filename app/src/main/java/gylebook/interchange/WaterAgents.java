package gylebook.interchange;

import gylebook.recipe.Liquor.Agent;
import java.util.Locale;

/// What salts and acids are called in the trade: the standards name no substance.
final class WaterAgents {
  private WaterAgents() {}

  /// The substance a name means; UNKNOWN when it does not say.
  static Agent named(String name) {
    String words = name.toLowerCase(Locale.ROOT).replace("sulfate", "sulphate");
    if (any(words, "gypsum", "calcium sulphate", "caso4")) {
      return Agent.GYPSUM;
    }
    if (any(words, "calcium chloride", "cacl2")) {
      return any(words, "anhydrous")
          ? Agent.CALCIUM_CHLORIDE_ANHYDROUS
          : Agent.CALCIUM_CHLORIDE_DIHYDRATE;
    }
    if (any(words, "epsom", "magnesium sulphate", "mgso4")) {
      return Agent.EPSOM_SALT;
    }
    if (any(words, "magnesium chloride", "mgcl2")) {
      return Agent.MAGNESIUM_CHLORIDE;
    }
    if (any(words, "baking soda", "bicarbonate", "nahco3")) {
      return Agent.BAKING_SODA;
    }
    if (any(words, "table salt", "sodium chloride", "nacl")) {
      return Agent.TABLE_SALT;
    }
    return basesAndAcids(words);
  }

  private static Agent basesAndAcids(String words) {
    if (any(words, "chalk", "calcium carbonate", "caco3")) {
      return Agent.CHALK;
    }
    if (any(words, "lime", "calcium hydroxide", "ca(oh)2") && !words.contains("juice")) {
      return Agent.SLAKED_LIME;
    }
    if (any(words, "lactic")) {
      return Agent.LACTIC_ACID;
    }
    return any(words, "phosphoric") ? Agent.PHOSPHORIC_ACID : Agent.UNKNOWN;
  }

  /// What the name leaves open and had to be guessed; empty when nothing.
  static String guessed(String name, Agent agent) {
    boolean hydrate = name.toLowerCase(Locale.ROOT).contains("hydr");
    return switch (agent) {
      case UNKNOWN ->
          "What '"
              + Refusal.shortened(name)
              + "' is chemically is not known here; the word is kept.";
      case CALCIUM_CHLORIDE_DIHYDRATE ->
          hydrate ? "" : "Taken as the dihydrate; the name does not say how much water it holds.";
      case LACTIC_ACID, PHOSPHORIC_ACID -> "The file does not say how strong the acid is.";
      default -> "";
    };
  }

  /// Whether it is sold as crystals or powder, so that litres of it make no sense.
  static boolean solid(Agent agent) {
    return switch (agent) {
      case LACTIC_ACID, PHOSPHORIC_ACID, UNKNOWN -> false;
      default -> true;
    };
  }

  private static boolean any(String words, String... parts) {
    for (String part : parts) {
      if (words.contains(part)) {
        return true;
      }
    }
    return false;
  }
}
