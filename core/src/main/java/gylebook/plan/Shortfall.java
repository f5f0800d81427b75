package gylebook.plan;

import gylebook.recipe.Liquor;
import gylebook.science.LiquorLevels;
import gylebook.science.Salt;
import gylebook.simulate.Dose;
import gylebook.simulate.LiquorLook;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/// What of a wanted liquor is not reached, and why: the water has too much of it already, nothing
/// in the house brings it, or what brings it moves the rest further off.
///
/// @param bare the liquor before anything is added
/// @param house what there is to add
@AnyUnit("ions and a pH")
record Shortfall(LiquorLook bare, List<LiquorSolver.Stock> house) {
  private static final double MISSED_MG_PER_L = 10;
  private static final String BICARBONATE = "Bicarbonate";
  private static final double MISSED_PH = 0.05;
  private static final String MOVES_THE_REST =
      " is wanted: what is in the house cannot bring it nearer without moving the rest further"
          + " off.";

  /// One ion: its name, how a figure of it is called, and where it stands.
  private record Ion(
      String says,
      String key,
      ToDoubleFunction<Liquor.Ions> inLiquor,
      ToDoubleFunction<Salt.Ions> inSalt,
      ToDoubleFunction<LiquorLevels> inWish) {}

  private static final List<Ion> IONS =
      List.of(
          new Ion(
              "Calcium",
              "mashCalciumMgPerL",
              Liquor.Ions::calciumMgPerL,
              Salt.Ions::calciumMgPerL,
              LiquorLevels::calciumMgPerL),
          new Ion(
              "Magnesium",
              "mashMagnesiumMgPerL",
              Liquor.Ions::magnesiumMgPerL,
              Salt.Ions::magnesiumMgPerL,
              LiquorLevels::magnesiumMgPerL),
          new Ion(
              "Sodium",
              "mashSodiumMgPerL",
              Liquor.Ions::sodiumMgPerL,
              Salt.Ions::sodiumMgPerL,
              LiquorLevels::sodiumMgPerL),
          new Ion(
              "Chloride",
              "mashChlorideMgPerL",
              Liquor.Ions::chlorideMgPerL,
              Salt.Ions::chlorideMgPerL,
              LiquorLevels::chlorideMgPerL),
          new Ion(
              "Sulphate",
              "mashSulfateMgPerL",
              Liquor.Ions::sulphateMgPerL,
              Salt.Ions::sulfateMgPerL,
              LiquorLevels::sulfateMgPerL),
          new Ion(
              BICARBONATE,
              "mashBicarbonateMgPerL",
              Liquor.Ions::bicarbonateMgPerL,
              salt -> salt.alkalinityMeqPerL(),
              LiquorLevels::bicarbonateMgPerL));

  /// A sentence for each line that is missed.
  List<List<Note>> of(LiquorLook look, LiquorLevels wanted) {
    List<List<Note>> missed = new ArrayList<>();
    for (Ion ion : IONS) {
      double got = ion.inLiquor().applyAsDouble(look.mash());
      double want = ion.inWish().applyAsDouble(wanted);
      if (Math.abs(got - want) > MISSED_MG_PER_L) {
        missed.add(sentence(ion.says(), ion.key(), got, want, why(ion, got, want)));
      }
    }
    double got = look.mashPh();
    double want = wanted.mashPh();
    if (Math.abs(got - want) > MISSED_PH) {
      missed.add(sentence("The mash's pH", "mashPh", got, want, why(got, want)));
    }
    return missed;
  }

  private String why(Ion ion, double got, double want) {
    String name = ion.says().toLowerCase(Locale.ROOT);
    if (got > want && ion.inLiquor().applyAsDouble(bare.mash()) > want + MISSED_MG_PER_L) {
      boolean acid = ion.says().equals(BICARBONATE);
      return " is wanted: the water holds more before anything is added, and only "
          + (acid ? "acid, or " : "")
          + "thinning it with filtered water"
          + (acid ? "," : "")
          + " brings it down.";
    }
    boolean brought = house.stream().anyMatch(stock -> brings(ion, stock));
    return got < want && !brought
        ? " is wanted: nothing in the house brings " + name + "."
        : MOVES_THE_REST;
  }

  private static boolean brings(Ion ion, LiquorSolver.Stock stock) {
    return Dose.salt(stock.agent())
        .filter(salt -> ion.inSalt().applyAsDouble(salt.ionsOf(1)) > 0)
        .isPresent();
  }

  private String why(double got, double want) {
    boolean acid = house.stream().anyMatch(LiquorSolver.Stock::acid);
    boolean alkali = house.stream().anyMatch(stock -> LiquorSolver.raisesAlkalinity(stock));
    if (got > want && !acid) {
      return " is wanted: there is no acid in the house.";
    }
    return got < want && !alkali ? " is wanted: nothing in the house raises it." : MOVES_THE_REST;
  }

  private static List<Note> sentence(String what, String key, double got, double want, String why) {
    return List.of(
        Note.of(what + " comes to ", key, got), Note.of(" where ", key, want), Note.words(why));
  }
}
