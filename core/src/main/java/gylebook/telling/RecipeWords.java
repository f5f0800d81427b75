package gylebook.telling;

import gylebook.recipe.Aim;
import gylebook.recipe.Boil;
import gylebook.recipe.Goods;
import gylebook.recipe.Liquor;
import gylebook.recipe.Pack;
import gylebook.recipe.Recipe;
import gylebook.recipe.Yeast;
import gylebook.units.AnyUnit;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import java.util.List;

/// A recipe as plain sentences, in the brewer's units; every value in them can be filled
/// ([Filling]). The last section holds what matters but is not needed for reading the recipe.
@AnyUnit("shows amounts of every quantity")
public final class RecipeWords {
  /// The heading of the section about the liquor.
  public static final String LIQUOR = "Liquor";

  private final Recipe recipe;
  private final ReadingUnits units;
  private final Draft draft;

  private RecipeWords(Recipe recipe, ReadingUnits units) {
    this.recipe = recipe;
    this.units = units;
    this.draft = new Draft(recipe, units);
  }

  /// The recipe in sections.
  public static List<Section> of(Recipe recipe, ReadingUnits units) {
    RecipeWords words = new RecipeWords(recipe, units);
    words.beer();
    words.grist();
    words.mash();
    words.boil();
    words.others();
    words.liquor();
    words.yeast();
    new Packets(recipe, words.draft, units).write();
    return words.draft.sections();
  }

  private void beer() {
    Aim aim = recipe.aim();
    String made = "Make {aim.lengthL|length} of {name|name of the beer}";
    String measured = ", measured {aim.into|where the length is measured}.";
    String own = "{wanted|the beer in your own words}";
    boolean plain = recipe.wanted().isBlank();
    draft.section("Beer");
    draft.say(
        plain
            ? made + measured + " In your own words: " + own + "."
            : made + ", " + Grammar.article(recipe.wanted()) + own + measured);
    boolean dated = !aim.readyBy().isBlank();
    boolean timed = !aim.doneBy().isBlank();
    draft.say(
        (dated ? "It is wanted for " : "Day it is wanted: ")
            + "{aim.readyBy|day it is wanted}; "
            + (timed ? "the brew day is to be done by " : "end of the brew day: ")
            + "{aim.doneBy|end of the brew day}.");
    String strength = "{aim.strengthPlato|strength before the ferment}";
    String bitterness = "{aim.bitternessMgPerL|bitterness in the beer}";
    boolean both = aim.strengthPlato().isPresent() && aim.bitternessMgPerL().isPresent();
    draft.say(
        both
            ? "Aim for a strength of " + strength + " and a bitterness of " + bitterness + "."
            : "Strength wanted: " + strength + "; bitterness wanted: " + bitterness + ".");
    draft.say("Colour wanted: {aim.colourEbc|colour of the beer}.");
  }

  private void grist() {
    draft.section("Grist");
    List<String> lines = Grammar.lines(recipe.grist().size(), this::goods);
    String scaled =
        recipe.aim().strengthPlato().isPresent() ? ", scaled to the strength wanted" : "";
    draft.say(
        lines.isEmpty()
            ? "No malt yet: {+grist|malt or sugar}."
            : "Use " + Grammar.joined(lines) + scaled + ". {+grist|malt or sugar}.");
  }

  private String goods(int number) {
    boolean mashed = recipe.grist().get(number).use() == Goods.Use.MASH;
    String line = "{grist.#.massKg|mass; 0 takes it out} {grist.#.name|name}";
    String where = mashed ? "" : " {grist.#.use|where it goes in}";
    return Grammar.numbered(line + where, number);
  }

  private void mash() {
    draft.section("Mash");
    List<String> rests =
        Grammar.lines(
            recipe.rests().size(),
            i ->
                Grammar.numbered(
                    "at {rests.#.targetC|temperature of rest ##}"
                        + (slow(i) ? ", reached in {rests.#.rampSec|heating up to rest ##}," : "")
                        + " for {rests.#.holdSec|time of rest ##; 0 takes it out}",
                    i));
    draft.say(
        rests.isEmpty()
            ? "No rest yet: {+rests|a rest}."
            : "Mash " + String.join(", then ", rests) + ". {+rests|a rest}.");
  }

  private boolean slow(int number) {
    return recipe.rests().get(number).rampSec().isPresent();
  }

  private void boil() {
    Boil boil = recipe.boil();
    draft
        .section("Boil and hops")
        .say("Boil for {boil.holdSec|length of the boil} with the lid {boil.lid|lid in the boil}.");
    boolean driven = boil.evaporationLPerSec().isPresent();
    boolean byHand = boil.dutyFrac().isPresent();
    draft.say(
        (driven ? "Drive off " : "Evaporation wanted: ")
            + "{boil.evaporationLPerSec|evaporation}; "
            + (byHand ? "the element runs at " : "duty set by hand: ")
            + "{boil.dutyFrac|duty set by hand}"
            + (driven || byHand ? "." : "; so it boils as this rig usually does."));
    List<String> hops =
        Grammar.lines(
            recipe.hops().size(),
            i ->
                Grammar.numbered(
                    "{hops.#.massG|mass; 0 takes it out} {hops.#.name|variety}"
                        + " {hops.#.when|when it goes in}",
                    i));
    draft.say(
        hops.isEmpty()
            ? "No hops yet: {+hops|hops}."
            : "Hops: " + Grammar.joined(hops) + ". {+hops|hops}.");
    List<String> stands =
        Grammar.lines(
            recipe.stands().size(),
            i ->
                Grammar.numbered(
                    "at {stands.#.targetC|temperature of stand ##} for"
                        + " {stands.#.holdSec|time of stand ##; 0 takes it out}",
                    i));
    draft.say(
        stands.isEmpty()
            ? "No hot stand after the boil: {+stands|a stand}."
            : "After the boil it stands "
                + String.join(", then ", stands)
                + ". {+stands|a stand}.");
  }

