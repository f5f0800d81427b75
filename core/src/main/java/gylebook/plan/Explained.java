package gylebook.plan;

import gylebook.simulate.Outcome;
import java.util.List;

/// What each figure is, in a brewer's words, by which equation, from which sources.
///
/// @param says what it is
/// @param equation in plain characters
/// @param inputs what goes in
/// @param sources keys of docs/sources.bib
record Explained(String says, String equation, List<String> inputs, List<String> sources) {

  static Explained of(String says, String equation, String inputs, String... sources) {
    return new Explained(says, equation, List.of(inputs.split("; ", -1)), List.of(sources));
  }

  static Explained of(Outcome outcome) {
    return switch (outcome) {
      case LIQUOR,
          HEAT_UP,
          DOUGH_IN,
          GRAIN_MEAN,
          GRAIN_HELD,
          FIRST_WORT,
          CONVERSION,
          KETTLE_YIELD,
          BREWHOUSE ->
          mash(outcome);
      case PRE_BOIL_COLD, PRE_BOIL_HOT, PRE_BOIL_STRENGTH, POST_BOIL_COLD, POST_BOIL_HOT ->
          wort(outcome);
      case TO_BOIL, BOILS_AT, BOIL_OFF, BOIL_OFF_RATE, ROLLING, BOIL_HELD -> boil(outcome);
      case PRECURSOR, SULFIDE -> sulfide(outcome);
      case CAST, FERMENTER, STRENGTH, COLOUR, ATTENUATION, FINAL, ALCOHOL, KEG -> beer(outcome);
      case ISO_IN_WORT, ISO_IN_BEER, BITTERNESS, TINSETH -> bitter(outcome);
      case ENERGY, CHILL_WATER, ALL_WATER, DRAIN, LOOP_DOSE, DAY, GAVE_UP -> spent(outcome);
      case BAG_WET, BAG_DRIPPED, COVER, ROOM_AT_DOUGH_IN, ROOM_AT_BREAK -> room(outcome);
      case SUCTION, CURRENT, BREAKER -> mains(outcome);
      case MASH_PH,
          RESIDUAL,
          MASH_CALCIUM,
          MASH_MAGNESIUM,
          MASH_SODIUM,
          MASH_CHLORIDE,
          MASH_SULFATE,
          MASH_BICARBONATE,
          WHOLE_CALCIUM,
          WHOLE_MAGNESIUM,
          WHOLE_SODIUM,
          WHOLE_CHLORIDE,
          WHOLE_SULFATE,
          WHOLE_BICARBONATE,
          CAST_SHIFT ->
          ExplainedLiquor.of(outcome);
      case FERMENT_END, PACKED, PACKED_OVER, PACKAGED_GAS, PRIMING -> ExplainedCold.of(outcome);
    };
  }

  private static Explained mash(Outcome outcome) {
    return switch (outcome) {
      case LIQUOR ->
          of(
              "cold liquor into the kettle",
              "found so that the wanted litres come out",
              "litres wanted; what the bag keeps; what boils off; what stays behind",
              "mass-balance");
      case HEAT_UP ->
          of(
              "time to heat the liquor",
              "C dT/dt = P - losses",
              "element; mains; liquor; lid; room",
              "energy-balance");
      case DOUGH_IN ->
          of(
              "grain after dough-in",
              "heat of liquor, kettle and malt mixed, with wetting",
              "liquor; malt; strike; malt's moisture",
              "energy-balance",
              "pauls-whites-1984");
      case GRAIN_MEAN ->
          of("grain, mean of the mash", "mean over the mash", "bed temperature", "energy-balance");
      case GRAIN_HELD ->
          of(
              "grain at the end of the first rest",
              "bed follows the wort that flows through it",
              "set point; flow; hose; lid",
              "energy-balance");
      case FIRST_WORT ->
          of(
              "strength of the mash wort",
              "P = 100 E/(W + m M + E)",
              "extract dissolved; liquor; malt's moisture",
              "mass-balance");
      case CONVERSION ->
          of(
              "extract dissolved of what the malt can give",
              "pasting and thinning followed over the curve of the grain",
              "grain temperature; crush; malt analysis",
              "rittenauer2021",
              "wray2014");
      case KETTLE_YIELD ->
          of(
              "extract in the kettle of what the malt can give",
              "conversion times 1 - kept/total",
              "conversion; wort kept by the bag",
              "mass-balance");
      default ->
          of(
              "extract in the fermenter of what the goods can give",
              "mass balance of the day",
              "kettle yield; what stays behind",
              "mass-balance");
    };
  }

