package gylebook.plan;

import gylebook.simulate.Outcome;

/// The figures of the cold side in a brewer's words.
final class ExplainedCold {
  private ExplainedCold() {}

  static Explained of(Outcome outcome) {
    return switch (outcome) {
      case FERMENT_END ->
          Explained.of(
              "from pitching until 2 % of the sugar is left; never package by it",
              "tau = integral of B20 Q10^((T - 20)/10) dt reaches tau_m + ln(1/0.02 - 1)",
              "the recipe's ferment steps; pace, start and warmth of the yeast are priors",
              "speers2003");
      case PACKED ->
          Explained.of(
              "apparent extract when the ferment's steps are over",
              "P_end + (P0 - P_end)/(1 + exp(tau - tau_m))",
              "strength; attenuation; the recipe's ferment steps",
              "speers2003",
              "reid2021");
      case PACKED_OVER ->
          Explained.of(
              "what is then still to ferment",
              "(P0 - P_end)/(1 + exp(tau - tau_m))",
              "strength; attenuation; the recipe's ferment steps",
              "speers2003",
              "reid2021");
      case PACKAGED_GAS ->
          Explained.of(
              "carbon dioxide in the package in the end",
              "kept from the warmest step + sugar + still to ferment; a keg holds what is set",
              "wanted gas; warmest step; air pressure; what is still to ferment",
              "german-carbonation",
              "balling");
      default ->
          Explained.of(
              "table sugar for all bottles or the cask together",
              "(wanted - kept from the warmest step) x litres/0.51429",
              "wanted gas; warmest step; air pressure; beer to package",
              "german-carbonation",
              "mass-balance");
    };
  }
}
