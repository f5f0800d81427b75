package gylebook.telling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.plan.Demo;
import gylebook.rig.DemoRigs;
import gylebook.rig.Newcomer;
import gylebook.rig.Origin;
import gylebook.rig.Parameter;
import gylebook.rig.Probe;
import gylebook.rig.Rig;
import gylebook.units.Component;
import gylebook.units.ReadingUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class RigWordsTest {
  private static final List<ReadingUnits> SETS =
      List.of(ReadingUnits.METRIC, ReadingUnits.US, ReadingUnits.IMPERIAL);
  private static final Pattern GIVE = Pattern.compile("give or take (.+)\\)$");

  private static Rig filled(Rig rig, String slot, String typed) {
    Filled<Rig> filled = Filling.rig(rig, slot, typed, ReadingUnits.METRIC);
    assertThat(filled).as(slot + " with " + typed).isInstanceOf(Filled.Done.class);
    return ((Filled.Done<Rig>) filled).thing();
  }

  private static String text(Rig rig) {
    StringBuilder text = new StringBuilder();
    RigWords.of(rig, ReadingUnits.METRIC).forEach(s -> text.append(s.text()).append('\n'));
    return text.toString();
  }

  private record Said(String slot, String typed) {}

  /// Every number with the give-or-take that stands behind it, as a person would read it aloud.
  private static List<Said> aloud(Rig rig, ReadingUnits units) {
    List<Said> said = new ArrayList<>();
    for (Section section : RigWords.of(rig, units)) {
      for (Sentence sentence : section.sentences()) {
        for (int i = 0; i + 1 < sentence.pieces().size(); i++) {
          Matcher give = GIVE.matcher(sentence.pieces().get(i + 1).text());
          if (sentence.pieces().get(i) instanceof Piece.Slot slot && give.find()) {
            said.add(new Said(slot.slot(), slot.shown() + " give or take " + give.group(1)));
          }
        }
      }
    }
    return said;
  }

  @Test
  void whatStandsBehindANumberCanBeTypedBack() {
    for (Rig rig : List.of(DemoRigs.household(), DemoRigs.smallFlat())) {
      for (ReadingUnits units : SETS) {
        List<Said> all = aloud(rig, units);
        assertThat(all).hasSizeGreaterThan(30);
        for (Said said : all) {
          Parameter before = (Parameter) Component.at(rig, said.slot());
          Filled<Rig> filled = Filling.rig(rig, said.slot(), said.typed(), units);
          assertThat(filled).as(said.toString()).isInstanceOf(Filled.Done.class);
          Rig thing = ((Filled.Done<Rig>) filled).thing();
          Parameter after = (Parameter) Component.at(thing, said.slot());
          // Shown figures have two digits or more: half of the last is at most 5 in 100.
          assertThat(after.value())
              .as(said.toString())
              .isCloseTo(before.value(), within(0.05 * Math.abs(before.value()) + 1e-12));
          assertThat(after.doubt())
              .as(said.toString())
              .isCloseTo(before.doubt(), within(0.1 * before.doubt()));
          assertThat(after.origin()).isEqualTo(Origin.MEASURED);
        }
      }
    }
  }

  @Test
  void aShareOfAShareMeansWhatTheSentenceMeansByIt() {
    Rig rig = DemoRigs.household();
    // Positive for ever: its doubt is a share of it.
    assertThat(filled(rig, "kettle.lidLeakFrac", "5 % give or take 20 %").kettle().lidLeakFrac())
        .satisfies(leak -> assertThat(leak.doubt()).isCloseTo(0.2, within(1e-9)));
    // Symmetric: its doubt is in points of per cent.
    assertThat(filled(rig, "working.mashFrac", "92 % give or take 2 %").working().mashFrac())
        .satisfies(share -> assertThat(share.doubt()).isCloseTo(0.02, within(1e-9)));
    assertThat(filled(rig, "site.altitudeM", "100 m give or take 10 %").site().altitudeM().doubt())
        .isCloseTo(10, within(1e-9));
  }

  @Test
  void aBareNumberIsInTheUnitItIsTypedOver() {
    Rig rig = DemoRigs.household();
    assertThat(filled(rig, "probes.0.lagSec", "12").probes().getFirst().lagSec().value())
        .isEqualTo(12);
    assertThat(filled(rig, "site.altitudeM", "150").site().altitudeM().value()).isEqualTo(150);
    assertThat(filled(rig, "loop.hoseM", "200").loop().hoseM().value()).isCloseTo(2, within(1e-12));
    Filled<?> longer =
        Filling.recipe(Demo.copperBitter(), "ferment.steps.0.holdSec", "12", ReadingUnits.METRIC);
    assertThat(longer.toString()).contains("inside=1036800.0, unit=Unit[quantity=TIME, symbol=d");
  }

  @Test
  void withoutAPumpNothingIsSaidOfItsHoseAndANewOneIsAssumed() {
    Rig without = DemoRigs.smallFlat();
    assertThat(text(without)).contains("Is there a pump: no.").doesNotContain("hose is");

    Rig with = filled(without, "loop.present", "yes");
    assertThat(text(with)).contains("It moves 4.0 L/min (assumed, give or take 25 %)");
    assertThat(with.loop().hoseM().origin()).isEqualTo(Origin.ASSUMED);

    // A pump that was measured once keeps what was measured.
    Rig measured = filled(with, "loop.mashLPerSec", "5 L/min give or take 0.2 L/min");
    Rig again = filled(filled(measured, "loop.present", "no"), "loop.present", "yes");
    assertThat(again).isEqualTo(measured);
  }

  @Test
  void thermometersAreAddedTakenOutAndTakeTurnsToSteer() {
    Rig two = filled(DemoRigs.household(), "probes.add", "a dial in the kettle");
    assertThat(two.probes()).hasSize(2);
    assertThat(two.probes().getLast().kind()).isEqualTo(Probe.Kind.DIAL);
    assertThat(two.probes().getLast().steers()).isFalse();
    assertThat(two.probes().getLast().biasK().origin()).isEqualTo(Origin.ASSUMED);
    assertThat(text(two)).contains("dial is a dial thermometer in the kettle; it runs 30 s");

    Rig swapped = filled(two, "probes.1.steers", "yes");
    assertThat(swapped.probes()).extracting(Probe::steers).containsExactly(false, true);
    assertThat(filled(swapped, "probes.0.remove", "yes").probes()).hasSize(1);
    assertThat(filled(two, "probes.add", "another dial in the mash").probes())
        .extracting(Probe::name)
        .containsExactly("controller", "dial", "dial 2");
    assertThat(Filling.rig(two, "probes.add", "a dial", ReadingUnits.METRIC))
        .isEqualTo(
            new Filled.Unclear<Rig>(
                "It is not said where its tip is.",
                "a dial",
                "Say it like: a dial in the kettle. It may be in the pump's suction, in the return"
                    + " hose, in the kettle, in the grain."));
    assertThat(Filling.rig(two, "probes.5.remove", "yes", ReadingUnits.METRIC))
        .isInstanceOf(Filled.Unclear.class);
  }

  @Test
  void whereANumberIsFromIsSaidBehindItsSection() {
    assertThat(text(DemoRigs.household()))
        .contains(
            "width inside and height inside (as wide as high; measure the inside with a ruler)");
    Rig measured = filled(DemoRigs.household(), "kettle.diameterM", "36.1 cm");
    assertThat(text(measured))
        .contains("36.1 cm (measured, give or take 1.7 %) across")
        .contains("numbers are from: height inside (as wide as high;");
  }

  @Test
  void aNewcomerLivesSoManyMetresUp() {
    Filled<Newcomer> filled =
        Filling.newcomer(Newcomer.usual(), "altitudeM", "250", ReadingUnits.METRIC);
    assertThat(((Filled.Done<Newcomer>) filled).thing().altitudeM()).isEqualTo(250);
    // Feet, exact by definition: 0.3048 m.
    Filled<Newcomer> feet =
        Filling.newcomer(Newcomer.usual(), "altitudeM", "1000", ReadingUnits.US);
    assertThat(((Filled.Done<Newcomer>) feet).thing().altitudeM()).isCloseTo(304.8, within(1e-9));
  }
}