  private static Explained wort(Outcome outcome) {
    return switch (outcome) {
      case PRE_BOIL_COLD ->
          of(
              "wort before the boil, at 20 C",
              "V = m/rho(w, 20 C)",
              "wort mass; strength",
              "bubnik-1995");
      case PRE_BOIL_HOT ->
          of(
              "the same, hot in the kettle",
              "V = m/rho(w, T)",
              "wort mass; temperature",
              "bubnik-1995");
      case PRE_BOIL_STRENGTH ->
          of("strength before the boil", "w = E/m", "extract; wort mass", "mass-balance");
      case POST_BOIL_COLD ->
          of(
              "wort after the boil, at 20 C",
              "V = m/rho(w, 20 C)",
              "wort mass; strength",
              "bubnik-1995");
      default ->
          of(
              "the same, hot in the kettle",
              "V = m/rho(w, T)",
              "wort mass; temperature",
              "bubnik-1995");
    };
  }

  private static Explained boil(Outcome outcome) {
    return switch (outcome) {
      case TO_BOIL ->
          of(
              "time from bag out to the boil",
              "C dT/dt = P - losses - steam",
              "element; wort; evaporation; room",
              "energy-balance",
              "shah-2014");
      case BOILS_AT ->
          of(
              "boiling point of this wort here",
              "psat(T) a_w = p",
              "station pressure; strength",
              "iapws-if97",
              "starzak-peacock-1997");
      case BOIL_OFF ->
          of(
              "water boiled off",
              "(P duty - losses)/latent heat over the boil",
              "duty; element; losses",
              "energy-balance",
              "iapws-if97");
      case BOIL_OFF_RATE ->
          of(
              "boil-off in an hour",
              "(P duty - losses)/latent heat",
              "duty; element; losses",
              "energy-balance",
              "iapws-if97");
      case ROLLING ->
          of(
              "least duty at which the open kettle rolls",
              "1.1 losses at the boil/P",
              "open surface; wall; element",
              "shah-2014",
              "energy-balance");
      default ->
          of(
              "wort at the end of the boil",
              "boils while P duty exceeds the losses",
              "duty; losses",
              "energy-balance");
    };
  }

  private static Explained sulfide(Outcome outcome) {
    return switch (outcome) {
      case PRECURSOR ->
          of(
              "DMS precursor left of what the malt brought",
              "dS/dt = -k(T) S over the curve",
              "temperature; time; pH assumed 5.3",
              "wilson-booer1979",
              "dickenson1979");
      default ->
          of(
              "free DMS, as a share of the precursor brought",
              "dD/dt = k S - k_strip D",
              "temperature; evaporation; chilling time",
              "wilson-booer1979");
    };
  }

  private static Explained beer(Outcome outcome) {
    return switch (outcome) {
      case CAST ->
          of(
              "wort into the fermenter",
              "counterflow: T = Th - eps Cmin/Ch (Th - Tc)",
              "tap; flows; chiller",
              "bergman-2011");
      case FERMENTER ->
          of(
              "wort in the fermenter, at 20 C",
              "mass balance of the day",
              "liquor; bag; boil-off; hops; kettle's rest",
              "mass-balance",
              "bubnik-1995");
      case STRENGTH ->
          of("strength in the fermenter", "w = E/m", "extract; wort mass", "mass-balance");
      case COLOUR ->
          of(
              "colour",
              "SRM = 1.4922 MCU^0.6859, and what the boil adds",
              "malt colours; litres; boil 1.5 EBC assumed; the rule to 10 % (see beer-colour-lines)",
              "morey");
      case ATTENUATION ->
          of(
              "apparent attenuation to expect",
              "sugar made over the curve; yeast; malt's own offset",
              "grain temperature; time; yeast; not how thick the mash is (see mash-thickness)",
              "wray2014",
              "muller1991");
      case FINAL ->
          of(
              "apparent extract at the end",
              "OE (1 - attenuation)",
              "strength; attenuation",
              "mass-balance");
      case ALCOHOL ->
          of(
              "alcohol by volume",
              "Balling with the measured relation of extracts",
              "strength; final extract",
              "cutaia2009");
      default ->
          of(
              "beer in the keg",
              "fermenter less yeast cake and dry hops",
              "litres; cake; dry hops",
              "brewers-practice");
    };
  }

