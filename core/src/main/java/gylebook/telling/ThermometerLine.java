package gylebook.telling;

import gylebook.rig.Parameter;
import gylebook.rig.Probe;
import gylebook.rig.Rig;
import gylebook.telling.Blank.Unfit;
import gylebook.units.Component;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/// A thermometer said in one go: "a dial in the kettle".
///
/// How far behind it is and how far off is assumed by its kind, until somebody tests it.
final class ThermometerLine {
  static final String EXAMPLE = "a dial in the kettle";

  private record Word(String word, Object means) {}

  private static final List<Word> KINDS =
      List.of(
          new Word("pt100", Probe.Kind.PT100),
          new Word("platinum", Probe.Kind.PT100),
          new Word("chip", Probe.Kind.DIGITAL_CHIP),
          new Word("thermistor", Probe.Kind.THERMISTOR),
          new Word("thermocouple", Probe.Kind.THERMOCOUPLE),
          new Word("dial", Probe.Kind.DIAL),
          new Word("hand", Probe.Kind.HAND_HELD));

  private static final List<Word> PLACES =
      List.of(
          new Word("suction", Probe.Place.SUCTION),
          new Word("hose", Probe.Place.RETURN),
          new Word("return", Probe.Place.RETURN),
          new Word("grain", Probe.Place.BED),
          new Word("mash", Probe.Place.BED),
          new Word("kettle", Probe.Place.KETTLE));

  private ThermometerLine() {}

  /// The rig with one more thermometer, which does not steer.
  ///
  /// @throws Unfit when the words name no kind or no place
  static Rig added(Rig rig, String typed) {
    String said = Amounts.clean(typed).toLowerCase(Locale.ROOT);
    Probe.Kind kind = (Probe.Kind) meant(KINDS, said, Probe.Kind.values(), "what kind it is");
    Probe.Place place = (Probe.Place) meant(PLACES, said, Probe.Place.values(), "where its tip is");
    Probe probe = new Probe(name(rig, kind.words()), kind, place, lagSec(kind), biasK(kind), false);
    return Component.longer(rig, "probes", probe);
  }

  private static Object meant(List<Word> words, String said, Enum<?>[] all, String what) {
    Optional<Object> found =
        words.stream().filter(word -> said.contains(word.word())).map(Word::means).findFirst();
    return found.orElseThrow(
        () ->
            new Unfit(
                "It is not said " + what + ".",
                "Say it like: "
                    + EXAMPLE
                    + ". It may be "
                    + String.join(", ", Arrays.stream(all).map(Blank::spoken).toList())
                    + "."));
  }

  private static String name(Rig rig, String wanted) {
    List<String> taken = rig.probes().stream().map(Probe::name).toList();
    return Stream.iterate(1, number -> number + 1)
        .map(number -> number == 1 ? wanted : wanted + " " + number)
        .filter(name -> !taken.contains(name))
        .findFirst()
        .orElseThrow();
  }

  private static Parameter lagSec(Probe.Kind kind) {
    double sec =
        switch (kind) {
          case PT100 -> 10;
          case DIGITAL_CHIP -> 12;
          case THERMISTOR -> 8;
          case THERMOCOUPLE -> 4;
          case DIAL -> 30;
          case HAND_HELD -> 6;
        };
    return Parameter.assumedPositive(sec, 0.4, "in moving water, by its kind; our judgement");
  }

  private static Parameter biasK(Probe.Kind kind) {
    double doubtK =
        switch (kind) {
          case PT100, DIGITAL_CHIP -> 0.5;
          case THERMISTOR, HAND_HELD -> 1;
          case THERMOCOUPLE, DIAL -> 2;
        };
    return Parameter.assumed(0, doubtK, "by its kind, our judgement; test it in melting ice");
  }
}
