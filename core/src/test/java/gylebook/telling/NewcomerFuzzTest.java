package gylebook.telling;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.rig.Newcomer;
import gylebook.testing.Cases;
import gylebook.units.ReadingUnits;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/// A newcomer types whatever comes to mind into the questions about their rig.
class NewcomerFuzzTest {
  private static final List<ReadingUnits> SETS =
      List.of(ReadingUnits.METRIC, ReadingUnits.US, ReadingUnits.IMPERIAL);

  /// What people type, rightly and wrongly, and what nobody should.
  private static final List<String> TYPED =
      List.of(
          "35 L",
          "9 gal",
          "9 imp gal",
          "35",
          "35,5",
          "3 kW",
          "3000",
          "230V",
          "120 v",
          "1200 m",
          "4000 ft",
          "sea level",
          "yes",
          "no",
          "none",
          "2 m",
          "1/2 in",
          "½ inch",
          "13 mm",
          "6 ft 6 in",
          "in the grain",
          "my rig",
          "",
          " ",
          "-5 L",
          "0",
          "1e400",
          "NaN",
          "∞",
          "1.2.3",
          "1,234",
          "about 30 L",
          "30-35 L",
          "30 L +/- 2 L",
          "<b>x</b>",
          "\u202e30 L",
          "\u0000",
          "30\tL",
          "٣٥ L",
          "thirty",
          "35 litres",
          "35l",
          "99999999 L",
          "0.0001 L",
          "null",
          "{name}",
          "💧",
          "'",
          "\"");

  private static String anything(RandomGenerator random) {
    if (random.nextInt(3) > 0) {
      return TYPED.get(random.nextInt(TYPED.size()));
    }
    StringBuilder text = new StringBuilder();
    int length = random.nextInt(1, 24);
    for (int i = 0; i < length; i++) {
      int point = random.nextInt(4) == 0 ? random.nextInt(0x2fff) : random.nextInt(32, 127);
      text.appendCodePoint(point);
    }
    return text.toString();
  }

  private static List<Piece.Slot> slots(Newcomer newcomer, ReadingUnits units) {
    return NewcomerWords.of(newcomer, units).stream()
        .flatMap(section -> section.sentences().stream())
        .flatMap(sentence -> sentence.pieces().stream())
        .filter(Piece.Slot.class::isInstance)
        .map(Piece.Slot.class::cast)
        .toList();
  }

  private static Piece.Slot slot(Newcomer newcomer, ReadingUnits units, String name) {
    return slots(newcomer, units).stream()
        .filter(slot -> slot.slot().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no slot " + name));
  }

  @Test
  void whateverANewcomerTypesIsTakenOrAnsweredWithASentence() {
    Cases.each(
        300,
        random -> {
          ReadingUnits units = SETS.get(random.nextInt(SETS.size()));
          Newcomer newcomer = Newcomer.usual();
          for (int i = 0; i < 10; i++) {
            List<Piece.Slot> slots = slots(newcomer, units);
            Piece.Slot asked = slots.get(random.nextInt(slots.size()));
            newcomer = answered(newcomer, asked, anything(random), units);
          }
          assertThat(newcomer.rig().name()).isNotBlank();
        });
  }

  /// The newcomer after an answer: changed in this one place, or not at all.
  private static Newcomer answered(
      Newcomer before, Piece.Slot asked, String typed, ReadingUnits units) {
    return switch (Filling.newcomer(before, asked.slot(), typed, units)) {
      case Filled.Unclear<Newcomer>(String what, String value, String maybe) -> {
        assertThat(what).as(asked.slot() + " " + typed).endsWith(".").hasSizeGreaterThan(8);
        assertThat(value).isEqualTo(typed);
        assertThat(maybe).isNotBlank();
        yield before;
      }
      case Filled.Done<Newcomer>(Newcomer after) -> {
        for (Piece.Slot slot : slots(after, units)) {
          if (!slot.slot().equals(asked.slot())) {
            assertThat(slot).isEqualTo(slot(before, units, slot.slot()));
          }
        }
        // What stands in the field, typed again, changes nothing.
        String again = slot(after, units, asked.slot()).typed();
        assertThat(Filling.newcomer(after, asked.slot(), again, units))
            .as(asked.slot() + " " + typed + ", then " + again)
            .isEqualTo(new Filled.Done<>(after));
        yield after;
      }
    };
  }

  @Test
  void whatIsTypedIsKept() {
    Newcomer newcomer = Newcomer.usual();
    assertThat(
            answered(newcomer, slot(newcomer, ReadingUnits.US, "kettleL"), "9 gal", ReadingUnits.US)
                .kettleL())
        .isCloseTo(9 * 3.785411784, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(Filling.newcomer(newcomer, "no such slot", "5", ReadingUnits.METRIC))
        .isInstanceOf(Filled.Unclear.class);
  }
}
