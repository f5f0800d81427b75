package gylebook.plan;

import gylebook.simulate.Outcome;

/// The figures of the liquor in a brewer's words.
final class ExplainedLiquor {
  private static final String IONS = "source + sum of salt n M(ion)/M(salt)/litres";
  private static final String IONS_FROM = "water's analysis; salts; litres";
  private static final String MASH = " in the mash liquor, salts in";
  private static final String WHOLE = " in all liquor together, salts in the kettle included";

  private ExplainedLiquor() {}

  static Explained of(Outcome outcome) {
    return switch (outcome) {
      case MASH_PH ->
          Explained.of(
              "pH of the mash, read in a cooled sample",
              "sum of m B (pH - malt's own pH) = litres x residual alkalinity - acid",
              "malts' own pH from memory, by colour; buffer 22 to 50 meq/(kg pH); liquor; acid; all"
                  + " carbonic acid counted as gone (see mash-ph-gas-kept)",
              "delange2015",
              "kolbach1953");
      case RESIDUAL ->
          Explained.of(
              "residual alkalinity of the mash liquor",
              "alkalinity - acid - Ca/3.5 - Mg/7, in equivalents",
              "water's analysis; salts; acid; litres",
              "kolbach1953");
      case CAST_SHIFT ->
          Explained.of(
              "pH of the cast wort against one from distilled water",
              "0.3 x residual alkalinity/10 German degrees",
              "all liquor, acid included; found in cast wort of about 12 P, slope second-hand",
              "kolbach1953");
      case MASH_CALCIUM, MASH_MAGNESIUM, MASH_SODIUM, MASH_CHLORIDE, MASH_SULFATE ->
          ion(outcome, MASH);
      case MASH_BICARBONATE, WHOLE_BICARBONATE ->
          Explained.of(
              "bicarbonate"
                  + (outcome == Outcome.MASH_BICARBONATE ? MASH : WHOLE)
                  + " and acid too",
              "(source + soda, chalk, lime - acid), none below 0, as HCO3",
              IONS_FROM + "; acid",
              "iupac-weights");
      default -> ion(outcome, WHOLE);
    };
  }

  private static Explained ion(Outcome outcome, String where) {
    String name =
        switch (outcome) {
          case MASH_CALCIUM, WHOLE_CALCIUM -> "calcium";
          case MASH_MAGNESIUM, WHOLE_MAGNESIUM -> "magnesium";
          case MASH_SODIUM, WHOLE_SODIUM -> "sodium";
          case MASH_CHLORIDE, WHOLE_CHLORIDE -> "chloride";
          default -> "sulphate";
        };
    return Explained.of(name + where, IONS, IONS_FROM, "iupac-weights");
  }
}
