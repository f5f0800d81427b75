package gylebook.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.recipe.Analysis;
import gylebook.recipe.Goods;
import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.science.MashPh;
import gylebook.testing.BareRecipe;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

class TreatedLiquorTest {
  private static final Liquor.Ions PURE = new Liquor.Ions(0, 0, 0, 0, 0, 0);
  private static final Settings SET = new Settings(20, 70, 0, 1, 1, 0.7, 5);

  private static Liquor.Addition grams(Liquor.Agent agent, double massG, Liquor.Into into) {
    Entered amount = Entered.of(massG, Unit.known(Quantity.SMALL_MASS, "g"));
    return new Liquor.Addition(agent.words(), agent, amount, into);
  }

  private static Liquor.Addition acid(String name, double volumeMl) {
    Entered amount = Entered.of(volumeMl, Unit.known(Quantity.VOLUME, "mL"));
    return new Liquor.Addition(name, Liquor.Agent.LACTIC_ACID, amount, Liquor.Into.MASH);
  }

  private static Goods malt(Goods.Kind kind, double massKg, double maltEbc) {
    Analysis analysis = new Analysis(0.04, 0.8, 0.01, maltEbc, 0, true);
    Entered mass = Entered.of(massKg, Unit.known(Quantity.MASS, "kg"));
    return new Goods(kind.words(), "", kind, mass, analysis, Goods.Use.MASH);
  }

  private static TreatedLiquor read(Liquor.Ions ions, Liquor.Addition... additions) {
    Recipe recipe =
        BareRecipe.of(
            List.of(malt(Goods.Kind.BASE_MALT, 5, 4)),
            new Liquor("water", ions, List.of(additions)));
    return read(recipe);
  }

  private static TreatedLiquor read(Recipe recipe) {
    Doubts doubts = new Doubts(1);
    doubts.turnTo(-1);
    TreatedLiquor liquor = new TreatedLiquor();
    liquor.read(recipe, SET, doubts);
    return liquor;
  }

  @Test
  void saltedPureWaterHoldsWhatTheUsgsSpeciationCounts() {
    // PHREEQC's totals for 0.300 g/L gypsum and 0.200 g/L calcium chloride dihydrate: Ca 3.1030, S
    // 1.7426, Cl 2.7208 mmol a kilogram of water. 20 L of mash liquor take 6 g and 4 g.
    TreatedLiquor liquor =
        read(
            PURE,
            grams(Liquor.Agent.GYPSUM, 6, Liquor.Into.MASH),
            grams(Liquor.Agent.CALCIUM_CHLORIDE_DIHYDRATE, 4, Liquor.Into.MASH));
    assertThat(liquor.mashMgPerL[TreatedLiquor.CALCIUM]).isCloseTo(3.1030 * 40.078, within(0.05));
    assertThat(liquor.mashMgPerL[TreatedLiquor.SULFATE]).isCloseTo(1.7426 * 96.056, within(0.1));
    assertThat(liquor.mashMgPerL[TreatedLiquor.CHLORIDE]).isCloseTo(2.7208 * 35.45, within(0.1));
  }

  @Test
  void saltsForTheKettleStayOutOfTheMash() {
    TreatedLiquor liquor = read(PURE, grams(Liquor.Agent.TABLE_SALT, 5, Liquor.Into.KETTLE));
    assertThat(liquor.mashMgPerL[TreatedLiquor.SODIUM]).isZero();
    // 1 g/L of table salt is 393.39 mg/L of sodium (atomic weights); 5 g in 25 L is a fifth.
    assertThat(liquor.wholeMgPerL[TreatedLiquor.SODIUM]).isCloseTo(393.39 / 5, within(0.01));
  }

  @Test
  void theWorkedMashOfTheProtonBalanceFollowsItsOwnLiquor() {
    // Alkalinity 1.0, Ca 2.5, Mg 0.4 meq/L in 20 L: net 4.571 meq (Kolbach's divisors).
    double calciumMgPerL = 2.5 * 20.039;
    double magnesiumMgPerL = 0.4 * 12.1525;
    TreatedLiquor liquor = read(new Liquor.Ions(calciumMgPerL, magnesiumMgPerL, 0, 0, 0, 61.017));
    assertThat(liquor.mashResidualMeqPerL() * 20).isCloseTo(4.571, within(0.001));
    assertThat(liquor.mashPh - read(PURE).mashPh).isCloseTo(4.571 / (5 * 33.2), within(1e-4));
  }

  @Test
  void severalMaltsBalanceAsTheGeneralEquationSolvesThem() {
    List<Goods> grist =
        List.of(
            malt(Goods.Kind.BASE_MALT, 4, 3),
            malt(Goods.Kind.CARAMEL_MALT, 0.5, 300),
            malt(Goods.Kind.ROASTED, 0.3, 1200));
    TreatedLiquor liquor =
        read(
            BareRecipe.of(
                grist, new Liquor("", new Liquor.Ions(0, 0, 0, 0, 0, 122.034), List.of())));
    double solved =
        MashPh.gristPh(
            List.of(
                MashPh.Malt.straight(4, 5.76, 33.2),
                MashPh.Malt.straight(0.5, 4.6, 33.2),
                MashPh.Malt.straight(0.3, 4.6, 33.2)),
            2 * 20);
    assertThat(liquor.mashPh).isCloseTo(solved, within(1e-6));
  }

  @Test
  void lacticAcidTakesAwayWhatItsStrengthSays() {
    // 5.64 mL of 88 % lactic acid give 64.57 meq down to pH 5.40 (proton balance, pK 3.863).
    assertThat(Dose.acidMeq(acid("lactic acid 88 %", 5.64), 5.40)).isCloseTo(64.57, within(0.2));
    assertThat(Dose.acidMeq(acid("lactic acid", 5.64), 5.40)).isCloseTo(64.57, within(0.2));
    assertThat(Dose.acidMeq(acid("lactic acid 80 %", 5.64), 5.40)).isLessThan(58.5);
  }

  @Test
  void onePerCentOfSouredMaltLowersThePhByLessThanTheMaltstersTenth() {
    // The maltster's rule, 1 % for 0.1 pH, implies a buffer of 22; ours is half as much again.
    Goods soured =
        new Goods(
            "acidulated malt",
            "",
            Goods.Kind.BASE_MALT,
            Entered.of(0.05, Unit.known(Quantity.MASS, "kg")),
            new Analysis(0.04, 0.8, 0.01, 4, 0, true),
            Goods.Use.MASH);
    Liquor pure = new Liquor("", PURE, List.of());
    double with =
        read(BareRecipe.of(List.of(malt(Goods.Kind.BASE_MALT, 4.95, 4), soured), pure)).mashPh;
    double without = read(BareRecipe.of(List.of(malt(Goods.Kind.BASE_MALT, 5, 4)), pure)).mashPh;
    assertThat(without - with).isBetween(0.05, 0.10);
  }

  @Test
  void anAcidOfUnknownWordsIsNotCounted() {
    Entered drops = Entered.of(3, Quantity.NUMBER.inside());
    assertThat(
            Dose.counted(
                new Liquor.Addition("sour drops", Liquor.Agent.UNKNOWN, drops, Liquor.Into.MASH)))
        .isFalse();
    assertThat(Dose.counted(acid("lactic acid", 2))).isTrue();
  }
}
