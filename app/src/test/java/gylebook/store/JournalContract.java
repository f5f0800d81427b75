package gylebook.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gylebook.journal.Addition;
import gylebook.journal.Entry;
import gylebook.journal.Event;
import gylebook.journal.Journal;
import gylebook.journal.Overtaken;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/// What every book promises, whatever it is written on.
abstract class JournalContract {
  static final Instant AT = Instant.parse("2026-03-14T08:00:00Z");
  static final Instant NOTED = Instant.parse("2026-03-14T08:00:05.250Z");

  abstract Journal journal();

  static Addition addition(String gyleId, long afterSeq, Event... events) {
    return new Addition(gyleId, afterSeq, "", AT, NOTED, List.of(events));
  }

  @Test
  void aNewBookIsEmpty() {
    assertThat(journal().entries(0)).isEmpty();
  }

  @Test
  void whatWasAppendedIsReadBackInOrderWithBothTimes() {
    Journal journal = journal();
    Event opened = new Event.GyleOpened("Tea-break wheat \"nine\" \u2103 \uD83C\uDF3E", false);
    Event fixed = new Event.PlanFixed(1, 2, "7", Long.MIN_VALUE, 1000, "line\nline");
    List<Entry> added = journal.append(addition("a", 0, opened, fixed));

    assertThat(journal.entries(0))
        .isEqualTo(added)
        .containsExactly(new Entry(1, "a", AT, NOTED, opened), new Entry(2, "a", AT, NOTED, fixed));
  }

  @Test
  void entriesAfterANumberLeaveTheEarlierOut() {
    Journal journal = journal();
    journal.append(addition("a", 0, new Event.GyleOpened("a", true)));
    journal.append(addition("b", 0, new Event.GyleOpened("b", true)));

    assertThat(journal.entries(1)).extracting(Entry::gyleId).containsExactly("b");
    assertThat(journal.entries(2)).isEmpty();
  }

  @Test
  void whoHasNotSeenTheLastEntryIsOvertakenAndAddsNothing() {
    Journal journal = journal();
    journal.append(addition("a", 0, new Event.GyleOpened("a", false)));
    journal.append(addition("b", 0, new Event.GyleOpened("b", false)));

    assertThatThrownBy(() -> journal.append(addition("a", 0, new Event.Undone(1))))
        .isInstanceOf(Overtaken.class);
    assertThatThrownBy(() -> journal.append(addition("a", 2, new Event.Undone(1))))
        .isInstanceOf(Overtaken.class);
    assertThat(journal.entries(0)).hasSize(2);
    assertThat(journal.append(addition("a", 1, new Event.Undone(1)))).hasSize(1);
  }

  @Test
  void aSecondAdditionOfTheSameNameAddsNothingAndGivesTheFirst() {
    Journal journal = journal();
    var first =
        new Addition(
            "a",
            0,
            "phone-17",
            AT,
            NOTED,
            List.of(new Event.GyleOpened("a", false), new Event.RecipeKept("{}", "opened")));
    List<Entry> added = journal.append(first);

    assertThat(journal.has("phone-17")).isTrue();
    assertThat(journal.has("phone-18")).isFalse();
    assertThat(journal.append(first)).isEqualTo(added);
    assertThat(
            journal.append(
                new Addition("a", 9, "phone-17", AT, NOTED, List.of(new Event.Undone(2)))))
        .isEqualTo(added);
    assertThat(journal.entries(0)).isEqualTo(added);
  }

  @Test
  void additionsWithoutANameAreEachTheirOwn() {
    Journal journal = journal();
    journal.append(addition("a", 0, new Event.UnitsChosen("", "us")));
    journal.append(addition("a", 1, new Event.UnitsChosen("", "us")));

    assertThat(journal.entries(0)).hasSize(2);
    assertThat(journal.has("")).isFalse();
  }
}
