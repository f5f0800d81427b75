package gylebook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.science.LiquorLevels;
import gylebook.simulate.LiquorLook;
import gylebook.simulate.Settings;
import java.util.List;
import org.junit.jupiter.api.Test;

class LiquorSolverTest {
  private static final LiquorSolver.Stock GYPSUM =
      new LiquorSolver.Stock("gypsum", Liquor.Agent.GYPSUM, 0.1);
  private static final LiquorSolver.Stock CHLORIDE =
      new LiquorSolver.Stock(
          "calcium chloride dihydrate", Liquor.Agent.CALCIUM_CHLORIDE_DIHYDRATE, 0.1);
  private static final LiquorSolver.Stock EPSOM =
      new LiquorSolver.Stock("Epsom salt", Liquor.Agent.EPSOM_SALT, 0.1);
  private static final LiquorSolver.Stock SALT =
      new LiquorSolver.Stock("table salt", Liquor.Agent.TABLE_SALT, 0.1);
  private static final LiquorSolver.Stock SODA =
      new LiquorSolver.Stock("baking soda", Liquor.Agent.BAKING_SODA, 0.1);
  private static final LiquorSolver.Stock LACTIC =
      new LiquorSolver.Stock("lactic acid 88 %", Liquor.Agent.LACTIC_ACID, 0.1);
  private static final List<LiquorSolver.Stock> HOUSE =
      List.of(GYPSUM, CHLORIDE, EPSOM, SALT, SODA, LACTIC);
  private static final Settings SET = new Settings(20, 70, 0, 1, 1, 0.7, 0);

  private static Recipe from(Liquor.Ions ions) {
    return Demo.copperBitter().withLiquor(new Liquor("source", ions, List.of()));
  }

  private static double amount(LiquorSolver.Treatment found, String name, Liquor.Into into) {
    return found.additions().stream()
        .filter(addition -> addition.name().equals(name) && addition.into() == into)
        .mapToDouble(addition -> addition.amountNumber().value())
        .sum();
  }

  @Test
  void findsBackTheSaltsThatMadeAKnownWater() {
    // 0.300 g/L gypsum and 0.200 g/L calcium chloride dihydrate in pure water hold Ca 3.1030, S
    // 1.7426, Cl 2.7208 mmol/kg (USGS PHREEQC's totals): 6.0 and 4.0 g in 20 L.
    LiquorLevels wanted =
        new LiquorLevels(
            3.1030 * 40.078, 0, 0, 2.7208 * 35.45, 1.7426 * 96.056, Double.NaN, Double.NaN);
    LiquorSolver.Treatment found =
        LiquorSolver.solved(from(new Liquor.Ions(0, 0, 0, 0, 0, 0)), SET, wanted, HOUSE);
    assertThat(amount(found, "gypsum", Liquor.Into.MASH)).isCloseTo(6.0, within(1e-9));
    assertThat(amount(found, "calcium chloride dihydrate", Liquor.Into.MASH))
        .isCloseTo(4.0, within(1e-9));
    assertThat(found.additions()).hasSize(2);
    assertThat(found.missed()).isEmpty();
  }

  @Test
  void bringsAHardWaterToTheWantedPhWithAcidOnTheStepsOfTheScale() {
    Recipe hard = from(new Liquor.Ions(90, 8, 12, 20, 40, 280));
    double before = LiquorLook.of(hard, SET).mashPh();
    LiquorLevels wanted =
        new LiquorLevels(
            Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, 5.35);
    LiquorSolver.Treatment found = LiquorSolver.solved(hard, SET, wanted, List.of(LACTIC));
    assertThat(before).isGreaterThan(5.5);
    assertThat(found.mashPh()).isCloseTo(5.35, within(0.01));
    double volumeMl = amount(found, "lactic acid 88 %", Liquor.Into.MASH);
    assertThat(volumeMl * 10).isCloseTo(Math.rint(volumeMl * 10), within(1e-6));
    // 4.4 kg of malt buffer 33.2 meq/(kg pH); 11.4 meq a mL: the arithmetic by hand.
    assertThat(volumeMl).isCloseTo((before - 5.35) * 4.4 * 33.2 / 11.4, within(0.15));
  }

  @Test
  void saysWhatTheHouseCannotReach() {
    // Nothing takes sodium out of a water.
    LiquorLevels wanted = new LiquorLevels(50, 5, 5, 50, 50, Double.NaN, Double.NaN);
    LiquorSolver.Treatment found =
        LiquorSolver.solved(from(new Liquor.Ions(0, 0, 80, 0, 0, 0)), SET, wanted, HOUSE);
    assertThat(found.missed().stream().map(NoteText::plain))
        .anyMatch(words -> words.startsWith("Sodium comes to 80") && words.contains("thinning"));
  }

  private static List<String> missed(LiquorLevels wanted, List<LiquorSolver.Stock> house) {
    Recipe soft = from(new Liquor.Ions(12, 2, 8, 10, 9, 120));
    return LiquorSolver.solved(soft, SET, wanted, house).missed().stream()
        .map(NoteText::plain)
        .toList();
  }

