package gylebook.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gylebook.journal.Event;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/// The spelling of events in the file, held against approved files that are kept for ever.
class EventFormTest {
  private static final List<Event> ONE_OF_EACH =
      List.of(
          new Event.GyleOpened("Copper bitter", true),
          new Event.RecipeKept("{\"name\":\"Copper bitter\"}", "length 19 L to 21 L"),
          new Event.RigKept("{\"name\":\"Household\"}", "opened"),
          new Event.PlanFixed(2, 3, "1", 20260314, 1000, "20 L by noon"),
          new Event.UnitsChosen("TEMPERATURE", "\u00b0F"),
          new Event.InstrumentTied("suction", "at the pump", "{\"kind\":\"broker\"}"),
          new Event.InstrumentLoosed("suction"),
          new Event.DayStarted(4),
          new Event.PracticeStarted(4, 77, 20),
          new Event.PointReached("boilReached"),
          new Event.ReadingTaken("hydrometer", "KETTLE", false, "1,041", "63 \u00b0C"),
          new Event.SwitchSet("heater", "40 %"),
          new Event.WordSaid("mishap", "It boiled over"),
          new Event.KettleTaken("a1b2-c3", "Tablet"),
          new Event.PlanChanged("Boil on. 12 min", "way BOIL_ON\nlasts flameOut 720.0"),
          new Event.ForecastGiven(
              "bitter", 9, "engine 5\nat 2280\nboilReached atSec 9300.5 210 8950 9660"),
          new Event.Undone(17));

  @Test
  void everyKindOfEventIsSpelledAsApproved() {
    for (Event event : ONE_OF_EACH) {
      EventForm form = EventForm.of(event);
      String approved = golden(form.type() + "." + form.version() + ".json").strip();

      assertThat(EventText.body(event)).as(form.type()).isEqualTo(approved);
      assertThat(EventText.event(form.type(), form.version(), approved)).isEqualTo(event);
    }
  }

  @Test
  void thereIsAnExampleOfEveryKind() {
    assertThat(ONE_OF_EACH.stream().map(event -> event.getClass().getSimpleName()))
        .containsExactlyInAnyOrderElementsOf(
            Stream.of(Event.class.getPermittedSubclasses()).map(Class::getSimpleName).toList());
    assertThat(Stream.of(EventForm.values()).map(EventForm::type)).doesNotHaveDuplicates();
  }

  @Test
  void theComponentsOfEveryEventAreAsApproved() {
    String components =
        Stream.of(EventForm.values())
            .map(
                form ->
                    form.type()
                        + " "
                        + form.version()
                        + ": "
                        + Stream.of(form.form().getRecordComponents())
                            .map(c -> c.getName() + " " + c.getType().getSimpleName())
                            .collect(Collectors.joining(", ")))
            .collect(Collectors.joining("\n"));

    assertThat(components).isEqualTo(golden("components.txt").strip());
  }

  @Test
  void anEntryOfANewerBuildIsNotGuessed() {
    assertThatThrownBy(() -> EventText.event("undone", 2, "{\"undoneSeq\":1}"))
        .hasMessageContaining("newer Gylebook");
    assertThatThrownBy(() -> EventText.event("undone", 1, "{\"undoneSeq\":1,\"more\":2}"))
        .hasMessageContaining("cannot be read");
    assertThatThrownBy(() -> EventText.event("undone", 1, "{}"))
        .hasMessageContaining("cannot be read");
  }

  private static String golden(String name) {
    try (InputStream stream = EventFormTest.class.getResourceAsStream("/golden/events/" + name)) {
      assertThat(stream).as("approved file golden/events/%s", name).isNotNull();
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException failure) {
      throw new java.io.UncheckedIOException(failure);
    }
  }
}
