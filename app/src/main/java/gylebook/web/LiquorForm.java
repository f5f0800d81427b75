package gylebook.web;

import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.simulate.Dose;
import gylebook.telling.Filled;
import gylebook.telling.LiquorWish;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/// What is typed into the form that asks for a liquor: fields by their names.
///
/// @param lines what is wanted
/// @param house the solids that are ticked
/// @param acids strength by acid; empty when there is none of it
/// @param scale steps of the scale
/// @param measure steps of what acids are measured with
record LiquorForm(
    Map<LiquorWish.Line, String> lines,
    List<Liquor.Agent> house,
    Map<Liquor.Agent, String> acids,
    String scale,
    String measure) {
  static final List<Liquor.Agent> ACIDS =
      List.of(Liquor.Agent.LACTIC_ACID, Liquor.Agent.PHOSPHORIC_ACID);

  private static final List<Liquor.Agent> USUAL =
      List.of(
          Liquor.Agent.GYPSUM,
          Liquor.Agent.CALCIUM_CHLORIDE_DIHYDRATE,
          Liquor.Agent.EPSOM_SALT,
          Liquor.Agent.TABLE_SALT,
          Liquor.Agent.BAKING_SODA);
  private static final double PERCENT = 100;

  /// Whatever is a solid.
  static List<Liquor.Agent> solids() {
    return List.of(Liquor.Agent.values()).stream()
        .filter(agent -> agent != Liquor.Agent.UNKNOWN && !ACIDS.contains(agent))
        .toList();
  }

  static String name(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT);
  }

  /// As it is first shown: nothing is wanted yet; what the recipe uses is in the house.
  static LiquorForm first(Recipe recipe) {
    List<Liquor.Agent> house = new ArrayList<>(USUAL);
    Map<Liquor.Agent, String> acids = new EnumMap<>(Liquor.Agent.class);
    for (Liquor.Addition addition : recipe.liquor().additions()) {
      Liquor.Agent agent = addition.agent();
      if (ACIDS.contains(agent)) {
        long percent = Math.round(PERCENT * Dose.strengthFrac(addition));
        acids.put(agent, Dose.saysStrength(addition) ? percent + " %" : "");
      } else if (agent != Liquor.Agent.UNKNOWN && !house.contains(agent)) {
        house.add(agent);
      }
    }
    return new LiquorForm(Map.of(), house, acids, LiquorWish.USUAL_SCALE, LiquorWish.USUAL_MEASURE);
  }

  /// As it was filled in.
  static LiquorForm of(Map<String, String> fields) {
    Map<LiquorWish.Line, String> lines = new EnumMap<>(LiquorWish.Line.class);
    for (LiquorWish.Line line : LiquorWish.Line.values()) {
      lines.put(line, fields.getOrDefault(name(line), ""));
    }
    Map<Liquor.Agent, String> acids = new EnumMap<>(Liquor.Agent.class);
    for (Liquor.Agent acid : ACIDS) {
      acids.put(acid, fields.getOrDefault(name(acid), "").strip());
    }
    return new LiquorForm(
        lines,
        solids().stream().filter(agent -> fields.containsKey(name(agent))).toList(),
        acids,
        fields.getOrDefault("scale", LiquorWish.USUAL_SCALE),
        fields.getOrDefault("measure", LiquorWish.USUAL_MEASURE));
  }

  /// The fields again, for a page that sends them on.
  Map<String, String> fields() {
    Map<String, String> fields = new LinkedHashMap<>();
    lines.forEach((line, typed) -> fields.put(name(line), typed));
    house.forEach(agent -> fields.put(name(agent), "yes"));
    acids.forEach((acid, strength) -> fields.put(name(acid), strength));
    fields.put("scale", scale);
    fields.put("measure", measure);
    return fields;
  }

  Filled<LiquorWish> wish() {
    List<String> names = new ArrayList<>(house.stream().map(Liquor.Agent::words).toList());
    acids.forEach(
        (acid, strength) -> {
          if (!strength.isEmpty()) {
            names.add(acid.words() + " " + percent(strength));
          }
        });
    return LiquorWish.read(lines, names, scale, measure);
  }

  private static String percent(String strength) {
    return strength.contains("%") ? strength : strength + " %";
  }
}
