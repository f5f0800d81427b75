package gylebook.telling;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.plan.Demo;
import gylebook.recipe.Boil;
import gylebook.recipe.Elsewhere;
import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Recipe;
import gylebook.rig.Chiller;
import gylebook.rig.DemoRigs;
import gylebook.rig.Newcomer;
import gylebook.rig.Origin;
import gylebook.rig.Parameter;
import gylebook.rig.Probe;
import gylebook.rig.Rig;
import gylebook.testing.Cases;
import gylebook.units.Component;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

class FillingTest {
  private static final List<ReadingUnits> SETS =
      List.of(ReadingUnits.METRIC, ReadingUnits.US, ReadingUnits.IMPERIAL);
  private static final List<Recipe> RECIPES =
      List.of(Demo.copperBitter(), Demo.wheatBeer(), metered());

  /// Nothing is left unsaid in it.
  private static Recipe metered() {
    Recipe recipe = filled(Demo.wheatBeer(), "liquor.meterUsPerCm", "0,031 mS/cm");
    recipe = filled(recipe, "hops.0.agedSec", "14 months");
    return filled(recipe, "hops.0.storedC", "38F");
  }

  private static final List<Rig> RIGS =
      List.of(DemoRigs.household(), DemoRigs.smallFlat(), newcomer());

  private static Rig newcomer() {
    return new Newcomer(
            "new",
            30,
            3000,
            230,
            230,
            100,
            true,
            1.5,
            0.0127,
            true,
            false,
            Probe.Place.SUCTION,
            Chiller.Kind.PLATE,
            27,
            19)
        .rig();
  }

  private static List<Piece.Slot> slots(List<Section> sections) {
    List<Piece.Slot> slots = new ArrayList<>();
    for (Section section : sections) {
      for (Sentence sentence : section.sentences()) {
        for (Piece piece : sentence.pieces()) {
          if (piece instanceof Piece.Slot slot) {
            slots.add(slot);
          }
        }
      }
    }
    return slots;
  }

  private static <T> T done(Filled<T> filled) {
    assertThat(filled).isInstanceOf(Filled.Done.class);
    return ((Filled.Done<T>) filled).thing();
  }

  private static Recipe filled(Recipe recipe, String slot, String typed) {
    return done(Filling.recipe(recipe, slot, typed, ReadingUnits.METRIC));
  }

  @Test
  void fillingAnySlotWithWhatItShowsOrHoldsChangesNothing() {
    SoftAssertions softly = new SoftAssertions();
    for (ReadingUnits units : SETS) {
      for (Recipe recipe : RECIPES) {
        for (Piece.Slot slot : slots(RecipeWords.of(recipe, units))) {
          for (String text : List.of(slot.shown(), slot.typed())) {
            softly
                .assertThat(Filling.recipe(recipe, slot.slot(), text, units))
                .as("%s with '%s'", slot.slot(), text)
                .isEqualTo(new Filled.Done<>(recipe));
          }
        }
      }
      for (Rig rig : RIGS) {
        for (Piece.Slot slot : slots(RigWords.of(rig, units))) {
          for (String text : List.of(slot.shown(), slot.typed())) {
            softly
                .assertThat(Filling.rig(rig, slot.slot(), text, units))
                .as("%s with '%s'", slot.slot(), text)
                .isEqualTo(new Filled.Done<>(rig));
          }
        }
      }
    }
    softly.assertAll();
  }