  @Test
  void saysWhyItIsNotReached() {
    double any = Double.NaN;
    assertThat(missed(new LiquorLevels(any, 30, any, any, any, any, any), List.of(GYPSUM)))
        .singleElement()
        .asString()
        .endsWith("nothing in the house brings magnesium.");
    assertThat(missed(new LiquorLevels(any, any, any, any, any, any, 5.0), List.of(SALT)))
        .singleElement()
        .asString()
        .endsWith("there is no acid in the house.");
    assertThat(missed(new LiquorLevels(any, any, any, any, any, any, 6.2), List.of(LACTIC)))
        .singleElement()
        .asString()
        .endsWith("nothing in the house raises it.");
    // Gypsum brings one sulphate with each calcium: 40.078 g/mol with 96.056 g/mol (IUPAC).
    assertThat(missed(new LiquorLevels(150, any, any, any, 9, any, any), List.of(GYPSUM)))
        .allMatch(words -> words.endsWith("moving the rest further off."))
        .hasSize(2);
  }

  @Test
  void bicarbonateIsWantedLikeAnIon() {
    // A gram of sodium bicarbonate holds 61.016/84.007 of bicarbonate (IUPAC abridged weights):
    // 120 mg/L from none in 20 L are 3.3 g of it.
    double any = Double.NaN;
    LiquorLevels wanted = new LiquorLevels(any, any, any, any, any, 120, any);
    LiquorSolver.Treatment found =
        LiquorSolver.solved(from(new Liquor.Ions(0, 0, 0, 0, 0, 0)), SET, wanted, HOUSE);
    assertThat(amount(found, "baking soda", Liquor.Into.MASH)).isCloseTo(3.3, within(0.051));
    assertThat(found.additions()).hasSize(1);
    assertThat(missed(new LiquorLevels(any, any, any, any, any, 20, any), List.of(GYPSUM)))
        .singleElement()
        .asString()
        .endsWith("and only acid, or thinning it with filtered water, brings it down.");
  }

  @Test
  void noSaltIsHeapedUpForThePhAlone() {
    double any = Double.NaN;
    LiquorLevels wanted = new LiquorLevels(90, any, any, any, any, any, 5.4);
    Recipe tap = from(new Liquor.Ions(38, 8, 12, 20, 30, 180));
    LiquorSolver.Treatment sour = LiquorSolver.solved(tap, SET, wanted, HOUSE);
    assertThat(amount(sour, "lactic acid 88 %", Liquor.Into.MASH)).isGreaterThan(0.5);
    assertThat(amount(sour, "Epsom salt", Liquor.Into.MASH)).isZero();
    assertThat(sour.mashPh()).isCloseTo(5.4, within(0.03));
    // Without acid in the house the pH is missed rather than the water turned to bitter salt;
    // magnesium to 30 mg/L is the usual end (common practice, no source).
    LiquorSolver.Treatment without =
        LiquorSolver.solved(tap, SET, wanted, List.of(GYPSUM, CHLORIDE, EPSOM, SALT, SODA));
    assertThat(without.mash().magnesiumMgPerL()).isLessThan(35);
    assertThat(without.mash().sulphateMgPerL()).isLessThan(405);
    assertThat(without.missed().stream().map(NoteText::plain))
        .anyMatch(words -> words.endsWith("there is no acid in the house."));
  }

  @Test
  void heldBackLiquorGetsItsShareAndItsOwnAcid() {
    Settings held = new Settings(15, 70, 0, 1, 1, 0.7, 10);
    LiquorLevels wanted = new LiquorLevels(100, Double.NaN, Double.NaN, 60, 150, Double.NaN, 5.35);
    LiquorSolver.Treatment found =
        LiquorSolver.solved(from(new Liquor.Ions(20, 4, 10, 15, 15, 122.034)), held, wanted, HOUSE);
    double mashG = amount(found, "gypsum", Liquor.Into.MASH);
    assertThat(amount(found, "gypsum", Liquor.Into.KETTLE))
        .isCloseTo(mashG * 10 / 15, within(0.051));
    // 2 meq/L of alkalinity in 10 L, 90 % of it gone at pH 5.40: 18 meq, 1.57 mL at 11.45 meq/mL.
    assertThat(amount(found, "lactic acid 88 %", Liquor.Into.KETTLE)).isCloseTo(1.5, within(1e-9));
    assertThat(found.whole().sulphateMgPerL())
        .isCloseTo(found.mash().sulphateMgPerL(), within(3.0));
  }

  @Test
  void noNeighbourOfTheDosesIsNearer() {
    LiquorLevels wanted = new LiquorLevels(110, 10, 20, 70, 180, Double.NaN, 5.4);
    Recipe soft = from(new Liquor.Ions(12, 2, 8, 10, 9, 30));
    LiquorSolver.Treatment found = LiquorSolver.solved(soft, SET, wanted, HOUSE);
    assertThat(found.mash().sulphateMgPerL()).isCloseTo(180, within(10.0));
    assertThat(found.mash().chlorideMgPerL()).isCloseTo(70, within(10.0));
    assertThat(found.mash().magnesiumMgPerL()).isCloseTo(10, within(5.0));
    assertThat(found.mashPh()).isCloseTo(5.4, within(0.05));
  }

  @Test
  void whatHasNoChemistryCannotBeDosed() {
    assertThatThrownBy(() -> new LiquorSolver.Stock("drops", Liquor.Agent.UNKNOWN, 0.1))
        .hasMessageContaining("drops");
    assertThat(
            LiquorSolver.solved(
                    from(new Liquor.Ions(0, 0, 0, 0, 0, 0)),
                    SET,
                    new LiquorLevels(0, 0, 0, 0, 0, Double.NaN, Double.NaN),
                    List.of())
                .additions())
        .isEmpty();
  }
}
