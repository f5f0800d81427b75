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

  static Explained cellsWanted(double rateCountPerMl) {
    return Explained.of(
        "living cells to pitch by habit, in thousand millions",
        "N = r V OE",
        "wort in the fermenter; strength; r "
            + (rateCountPerMl > 1e6 ? "1.5" : "0.75")
            + " million a mL and degree Plato, a habit and no law",
        "practice");
  }

  static Explained cellsBrought() {
    return Explained.of(
        "living cells that the dried yeast brings, in thousand millions",
        "N = m n v",
        "its mass; n 10 (6 to 16) thousand million a gram; v 0.75 (0.5 to 0.95) strewn in, from"
            + " memory; its age is not known",
        "vandenberg2003",
        "practice");
  }

  static Explained driedWanted() {
    return Explained.of(
        "dried yeast that brings as many",
        "m = N/(n v)",
        "living cells to pitch; n 10 (6 to 16) thousand million a gram; v 0.75 (0.5 to 0.95)"
            + " strewn in, from memory; its age is not known",
        "vandenberg2003",
        "practice");
  }

  static Explained oxygen() {
    return Explained.of(
        "oxygen that air can give the wort at most",
        "DO = DO_water(T, p) exp(-kappa P)",
        "wort when the yeast goes in; strength; air pressure; kappa 0.0105 to 0.0205 a degree Plato,"
            + " for sources disagree; rousing stays below it, by how much nobody published",
        "benson-krause1984",
        "oxford-companion-2012");
  }

  static Explained gas() {
    return Explained.of(
        "carbon dioxide that the ferment gives off",
        "m = wort 0.805 dP 0.46286",
        "wort in the fermenter; strength; final extract; what the beer keeps is in it",
        "balling");
  }

  static Explained gasPeak() {
    return Explained.of(
        "the same in its busiest hour",
        "V B/4, V = m R T/(M p)",
        "carbon dioxide in all; pace of the yeast, a prior, at the warmest of the ferment's steps",
        "speers2003",
        "mass-balance");
  }

  static Explained room() {
    return Explained.of(
        "closed room in which all of it stays below 5000 ppm",
        "V = m R T/(M p x)",
        "carbon dioxide in all; nothing airs, all mixed, on top of what air holds; the average of 8 h"
            + " that OSHA allows, your code may differ",
        "osha-z1",
        "mass-balance");
  }
}