  @Test
  void aNewcomerAnswersInAnyUnitAndGetsTheRigTheyDescribed() {
    Newcomer newcomer = Newcomer.usual();
    for (ReadingUnits units : SETS) {
      for (Piece.Slot slot : slots(NewcomerWords.of(newcomer, units))) {
        assertThat(Filling.newcomer(newcomer, slot.slot(), slot.shown(), units))
            .as(slot.slot())
            .isEqualTo(new Filled.Done<>(newcomer));
      }
    }
    newcomer = done(Filling.newcomer(newcomer, "kettleL", "10 gal", ReadingUnits.US));
    newcomer = done(Filling.newcomer(newcomer, "place", "in the kettle", ReadingUnits.US));
    newcomer = done(Filling.newcomer(newcomer, "pump", "no", ReadingUnits.US));

    // US gallon, 231 cubic inches: 3.785411784 L (NIST Handbook 44, appendix C).
    assertThat(newcomer.rig().kettle().brimL())
        .isCloseTo(37.85411784, org.assertj.core.data.Offset.offset(1e-6));
    assertThat(newcomer.rig().probes().getFirst().place()).isEqualTo(Probe.Place.KETTLE);
    assertThat(newcomer.rig().loop().present()).isFalse();
    assertThat(newcomer.rig().working().hoist()).isFalse();
    newcomer = done(Filling.newcomer(newcomer, "hoist", "yes", ReadingUnits.US));
    newcomer = done(Filling.newcomer(newcomer, "squeezed", "no", ReadingUnits.US));
    assertThat(newcomer.rig().working().hoist()).isTrue();
    assertThat(newcomer.rig().working().squeeze()).isFalse();
    assertThat(Filling.newcomer(newcomer, "kettleL", "2 L", ReadingUnits.METRIC))
        .isInstanceOf(Filled.Unclear.class);
  }

  @Test
  void noSlotIsNamedTwice() {
    for (Recipe recipe : RECIPES) {
      assertThat(slots(RecipeWords.of(recipe, ReadingUnits.METRIC)))
          .extracting(Piece.Slot::slot)
          .doesNotHaveDuplicates();
    }
  }

  @Test
  void everyNumberOfTheRigStandsInItsSentences() {
    for (Rig rig : RIGS) {
      assertThat(slots(RigWords.of(rig, ReadingUnits.METRIC)))
          .extracting(Piece.Slot::slot)
          .containsAll(
              parameters(rig, "").stream()
                  // Without a pump nobody asks about its hose.
                  .filter(path -> rig.loop().present() || !path.startsWith("loop."))
                  .toList());
    }
  }

