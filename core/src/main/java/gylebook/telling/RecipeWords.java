package gylebook.telling;

import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Recipe;
import gylebook.units.AnyUnit;
import gylebook.units.ReadingUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/// A recipe as plain sentences, in the brewer's units; every value in them can be filled
/// ([Filling]).
@AnyUnit("shows amounts of every quantity")
public final class RecipeWords {
  private final Recipe recipe;
  private final Draft draft;

  private RecipeWords(Recipe recipe, ReadingUnits units) {
    this.recipe = recipe;
    this.draft = new Draft(recipe, units);
  }

  /// The recipe in sections.
  public static List<Section> of(Recipe recipe, ReadingUnits units) {
    RecipeWords words = new RecipeWords(recipe, units);
    words.beer();
    words.grist();
    words.mash();
    words.boil();
    words.liquor();
    words.yeast();
    words.packets();
    return words.draft.sections();
  }

  private void beer() {
    draft
        .section("Beer")
        .say(
            "Make {aim.lengthL|length} of {name|name of the beer} ({wanted|the beer in your own"
                + " words}), measured {aim.into|where the length is measured}, for"
                + " {aim.readyBy|when it is wanted}.")
        .say(
            "Wanted strength {aim.strengthPlato|strength before the ferment}, bitterness"
                + " {aim.bitternessMgPerL|bitterness in the beer}.");
  }

  private void grist() {
    draft.section("Grist");
    List<String> lines = lines(recipe.grist().size(), this::goods);
    String scaled = recipe.aim().strengthPlato().isPresent() ? ", scaled to the strength" : "";
    draft.say(
        lines.isEmpty()
            ? "No malt yet: {+grist|malt or sugar}."
            : "Use " + joined(lines) + scaled + ". {+grist|malt or sugar}.");
  }

  private String goods(int number) {
    String path = "grist." + number;
    String where =
        recipe.grist().get(number).use() == Goods.Use.MASH
            ? ""
            : " {" + path + ".use|where it goes in}";
    return "{" + path + ".massKg|mass; 0 takes it out} {" + path + ".name|name}" + where;
  }

  private void mash() {
    draft.section("Mash");
    List<String> rests =
        lines(
            recipe.rests().size(),
            i ->
                "{rests.%d.targetC|temperature of rest %d} for {rests.%d.holdSec|time of rest %d; 0 takes it out}"
                    .formatted(i, i + 1, i, i + 1));
    draft.say(
        rests.isEmpty()
            ? "No rest yet: {+rests|a rest}."
            : "Mash at " + String.join(", then ", rests) + ". {+rests|a rest}.");
  }

  private void boil() {
    draft.section("Boil and hops");
    draft.say(
        "Boil for {boil.holdSec|length of the boil}, driving off {boil.evaporationLPerSec|evaporation},"
            + " at a duty of {boil.dutyFrac|duty set by hand}.");
    List<String> lines = lines(recipe.hops().size(), this::hop);
    draft.say(lines.isEmpty() ? "No hops yet: {+hops|hops}." : joined(lines) + ". {+hops|hops}.");
    List<String> stands =
        lines(
            recipe.stands().size(),
            i ->
                "at {stands.%d.targetC|temperature of stand %d} for {stands.%d.holdSec|time of stand %d; 0 takes it out}"
                    .formatted(i, i + 1, i, i + 1));
    draft.say(
        stands.isEmpty()
            ? "No hot stand after the boil: {+stands|a stand}."
            : "After the boil it stands "
                + String.join(", then ", stands)
                + ". {+stands|a stand}.");
    List<String> others =
        lines(
            recipe.others().size(),
            i ->
                "{others.%d.amountNumber|amount; 0 takes it out} {others.%d.name|name} {others.%d.when|when it goes in}"
                    .formatted(i, i, i));
    draft.say(
        others.isEmpty()
            ? "Nothing else goes in: {+others|finings or spice}."
            : "Also " + joined(others) + ". {+others|finings or spice}.");
  }

  private String hop(int number) {
    String path = "hops." + number;
    return "{%s.massG|mass; 0 takes it out} {%s.name|variety} {%s.when|when it goes in}"
        .formatted(path, path, path);
  }

