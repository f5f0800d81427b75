package gylebook.telling;

import gylebook.recipe.Elsewhere;
import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.simulate.AgedHop;
import gylebook.units.AnyUnit;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/// What sacks, packets and files say: it matters, but not for reading the recipe.
@AnyUnit("shows amounts of every quantity")
final class Packets {
  private static final int MOST_CHARACTERS = 160;
  private static final double PERCENT = 100;

  private final Recipe recipe;
  private final Draft draft;
  private final ReadingUnits units;

  Packets(Recipe recipe, Draft draft, ReadingUnits units) {
    this.recipe = recipe;
    this.draft = draft;
    this.units = units;
  }

  void write() {
    draft.section("What sacks and packets say");
    for (int i = 0; i < recipe.grist().size(); i++) {
      goods(recipe.grist().get(i), i);
    }
    for (int i = 0; i < recipe.hops().size(); i++) {
      draft.say(
          Draft.plain(recipe.hops().get(i).name())
              + Grammar.numbered(
                  ", lot {hops.#.lot|lot}: {hops.#.form|leaf or pellets}, alpha acid"
                      + " {hops.#.alphaFrac|alpha acid}, "
                      + aged(recipe.hops().get(i)),
                  i));
    }
    for (int i = 0; i < recipe.liquor().additions().size(); i++) {
      Liquor.Addition salt = recipe.liquor().additions().get(i);
      boolean known = salt.agent() != Liquor.Agent.UNKNOWN;
      draft.say(
          Draft.plain(salt.name())
              + (known ? ", to the chemist: " : ", left out of the chemistry: ")
              + Grammar.numbered("{liquor.additions.#.agent|what it is chemically}.", i));
    }
    names();
    elsewhere();
    kept();
    draft.say("Notes: {notes|notes}.");
  }

  /// Store and wrapping matter once there is an age, and are asked for only then.
  private String aged(Hop hop) {
    String age = "{hops.#.agedSec|age of that figure}";
    if (hop.agedSec().isEmpty()) {
      return "taken as fresh; its age: " + age + ".";
    }
    String left = Math.round(PERCENT * AgedHop.leftFrac(hop)) + " %";
    String where = hop.storedC().isEmpty() ? "kept nobody says where: " : "kept at ";
    String taken =
        hop.storedC().isEmpty()
            ? " (taken as " + units.shown(Quantity.TEMPERATURE, AgedHop.USUAL_C) + ")"
            : "";
    return age
        + " old, "
        + where
        + "{hops.#.storedC|temperature of the store}"
        + taken
        + " {hops.#.wrap|how it is wrapped}; about "
        + left
        + " of it is left.";
  }

  private void goods(Goods goods, int number) {
    boolean mashed = goods.use() == Goods.Use.MASH;
    boolean nobody = goods.analysis().colourEbc() == 0 && goods.kind().mashed();
    String line =
        ", lot {grist.#.lot|lot}: {grist.#.kind|kind}"
            + (mashed ? ", {grist.#.use|where it goes in}" : "")
            + ", extract {grist.#.analysis.extractFrac|extract of the dry fine grind} give or take"
            + " {grist.#.analysis.extractDoubtFrac|doubt of the extract}, moisture"
            + " {grist.#.analysis.moistureFrac|moisture}, colour"
            + " {grist.#.analysis.colourEbc|colour}"
            + (nobody ? " (nobody said)" : "")
            + ", its wort attenuates"
            + " {grist.#.analysis.attenuationOffsetFrac|attenuation above the usual malt} more than"
            + " usual ("
            + (goods.analysis().stated() ? "stated" : "usual for its kind")
            + ").";
    draft.say(Draft.plain(goods.name()) + Grammar.numbered(line, number));
  }

  /// Where it is said, it stands with the mash; the first rest is struck and not heated to.
  private void ramps() {
    List<String> ramps = new ArrayList<>();
    for (int i = 1; i < recipe.rests().size(); i++) {
      if (recipe.rests().get(i).rampSec().isEmpty()) {
        ramps.add(Grammar.numbered("to rest ## in {rests.#.rampSec|heating up to rest ##}", i));
      }
    }
    if (!ramps.isEmpty()) {
      draft.say(
          "Heat " + Grammar.joined(ramps) + "; where nothing is said, as fast as the element can.");
    }
  }

  private void names() {
    List<String> names = new ArrayList<>();
    names.addAll(
        Grammar.lines(
            recipe.rests().size(),
            i -> Grammar.numbered("rest ## is called {rests.#.name|name of rest ##}", i)));
    names.addAll(
        Grammar.lines(
            recipe.ferment().steps().size(),
            i ->
                Grammar.numbered(
                    "step ## of the ferment is called"
                        + " {ferment.steps.#.name|name of step ## of the ferment}",
                    i)));
    ramps();
    if (!names.isEmpty()) {
      draft.say("In your own words, " + Grammar.joined(names) + ".");
    }
    for (int i = 0; i < recipe.others().size(); i++) {
      draft.say(
          Draft.plain(recipe.others().get(i).name())
              + Grammar.numbered(" is there for: {others.#.kind|what it is for}.", i));
    }
  }

  /// What the recipe claims of another rig stands here to be read; it is not this brewer's to fill.
  private void elsewhere() {
    Elsewhere there = recipe.elsewhere();
    List<String> rig = new ArrayList<>();
    claim(rig, "", "brewhouseFrac", there.brewhouseFrac(), " of the extract in the fermenter");
    claim(rig, "", "preBoilL", there.preBoilL(), " before the boil");
    claim(rig, "", "boilSec", there.boilSec(), " of boil");
    claim(rig, "", "evaporationLPerHr", there.evaporationLPerHr(), " driven off");
    claim(rig, "", "lengthL", there.lengthL(), " in the fermenter");
    if (!rig.isEmpty()) {
      draft.say("It was written for a rig with " + Grammar.joined(rig) + ".");
    }
    List<String> beer = new ArrayList<>();
    claim(beer, "a strength of ", "strengthPlato", there.strengthPlato(), "");
    claim(beer, "an end at ", "finalPlato", there.finalPlato(), "");
    String method = there.bitternessMethod().isBlank() ? "" : " by " + there.bitternessMethod();
    claim(beer, "", "bitternessMgPerL", there.bitternessMgPerL(), Draft.plain(method));
    claim(beer, "a colour of ", "colourEbc", there.colourEbc(), "");
    if (!beer.isEmpty()) {
      draft.say("There it claims " + Grammar.joined(beer) + ".");
    }
  }

  private void claim(
      List<String> claims, String before, String key, OptionalDouble value, String after) {
    if (value.isPresent()) {
      String shown =
          key.startsWith("bitter")
              ? units.shown(Quantity.BITTERNESS, value.getAsDouble())
              : new Shown(units).value(key, value.getAsDouble());
      String hours = key.endsWith("Sec") ? " h" : "";
      claims.add(before + shown + hours + after);
    }
  }

  private void kept() {
    for (Map.Entry<String, String> kept : new TreeMap<>(recipe.kept()).entrySet()) {
      String value = kept.getValue().replaceAll("\\s+", " ").strip();
      String cut =
          value.length() > MOST_CHARACTERS ? value.substring(0, MOST_CHARACTERS) + "..." : value;
      draft.say(
          "Kept from the file, without a place here: "
              + Draft.plain(kept.getKey())
              + ": "
              + Draft.plain(cut)
              + ".");
    }
  }
}