  private static List<String> parameters(Object record, String before) {
    List<String> paths = new ArrayList<>();
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      String path = before + component.getName();
      Object value = Component.at(record, component.getName());
      if (value instanceof Parameter) {
        paths.add(path);
      } else if (value instanceof List<?> list) {
        for (int i = 0; i < list.size(); i++) {
          paths.addAll(parameters(list.get(i), path + "." + i + "."));
        }
      } else if (value instanceof Record inner) {
        paths.addAll(parameters(inner, path + "."));
      }
    }
    return paths;
  }

  @Test
  void whatIsTypedIsKeptAsTyped() {
    Recipe recipe = filled(Demo.copperBitter(), "grist.0.massKg", "10 lb 4 oz");

    assertThat(recipe.grist().getFirst().massKg().asTyped()).isEqualTo("10 lb 4 oz");
    // 10.25 lb at 0.45359237 kg a pound (the international pound, exact by definition).
    assertThat(recipe.grist().getFirst().massKg().inside()).isEqualTo(10.25 * 0.45359237);
    assertThat(slots(RecipeWords.of(recipe, ReadingUnits.US)))
        .anySatisfy(slot -> assertThat(slot.typed()).isEqualTo("10 lb 4 oz"));
  }

  @Test
  void linesAreAddedInOneGoAndTakenOutWithNothing() {
    Recipe more = filled(Demo.copperBitter(), "hops.add", "25 g Northern 8.5 % at 15 min");
    Hop hop = more.hops().getLast();
    assertThat(hop.name()).isEqualTo("Northern");
    assertThat(hop.massG().inside()).isEqualTo(25);
    assertThat(hop.alphaFrac().inside())
        .isCloseTo(0.085, org.assertj.core.data.Offset.offset(1e-12));
    assertThat(((Hop.When.InBoil) hop.when()).leftSec().inside()).isEqualTo(900);

    String last = "hops." + (more.hops().size() - 1) + ".massG";
    assertThat(filled(more, last, "0 g")).isEqualTo(Demo.copperBitter());
  }

  @Test
  void everyListTakesTheLineItGivesAsExample() {
    Recipe recipe = Demo.copperBitter();
    Lines.EXAMPLES.forEach(
        (list, example) ->
            assertThat(filled(recipe, list + Filling.ADD, example)).as(list).isNotEqualTo(recipe));
  }

  @Test
  void aHopGoesInWheneverTheWordsSay() {
    Recipe recipe = Demo.copperBitter();
    assertThat(filled(recipe, "hops.0.when", "first wort").hops().getFirst().when())
        .isEqualTo(new Hop.When.FirstWort());
    assertThat(filled(recipe, "hops.0.when", "flame-out").hops().getFirst().when())
        .isEqualTo(new Hop.When.FlameOut());
    assertThat(filled(recipe, "hops.0.when", "dry after 3 d for 4 d").hops().getFirst().when())
        .isInstanceOf(Hop.When.Dry.class);
    assertThat(Filling.recipe(recipe, "hops.0.when", "stand 9", ReadingUnits.METRIC))
        .isInstanceOf(Filled.Unclear.class);
    assertThat(Filling.recipe(recipe, "hops.0.when", "next Tuesday", ReadingUnits.METRIC))
        .isInstanceOf(Filled.Unclear.class);
    assertThat(Filling.recipe(recipe, "hops.0.when", "stand 99999999999", ReadingUnits.METRIC))
        .isInstanceOf(Filled.Unclear.class);
    // The boil lasts 60 min.
    assertThat(Filling.recipe(recipe, "hops.0.when", "75 min", ReadingUnits.METRIC))
        .isInstanceOf(Filled.Unclear.class);
  }

  private static Hop added(Recipe recipe, String line) {
    return filled(recipe, "hops.add", line).hops().getLast();
  }

  @Test
  void aHopIsAddedInPlainWords() {
    Recipe wheat = Demo.wheatBeer();

    Hop boiled = added(wheat, "add 20 g of Northern at 15 min");
    assertThat(boiled.name()).isEqualTo("Northern");
    assertThat(((Hop.When.InBoil) boiled.when()).leftSec().inside()).isEqualTo(15 * 60);

    Recipe stood = filled(wheat, "hops.add", "30 g Goldings in a stand at 80 C for 25 min");
    assertThat(stood.stands()).hasSize(1);
    assertThat(stood.stands().getFirst().targetC().inside()).isEqualTo(80);
    assertThat(stood.stands().getFirst().holdSec().inside()).isEqualTo(25 * 60);
    assertThat(stood.hops().getLast().when()).isEqualTo(new Hop.When.AtStand(0));

    Hop dry = added(wheat, "dry hop 50 g Fuggle leaf 4,5 % for 3 days");
    assertThat(dry.name()).isEqualTo("Fuggle");
    assertThat(dry.form()).isEqualTo(Hop.Form.LEAF);
    assertThat(((Hop.When.Dry) dry.when()).holdSec().inside()).isEqualTo(3 * 86_400);
    assertThat(dry.alphaFrac().asTyped()).isEqualTo("4,5 %");

    // The packet of a variety that is there already: 4.0 %.
    assertThat(added(wheat, "10 g Hallertau at 5 min").alphaFrac())
        .isEqualTo(wheat.hops().getFirst().alphaFrac());
  }

  @Test
  void aStandThatIsNamedTwiceIsAddedOnceAndAHotterOneComesBefore() {
    Recipe bitter = Demo.copperBitter();

    Recipe same = filled(bitter, "hops.add", "30 g Fuggle in a stand at 80 C for 25 min");
    assertThat(same.stands()).hasSize(1);
    assertThat(same.hops().getLast().when()).isEqualTo(new Hop.When.AtStand(0));

    Recipe hotter = filled(bitter, "hops.0.when", "in a stand at 90 C for 10 min");
    assertThat(hotter.stands()).hasSize(2);
    assertThat(hotter.hops().getFirst().when()).isEqualTo(new Hop.When.AtStand(0));
    assertThat(hotter.hops().get(2).when()).isEqualTo(new Hop.When.AtStand(1));
  }

  @Test
  void everyLineCanBeTakenOutByName() {
    Recipe recipe = Demo.copperBitter();
    assertThat(filled(recipe, "grist.1.remove", "yes").grist())
        .containsExactly(recipe.grist().getFirst());
    assertThat(filled(recipe, "hops.0.remove", "").hops()).hasSize(2);
    assertThat(filled(recipe, "rests.1.remove", "remove").rests()).hasSize(1);
    Recipe slow = filled(recipe, "rests.1.rampSec", "15 min");
    assertThat(slow.rests().get(1).rampSec().orElseThrow().inside()).isEqualTo(900);
    assertThat(filled(slow, "rests.1.rampSec", "none").rests()).isEqualTo(recipe.rests());
    Recipe step = filled(recipe, "rests.add", "72 C for 15 min, reached in 12 min");
    assertThat(step.rests().get(1).rampSec().orElseThrow().inside()).isEqualTo(720);
    assertThat(step.rests().get(1).holdSec().inside()).isEqualTo(900);
    assertThat(filled(recipe, "rests.add", "72 C, heated over 12 min, for 15 min").rests().get(1))
        .isEqualTo(step.rests().get(1));
    // A first rest is struck; a time to heat up to it would not be used, so it is not taken.
    Filled<Recipe> first =
        Filling.recipe(
            recipe, "rests.add", "52 C for 15 min, reached in 12 min", ReadingUnits.METRIC);
    assertThat(((Filled.Unclear<Recipe>) first).what()).contains("struck", "not heated to");
    assertThat(filled(recipe, "rests.add", "52 C for 15 min").rests()).hasSize(3);
    assertThat(filled(recipe, "boil.lid", "on").boil().lid()).isEqualTo(Boil.Lid.ON);
    assertThat(filled(recipe, "salts.0.remove", "yes").liquor().additions()).hasSize(1);
    assertThat(filled(recipe, "grist.1.remove", "no")).isEqualTo(recipe);
    assertThat(Filling.recipe(recipe, "grist.1.remove", "perhaps", ReadingUnits.METRIC))
        .isInstanceOf(Filled.Unclear.class);
    assertThat(Filling.recipe(recipe, "grist.7.remove", "yes", ReadingUnits.METRIC))
        .isInstanceOf(Filled.Unclear.class);
    Filled<Recipe> held = Filling.recipe(recipe, "stands.0.remove", "yes", ReadingUnits.METRIC);
    assertThat(((Filled.Unclear<Recipe>) held).what())
        .isEqualTo("Goldings would have no stand to go in at.");
  }

  @Test
  void aLineOfTheGristSaysColourLotAndWhereItGoesIn() {
    Goods malt =
        filled(Demo.wheatBeer(), "grist.add", "10 lb 4 oz of crystal malt 160 EBC, lot 7")
            .grist()
            .getLast();
    assertThat(malt.name()).isEqualTo("crystal malt");
    assertThat(malt.massKg().asTyped()).isEqualTo("10 lb 4 oz");
    assertThat(malt.analysis().colourEbc()).isEqualTo(160);
    assertThat(malt.lot()).isEqualTo("7");
    assertThat(malt.kind()).isEqualTo(Goods.Kind.CARAMEL_MALT);
    Goods sugar =
        filled(Demo.wheatBeer(), "grist.add", "0.2 kg sugar in the fermenter").grist().getLast();
    assertThat(sugar.use()).isEqualTo(Goods.Use.FERMENTER);
  }

  @Test
  void figuresThatAreTypedAreStatedAndOthersFollowTheKind() {
    Recipe recipe = Demo.copperBitter();
    Recipe roasted = filled(recipe, "grist.1.kind", "roasted");
    assertThat(roasted.grist().get(1).analysis().extractFrac())
        .isEqualTo(Goods.Kind.ROASTED.usual().extractFrac());
    assertThat(roasted.grist().get(1).analysis().colourEbc()).isEqualTo(160);
    Recipe stated = filled(recipe, "grist.1.analysis.extractFrac", "77.5");
    assertThat(stated.grist().get(1).analysis().stated()).isTrue();
    assertThat(filled(stated, "grist.1.kind", "roasted").grist().get(1).analysis())
        .isEqualTo(stated.grist().get(1).analysis());
    Recipe less = filled(recipe, "grist.0.analysis.attenuationOffsetFrac", "-2 %");
    assertThat(less.grist().getFirst().analysis().attenuationOffsetFrac()).isEqualTo(-0.02);
  }

  private static String text(Recipe recipe) {
    return RecipeWords.of(recipe, ReadingUnits.METRIC).stream()
        .map(Section::text)
        .collect(Collectors.joining("\n"));
  }

  private static String why(Recipe recipe, String slot, String typed) {
    Filled<Recipe> filled = Filling.recipe(recipe, slot, typed, ReadingUnits.METRIC);
    assertThat(filled).as(typed).isInstanceOf(Filled.Unclear.class);
    Filled.Unclear<Recipe> unclear = (Filled.Unclear<Recipe>) filled;
    assertThat(unclear.value()).isEqualTo(typed);
    return unclear.what() + " " + unclear.maybe();
  }

  @Test
  void aMeterSaysWhatIsInTheLiquorAndCanBeForgotten() {
    Recipe tap = Demo.wheatBeer();
    Recipe read = filled(tap, "liquor.meterUsPerCm", "22,5 uS/cm");
    assertThat(read.liquor().meterUsPerCm().orElseThrow().asTyped()).isEqualTo("22,5 uS/cm");
    assertThat(read.liquor().ions()).isEqualTo(tap.liquor().ions());
    assertThat(read.liquor().source().conductanceUsPerCm())
        .isCloseTo(22.5, org.assertj.core.data.Offset.offset(0.01));
    assertThat(text(read))
        .contains("meter in it reads 22.5 µS/cm: of the analysis that leaves 2.4 mg/L");
    assertThat(filled(tap, "liquor.meterUsPerCm", "0.0225 mS/cm").liquor().source())
        .isEqualTo(read.liquor().source());
    for (String nothing : List.of("none", "-", "not said")) {
      assertThat(filled(read, "liquor.meterUsPerCm", nothing)).isEqualTo(tap);
    }
    assertThat(why(tap, "liquor.meterUsPerCm", "90 mS/cm")).contains("90000 µS/cm", "5000");
    assertThat(why(tap, "liquor.meterUsPerCm", "low")).contains("low");
    assertThat(why(tap, "liquor.meterUsPerCm", "15 ppm")).contains("µS/cm");
  }

  @Test
  void daysAndHoursAreKeptAsTypedAndAskedBackWhenUnclear() {
    Recipe bitter = Demo.copperBitter();
    Recipe dated = filled(bitter, "aim.readyBy", "Sat 5 Dec 2026");
    assertThat(dated.aim().readyBy()).isEqualTo("Sat 5 Dec 2026");
    Recipe timed = filled(dated, "aim.doneBy", "Saturday 18.30");
    assertThat(text(timed))
        .contains("wanted for Sat 5 Dec 2026; the brew day is to be done by Saturday 18.30.");
    assertThat(filled(filled(timed, "aim.doneBy", "-"), "aim.readyBy", "none")).isEqualTo(bitter);
    assertThat(why(bitter, "aim.readyBy", "18:00")).contains("no day", "Saturday 18:00");
    assertThat(why(bitter, "aim.doneBy", "Saturday")).contains("no hour", "Saturday 18:00");
    assertThat(why(bitter, "aim.doneBy", "teatime")).contains("'teatime'", "18:00");
  }

  @Test
  void aSyringeOfAcidIsReadInMillilitresByEverybody() {
    Recipe sour = filled(Demo.copperBitter(), "liquor.additions.add", "4.5 mL lactic acid 80 %");
    for (ReadingUnits units : SETS) {
      assertThat(RecipeWords.of(sour, units))
          .anySatisfy(section -> assertThat(section.text()).contains("4.5 mL lactic acid 80 %"));
      String last = "liquor.additions.2.amountNumber";
      Recipe more = done(Filling.recipe(sour, last, "5", units));
      // A bare number over millilitres is millilitres: 5 mL are 0.005 L.
      assertThat(more.liquor().additions().get(2).amountNumber().inside())
          .isCloseTo(0.005, org.assertj.core.data.Offset.offset(1e-12));
    }
  }

  @Test
  void aColourIsWantedInAnyUnitOrNot() {
    Recipe dark = filled(Demo.copperBitter(), "aim.colourEbc", "15 SRM");
    // 25/12.7 EBC to the SRM unit (the two methods' own cuvettes and factors: 25 against 12.7).
    assertThat(dark.aim().colourEbc().orElseThrow().inside())
        .isCloseTo(15 * 25 / 12.7, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(dark.aim().colourEbc().orElseThrow().asTyped()).isEqualTo("15 SRM");
    assertThat(filled(dark, "aim.colourEbc", "none")).isEqualTo(Demo.copperBitter());
    assertThat(why(dark, "aim.colourEbc", "ruby")).contains("ruby");
  }

  @Test
  void oldHopsSayWhatIsLeftOfThem() {
    Recipe bitter = Demo.copperBitter();
    assertThat(text(bitter)).contains("taken as fresh; its age: not said.");
    Recipe old = filled(bitter, "hops.0.agedSec", "6 months");
    Hop hop = old.hops().getFirst();
    assertThat(hop.agedSec().orElseThrow().asTyped()).isEqualTo("6 months");
    // A twelfth of the mean calendar year of 365.2425 d, six times.
    assertThat(hop.agedSec().orElseThrow().inside() / 86_400)
        .isCloseTo(182.62125, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(text(old))
        .contains("6.0 mo old, kept nobody says where: not said (taken as 20.0 °C)");
    Recipe cold = filled(filled(old, "hops.0.storedC", "-18 C"), "hops.0.wrap", "in a loose bag");
    assertThat(cold.hops().getFirst().wrap()).isEqualTo(Hop.Wrap.LOOSE);
    assertThat(text(cold)).contains("kept at -18.0 °C in a loose bag; about 9");
    assertThat(filled(cold, "hops.0.agedSec", "none").hops().getFirst().agedSec()).isEmpty();
    // A bare number is days: nobody counts the minutes of a packet of hops.
    assertThat(
            filled(bitter, "hops.0.agedSec", "30")
                .hops()
                .getFirst()
                .agedSec()
                .orElseThrow()
                .inside())
        .isEqualTo(30 * 86_400);
    assertThat(why(bitter, "hops.0.agedSec", "last autumn")).contains("last autumn");
    assertThat(why(old, "hops.0.wrap", "tin")).contains("in a loose bag");
  }

  @Test
  void yeastIsCountedWeighedOrMeasured() {
    Recipe two = filled(Demo.copperBitter(), "yeast.amountNumber", "2 packets");
    assertThat(two.yeast().amountNumber().inside()).isEqualTo(2);
    assertThat(RecipeWords.of(two, ReadingUnits.METRIC))
        .anySatisfy(s -> assertThat(s.text()).contains("Pitch 2 packets of dry ale yeast"));
    Recipe weighed = filled(Demo.copperBitter(), "yeast.amountNumber", "11.5 g");
    assertThat(weighed.yeast().amountNumber().unit().quantity()).isEqualTo(Quantity.SMALL_MASS);
    assertThat(RecipeWords.of(weighed, ReadingUnits.METRIC))
        .anySatisfy(s -> assertThat(s.text()).contains("Pitch 11.5 g of dry ale yeast"));
  }

  @Test
  void bitternessAndEvaporationAreTypedInTheirOwnUnits() {
    Recipe recipe = filled(Demo.copperBitter(), "aim.bitternessMgPerL", "35 IBU");
    assertThat(recipe.aim().bitternessMgPerL().orElseThrow().inside()).isEqualTo(35);
    Recipe boiled = filled(recipe, "boil.evaporationLPerSec", "3.6");
    assertThat(boiled.boil().evaporationLPerSec().orElseThrow().inside())
        .isCloseTo(3.6 / 3600, org.assertj.core.data.Offset.offset(1e-15));
    assertThat(filled(boiled, "boil.evaporationLPerSec", "none").boil()).isEqualTo(recipe.boil());
  }

  @Test
  void everyValueOfTheRecipeStandsInItsSentences() {
    for (Recipe recipe : RECIPES) {
      List<String> held = leaves(recipe, "");
      held.removeIf(path -> path.equals("invented") || path.endsWith(".stated"));
      held.removeIf(path -> path.startsWith("elsewhere.") || path.equals("kept"));
      // The first rest is struck, not heated to.
      held.remove("rests.0.rampSec");
      // Of hops whose age nobody says, nobody asks how they were kept.
      held.removeIf(path -> path.matches("hops.*(storedC|wrap)") && !aged(recipe, path));
      assertThat(slots(RecipeWords.of(recipe, ReadingUnits.METRIC)))
          .extracting(Piece.Slot::slot)
          .containsAll(held);
    }
  }

  private static boolean aged(Recipe recipe, String path) {
    return recipe.hops().get(Integer.parseInt(path.split("\\.", -1)[1])).agedSec().isPresent();
  }

  /// Every path to a value: the walk of the test's own, so that a new field cannot be forgotten.
  private static List<String> leaves(Object record, String before) {
    List<String> paths = new ArrayList<>();
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      String path = before + component.getName();
      switch (Component.at(record, component.getName())) {
        case List<?> list -> {
          for (int i = 0; i < list.size(); i++) {
            paths.addAll(leaves(list.get(i), path + "." + i + "."));
          }
        }
        case Entered _, Hop.When _ -> paths.add(path);
        case Record inner -> paths.addAll(leaves(inner, path + "."));
        default -> paths.add(path);
      }
    }
    return paths;
  }

  @Test
  void whatAFileSaidOfAnotherRigIsRead() {
    OptionalDouble none = OptionalDouble.empty();
    Elsewhere there =
        new Elsewhere(
            OptionalDouble.of(0.72),
            OptionalDouble.of(23),
            none,
            none,
            none,
            OptionalDouble.of(12.4),
            none,
            OptionalDouble.of(30),
            "Tinseth",
            none);
    Recipe recipe = Component.with(Demo.copperBitter(), "elsewhere", there);
    recipe = Component.with(recipe, "kept", Map.of("style", "{ordinary} bitter"));

    String text = RecipeWords.of(recipe, ReadingUnits.METRIC).getLast().text();

    assertThat(text)
        .contains("written for a rig with 72.0 % of the extract in the fermenter and 23.0 L in")
        .contains("There it claims a strength of 1.050 and 30 IBU by Tinseth.")
        .contains("without a place here: style: (ordinary) bitter.");
  }

  @Test
  void anArticleFollowsTheSound() {
    assertThat(Grammar.article("dry bitter")).isEqualTo("a ");
    assertThat(Grammar.article("Amber ale")).isEqualTo("an ");
    assertThat(Grammar.article("unique ale")).isEqualTo("a ");
    assertThat(Grammar.article("hour-glass ale")).isEqualTo("an ");
    assertThat(Grammar.article("the usual")).isEmpty();
  }

  @Test
  void whatIsTypedBadlyIntoAnAmountChangesNothingAndSaysWhatToDo() {
    List<String> bad =
        List.of("", "NaN", "-5 kg", "1e999 L", "\uD83C\uDF7A", "Infinity", "much", "5 5 5", "--");
    // What cannot be read is read in no units; one set stands for all.
    ReadingUnits units = ReadingUnits.METRIC;
    for (Recipe recipe : RECIPES) {
      for (Piece.Slot slot : amounts(RecipeWords.of(recipe, units))) {
        for (String typed : bad) {
          unclear(Filling.recipe(recipe, slot.slot(), typed, units), slot.slot(), typed);
        }
      }
    }
    for (Rig rig : RIGS) {
      for (Piece.Slot slot : amounts(RigWords.of(rig, units))) {
        for (String typed : bad) {
          unclear(Filling.rig(rig, slot.slot(), typed, units), slot.slot(), typed);
        }
      }
    }
  }

  /// Those that take an amount and have one.
  private static List<Piece.Slot> amounts(List<Section> sections) {
    return slots(sections).stream()
        .filter(slot -> !slot.kind().equals("words") && !slot.shown().equals("not said"))
        .toList();
  }

  private static void unclear(Filled<?> filled, String slot, String typed) {
    assertThat(filled).as(slot + " with '" + typed + "'").isInstanceOf(Filled.Unclear.class);
    answered(filled, typed);
  }

  @Test
  void aStandWithHopsIsNotTakenOutAndThoseBehindItMoveUp() {
    Recipe two =
        filled(
            filled(
                filled(Demo.copperBitter(), "stands.add", "85 C for 10 min"),
                "stands.add",
                "70 C for 20 min"),
            "hops.add",
            "30 g Fuggle in stand 2");
    int stands = two.stands().size();
    Recipe three = filled(two, "hops.0.when", "stand " + stands);

    assertThat(
            Filling.recipe(three, "stands." + (stands - 1) + ".holdSec", "0", ReadingUnits.METRIC))
        .isInstanceOf(Filled.Unclear.class);
    Recipe freed = three;
    for (int i = 0; i < freed.hops().size(); i++) {
      if (freed.hops().get(i).when() instanceof Hop.When.AtStand(int n) && n == 0) {
        freed = filled(freed, "hops." + i + ".when", "flame-out");
      }
    }
    Recipe fewer = filled(freed, "stands.0.holdSec", "none");
    assertThat(fewer.stands()).hasSize(stands - 1);
    assertThat(fewer.hops().getFirst().when()).isEqualTo(new Hop.When.AtStand(stands - 2));
  }

  @Test
  void aNumberOfTheRigThatIsTypedIsMeasured() {
    Rig rig =
        done(
            Filling.rig(
                newcomer(), "kettle.deadL", "0.5 L give or take 0.1 L", ReadingUnits.METRIC));
    Parameter dead = rig.kettle().deadL();

    assertThat(dead.value()).isEqualTo(0.5);
    assertThat(dead.origin()).isEqualTo(Origin.MEASURED);
    // A number that stays positive keeps its doubt as a share: 0.1 of 0.5.
    assertThat(dead.doubt()).isCloseTo(0.2, org.assertj.core.data.Offset.offset(1e-12));
    Rig warm = done(Filling.rig(newcomer(), "site.tapC", "50 F +/- 4 F", ReadingUnits.US));
    assertThat(warm.site().tapC().value()).isCloseTo(10, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(warm.site().tapC().doubt())
        .isCloseTo(4 / 1.8, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(Filling.rig(newcomer(), "kettle.deadL", "-1 L", ReadingUnits.METRIC))
        .isInstanceOf(Filled.Unclear.class);
  }

  @Test
  void aNumberThatNoRigHasIsRefusedInTheReadersUnits() {
    Rig rig = DemoRigs.household();
    for (ReadingUnits units : List.of(ReadingUnits.METRIC, ReadingUnits.US)) {
      Filled<Rig> pressure = Filling.rig(rig, "site.stationKpa", "1013 kPa", units);
      assertThat(pressure).isInstanceOf(Filled.Unclear.class);
      assertThat(((Filled.Unclear<Rig>) pressure).what())
          .contains(units.equals(ReadingUnits.US) ? "146.9 psi" : "1013.0 kPa");
    }
    Filled<Rig> height =
        Filling.rig(rig, "site.altitudeM", "100 m give or take 300 m", ReadingUnits.METRIC);
    assertThat(((Filled.Unclear<Rig>) height).what())
        .isEqualTo("A doubt of 300 m is too wide; up to 120 m can be forecast with.");
    assertThat(Filling.rig(rig, "site.stationKpa", "1013 hPa", ReadingUnits.METRIC))
        .isInstanceOf(Filled.Done.class);
  }

  @Test
  void whateverIsTypedIsAnsweredWithASentenceOrTaken() {
    Cases.each(
        120,
        random -> {
          Recipe recipe = RECIPES.get(random.nextInt(2));
          Rig rig = RIGS.get(random.nextInt(3));
          ReadingUnits units = SETS.get(random.nextInt(3));
          String typed = anything(random);
          List<Piece.Slot> inRecipe = slots(RecipeWords.of(recipe, units));
          List<Piece.Slot> inRig = slots(RigWords.of(rig, units));
          for (int i = 0; i < 8; i++) {
            String here = inRecipe.get(random.nextInt(inRecipe.size())).slot();
            String there = inRig.get(random.nextInt(inRig.size())).slot();
            answered(Filling.recipe(recipe, here, typed, units), typed);
            answered(Filling.rig(rig, there, typed, units), typed);
          }
          answered(Filling.recipe(recipe, typed, typed, units), typed);
        });
  }

  private static void answered(Filled<?> filled, String typed) {
    if (filled instanceof Filled.Unclear<?>(String what, String value, String maybe)) {
      assertThat(what).endsWith(".");
      assertThat(maybe).isNotBlank();
      assertThat(value).isEqualTo(typed);
    }
  }

  private static String anything(RandomGenerator random) {
    List<String> pieces =
        List.of(
            "",
            " ",
            "NaN",
            "-5 kg",
            "1e999 L",
            "\uD83C\uDF7A",
            "66",
            "C",
            "for",
            "at",
            "give or take",
            "0",
            "%",
            "15 min",
            "kg",
            "dry",
            "stand",
            "after",
            "\u0000",
            "\u00bd",
            ",",
            ".",
            "1.2.3",
            "999999999999",
            "Infinity",
            "{name|x}",
            "<b>",
            "of",
            "yes");
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(5); i >= 0; i--) {
      text.append(pieces.get(random.nextInt(pieces.size())))
          .append(random.nextBoolean() ? " " : "");
    }
    return text.toString();
  }
}
