package gylebook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.recipe.Aim;
import gylebook.recipe.Goods;
import gylebook.recipe.Recipe;
import gylebook.rig.DemoRigs;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ColourNoteTest {
  private static Recipe coloured(Recipe recipe, double wantEbc) {
    Aim aim = recipe.aim();
    return recipe.withAim(
        new Aim(
            aim.lengthL(),
            aim.into(),
            aim.strengthPlato(),
            aim.bitternessMgPerL(),
            aim.readyBy(),
            aim.doneBy(),
            Optional.of(Entered.of(wantEbc, Unit.known(Quantity.COLOUR, "EBC")))));
  }

  private static Plan plan(Recipe recipe) {
    Planned planned = Planner.plan(recipe, DemoRigs.household(), 60, 1, () -> false, _ -> {});
    return ((Planned.Feasible) planned).plan();
  }

  private static double colour(Plan plan) {
    return plan.forecast().figure("colourEbc").orElseThrow().band().middle();
  }

  private static Optional<Guard> note(Plan plan) {
    return plan.forecast().guards().stream()
        .filter(guard -> guard.key().equals("colourOff"))
        .findFirst();
  }

  private static double moreG(Guard guard) {
    Note amount =
        guard.what().stream().filter(note -> note.key().equals("massG")).findFirst().orElseThrow();
    return guard.what().getLast().words().contains(" more dark")
        ? amount.band().middle()
        : -amount.band().middle();
  }

  private static Goods line(Goods goods, double massKg) {
    return goods.withMass(Entered.of(massKg, Unit.known(Quantity.MASS, "kg")));
  }

  @Test
  void whoeverWeighsAsTheNoteSaysGetsTheColour() {
    Recipe bitter = Demo.copperBitter();
    double here = colour(plan(bitter));
    for (double wantEbc : new double[] {here + 9, here - 4}) {
      Plan off = plan(coloured(bitter, wantEbc));
      double shiftKg = moreG(note(off).orElseThrow()) / 1000;
      List<Goods> weighed = off.recipe().grist();
      Recipe shifted =
          coloured(bitter, wantEbc)
              .with(
                  List.of(
                      line(weighed.get(0), weighed.get(0).massKg().inside() - shiftKg),
                      line(weighed.get(1), weighed.get(1).massKg().inside() + shiftKg)),
                  bitter.hops());
      Plan after = plan(shifted);
      assertThat(colour(after)).isCloseTo(wantEbc, within(0.8));
      assertThat(note(after)).isEmpty();
    }
  }

  @Test
  void theAmountIsThatOfMoreysLawByHand() {
    // SRM = 1.4922 MCU^0.6859 (Morey), EBC = 1.97 SRM, malt EBC = 2.65 L - 1.2 (from memory); the
    // boil's own 1.5 EBC taken off.
    Plan off = plan(coloured(Demo.copperBitter(), 40));
    double gotEbc = colour(off);
    List<Goods> grist = off.recipe().grist();
    double pale = (5.5 + 1.2) / 2.65;
    double dark = (160 + 1.2) / 2.65;
    double sum = grist.get(0).massKg().inside() * pale + grist.get(1).massKg().inside() * dark;
    double ratio = Math.pow((40 - 1.5) / (gotEbc - 1.5), 1 / 0.6859);
    assertThat(moreG(note(off).orElseThrow()) / 1000)
        .isCloseTo(sum * (ratio - 1) / (dark - pale), within(0.02));
  }

  /// Morey's curve, Mosher's line and Daniels' part by about a tenth (17.8, 15.8, 15.8 SRM at 37
  /// units; 11.6, 10.7, 12.4 at 20): nobody may be surer of a colour than the rules agree.
  @Test
  void noForecastIsSurerOfAColourThanTheRulesAgree() {
    Band band = plan(Demo.copperBitter()).forecast().figure("colourEbc").orElseThrow().band();
    assertThat((band.high() - band.low()) / band.middle()).isBetween(0.18, 0.40);
  }

  @Test
  void aColourThatIsReachedOrNotAskedForIsNoNote() {
    Recipe bitter = Demo.copperBitter();
    Plan plain = plan(bitter);
    assertThat(note(plain)).isEmpty();
    assertThat(note(plan(coloured(bitter, colour(plain) + 1)))).isEmpty();
  }

  @Test
  void whatCannotBeLighterSaysSo() {
    Guard guard = note(plan(coloured(Demo.copperBitter(), 3))).orElseThrow();
    assertThat(NoteText.plain(guard.what())).contains("even without the dark crystal malt");
    Recipe one =
        Demo.copperBitter()
            .with(List.of(Demo.copperBitter().grist().getFirst()), Demo.copperBitter().hops());
    assertThat(NoteText.plain(note(plan(coloured(one, 40))).orElseThrow().what()))
        .contains("no second malt");
  }
}