  private void liquor() {
    draft.section("Liquor");
    List<String> lines =
        lines(
            recipe.liquor().additions().size(),
            i ->
                "{liquor.additions.%d.amountNumber|amount; 0 takes it out} {liquor.additions.%d.name|salt or acid} (into the {liquor.additions.%d.into|where it goes})"
                    .formatted(i, i, i));
    String with = lines.isEmpty() ? ", nothing added" : ", with " + joined(lines);
    draft.say("{liquor.name|name of the liquor}" + with + ". {+liquor.additions|a salt or acid}.");
    draft.say(
        "Before anything is added it holds, in a litre, {liquor.ions.calciumMgPerL|calcium} of"
            + " calcium, {liquor.ions.magnesiumMgPerL|magnesium} of magnesium,"
            + " {liquor.ions.sodiumMgPerL|sodium} of sodium, {liquor.ions.chlorideMgPerL|chloride}"
            + " of chloride, {liquor.ions.sulphateMgPerL|sulphate} of sulphate and"
            + " {liquor.ions.bicarbonateMgPerL|bicarbonate} of bicarbonate.");
  }

  private void yeast() {
    draft
        .section("Yeast and ferment")
        .say(
            "{yeast.amountNumber|amount of yeast} of {yeast.name|yeast} ({yeast.form|form of the"
                + " yeast}), pitched at {yeast.pitchC|temperature at pitching}; its maker names an"
                + " attenuation of {yeast.attenuationFrac|attenuation}.");
    List<String> steps =
        lines(
            recipe.ferment().steps().size(),
            i ->
                "from {ferment.steps.%d.startC|beer at the start of step %d} to {ferment.steps.%d.endC|beer at the end of step %d} over {ferment.steps.%d.holdSec|time of step %d; 0 takes it out}, free to rise: {ferment.steps.%d.freeRise|free to rise}"
                    .formatted(i, i + 1, i, i + 1, i, i + 1, i));
    if (!steps.isEmpty()) {
      draft.say("Ferment " + String.join(", then ", steps) + ".");
    }
    draft.say(
        "Put it up in {pack.kind|package} with {pack.carbonationRatio|volumes of carbon dioxide} of"
            + " carbon dioxide.");
  }

  /// What sacks and packets say: it matters, but not for reading the recipe.
  private void packets() {
    draft.section("What sacks and packets say");
    for (int i = 0; i < recipe.grist().size(); i++) {
      String path = "grist." + i;
      draft.say(
          "%s, lot {%s.lot|lot}: {%s.kind|kind}, {%s.use|where it goes in}, extract {%s.analysis.extractFrac|extract of the dry fine grind} give or take {%s.analysis.extractDoubtFrac|doubt of the extract}, moisture {%s.analysis.moistureFrac|moisture}, colour {%s.analysis.colourEbc|colour}, attenuation {%s.analysis.attenuationOffsetFrac|attenuation above the usual malt} above the usual."
              .formatted(
                  plain(recipe.grist().get(i).name()),
                  path,
                  path,
                  path,
                  path,
                  path,
                  path,
                  path,
                  path));
    }
    for (int i = 0; i < recipe.hops().size(); i++) {
      Hop hop = recipe.hops().get(i);
      String path = "hops." + i;
      draft.say(
          "%s, lot {%s.lot|lot}: {%s.form|leaf or pellets}, alpha acid {%s.alphaFrac|alpha acid}."
              .formatted(plain(hop.name()), path, path, path));
    }
    draft.say("Notes: {notes|notes}.");
  }

  /// A name inside a sentence that is given with braces.
  private static String plain(String name) {
    return name.replace('{', '(').replace('}', ')');
  }

  private static List<String> lines(int count, java.util.function.IntFunction<String> line) {
    return new ArrayList<>(IntStream.range(0, count).mapToObj(line).toList());
  }

  private static String joined(List<String> lines) {
    if (lines.size() < 2) {
      return String.join("", lines);
    }
    return String.join(", ", lines.subList(0, lines.size() - 1)) + " and " + lines.getLast();
  }
}