  private static Explained bitter(Outcome outcome) {
    return switch (outcome) {
      case ISO_IN_WORT ->
          of(
              "iso-alpha in the wort",
              "d iso/dt = k1 alpha - k2 iso over the real curve",
              "alpha, all of it dissolved (see iso-alpha-of-large-addition); temperature; time",
              "malowicki2005");
      case ISO_IN_BEER ->
          of(
              "iso-alpha in the beer",
              "formed times kept in kettle times kept in ferment",
              "iso-alpha in wort; losses",
              "malowicki2005",
              "justus2018");
      case BITTERNESS ->
          of(
              "bitterness, by kinetics over the real curve",
              "iso-alpha in the beer, and what dry hops bring",
              "iso-alpha; dry hops, not what they take out (see bitterness-after-dry-hops)",
              "malowicki2005",
              "maye2015");
      default ->
          of(
              "bitterness by Tinseth's equation, for boil times alone",
              "U = 1.65 0.000125^(SG-1) (1 - exp(-0.04 min))/4.15",
              "alpha; minutes in the boil; gravity",
              "tinseth");
    };
  }

  private static Explained spent(Outcome outcome) {
    return switch (outcome) {
      case ENERGY ->
          of("electricity", "sum of duty times power", "element; duty; time", "energy-balance");
      case CHILL_WATER -> of("water to chill", "flow times time", "tap; time", "mass-balance");
      case ALL_WATER -> of("water in all", "liquor and chilling", "liquor; tap", "mass-balance");
      case DRAIN ->
          of(
              "hottest cooling water to the drain",
              "Tc + heat passed/flow",
              "chiller; tap; wort",
              "bergman-2011");
      case LOOP_DOSE ->
          of(
              "heat dose of the hose's end, minutes at 60 C",
              "sum of 10^((T - 60)/7) minutes",
              "temperature in the hose",
              "energy-balance");
      case DAY -> of("length of the hot day", "sum of the legs", "everything", "energy-balance");
      default -> of("days given up", "share of days", "everything", "energy-balance");
    };
  }

  private static Explained room(Outcome outcome) {
    return switch (outcome) {
      case BAG_WET ->
          of(
              "bag at the lift, dripping",
              "solids and the wort among them",
              "malt; wort held by the bed",
              "mass-balance");
      case BAG_DRIPPED ->
          of(
              "bag when it has dripped",
              "solids and the wort kept",
              "malt; wort kept",
              "mass-balance");
      case COVER ->
          of(
              "least wort over the element",
              "level outside the bag - element top",
              "litres; bed; flow; element height",
              "carman-1937");
      case ROOM_AT_DOUGH_IN ->
          of(
              "room below the rim with the malt in",
              "height - volume/area",
              "liquor; malt's displacement 0.7 L/kg",
              "metzger");
      default ->
          of(
              "room below the rim at the hot break",
              "height - volume/area",
              "wort; kettle",
              "mass-balance");
    };
  }

  private static Explained mains(Outcome outcome) {
    return switch (outcome) {
      case SUCTION ->
          of(
              "suction head to spare at the pump",
              "(p - pv)/(rho g) + z - loss - wanted",
              "temperature; level; pump",
              "bachus-custodio-2003");
      case CURRENT ->
          of("current of the element", "I = P/V", "element; mains", "electric-heater-code");
      default ->
          of(
              "current as a share of the breaker",
              "I/breaker",
              "element; breaker",
              "electric-heater-code");
    };
  }
}