  private void others() {
    List<String> others =
        Grammar.lines(
            recipe.others().size(),
            i ->
                Grammar.numbered(
                    "{others.#.amountNumber|amount; 0 takes it out} {others.#.name|name}"
                        + " {others.#.when|when it goes in}",
                    i));
    draft.say(
        others.isEmpty()
            ? "Nothing else goes in: {+others|finings or spice}."
            : "Also " + Grammar.joined(others) + ". {+others|finings or spice}.");
  }

  private void liquor() {
    draft.section(LIQUOR);
    List<String> lines =
        Grammar.lines(
            recipe.liquor().additions().size(),
            i ->
                Grammar.numbered(
                    "{liquor.additions.#.amountNumber|amount; 0 takes it out}"
                        + " {liquor.additions.#.name|salt or acid} in the"
                        + " {liquor.additions.#.into|where it goes}",
                    i));
    String with = lines.isEmpty() ? "; nothing is added" : ", adding " + Grammar.joined(lines);
    draft.say(
        "Brew with {liquor.name|name of the liquor}"
            + with
            + ". {+liquor.additions|a salt or acid}.");
    draft.say(
        "Before anything is added it holds {liquor.ions.calciumMgPerL|calcium} of calcium,"
            + " {liquor.ions.magnesiumMgPerL|magnesium} of magnesium,"
            + " {liquor.ions.sodiumMgPerL|sodium} of sodium, {liquor.ions.chlorideMgPerL|chloride}"
            + " of chloride, {liquor.ions.sulphateMgPerL|sulphate} of sulphate and"
            + " {liquor.ions.bicarbonateMgPerL|bicarbonate} of bicarbonate.");
    metered();
  }

  /// A filter, or a tap that wanders: the meter says how much of the analysis is in it today.
  private void metered() {
    Liquor liquor = recipe.liquor();
    String meter = "{liquor.meterUsPerCm|conductivity by the meter}";
    if (liquor.meterUsPerCm().isEmpty()) {
      draft.say("Filtered, or not as analysed? A conductivity meter in it reads " + meter + ".");
      return;
    }
    Liquor.Ions now = liquor.source();
    String shares =
        liquor.ions().unknown()
            ? ": what is dissolved is guessed, in the shares of a middling tap water, "
            : ": of the analysis that leaves ";
    draft.say(
        "A conductivity meter in it reads "
            + meter
            + shares
            + shown(now.calciumMgPerL())
            + " of calcium and "
            + shown(now.bicarbonateMgPerL())
            + " of bicarbonate, and the rest alike.");
  }

  private String shown(double ionMgPerL) {
    return units.shown(Quantity.CONCENTRATION, ionMgPerL);
  }

  private void yeast() {
    Yeast yeast = recipe.yeast();
    boolean counted = yeast.amountNumber().unit().quantity() == Quantity.NUMBER;
    String packets = yeast.amountNumber().inside() == 1 ? " packet" : " packets";
    String named = yeast.attenuationFrac().isPresent() ? "Its maker names" : "Its maker says of";
    draft
        .section("Yeast and ferment")
        .say(
            "Pitch {yeast.amountNumber|amount of yeast}"
                + (counted ? packets : "")
                + " of {yeast.name|yeast} ({yeast.form|form of the yeast}) at"
                + " {yeast.pitchC|temperature at pitching}. "
                + named
                + " the attenuation: {yeast.attenuationFrac|attenuation}.");
    List<String> steps = Grammar.lines(recipe.ferment().steps().size(), this::step);
    draft.say(
        steps.isEmpty()
            ? "No course of the ferment yet: {+ferment.steps|a step}."
            : "Ferment " + String.join(", then ", steps) + ". {+ferment.steps|a step}.");
    String of = recipe.pack().kind() == Pack.Kind.BOTTLE ? "in " : "in a ";
    draft.say(
        "Put it up "
            + of
            + "{pack.kind|package} with {pack.carbonationRatio|volumes of carbon dioxide} of"
            + " carbon dioxide.");
  }

  private String step(int number) {
    return Grammar.numbered(
        "from {ferment.steps.#.startC|beer at the start of step ##} to"
            + " {ferment.steps.#.endC|beer at the end of step ##} over"
            + " {ferment.steps.#.holdSec|time of step ##; 0 takes it out} (may it warm by itself:"
            + " {ferment.steps.#.freeRise|free to rise in step ##})",
        number);
  }
}
