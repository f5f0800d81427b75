package gylebook.web;

import gylebook.brewday.DayNote;
import gylebook.brewday.Followed;
import gylebook.brewday.Follower;
import gylebook.brewday.Gyle;
import gylebook.estimate.Weighed;
import gylebook.journal.Event;
import gylebook.plan.Band;
import gylebook.plan.Milestone;
import gylebook.telling.Shown;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// The notes of a day. What people noted stands open; what tied instruments sent, a reading a
/// minute each, stands behind it, because six hours of it would bury the rest.
final class KettleNotes {
  // An hour of one instrument, half an hour of two (our judgement).
  private static final int SENT_SHOWN = 60;

  private final Shown shown;
  private final Follower follower;
  private final Gyle gyle;
  private final Set<String> sending;

  /// @param sending what tied instruments are called on this day
  KettleNotes(Shown shown, Follower follower, Gyle gyle, Set<String> sending) {
    this.shown = shown;
    this.follower = follower;
    this.gyle = gyle;
    this.sending = Set.copyOf(sending);
  }

  /// The newest note of a person's that can be taken back.
  Optional<DayNote> last() {
    return gyle.day().stream()
        .filter(note -> note.stands() && !stays(note) && !sent(note))
        .reduce((_, last) -> last);
  }

  /// Everything noted, newest first; what was struck stays, struck through.
  String html(Followed day) {
    List<DayNote> newest =
        gyle.day().stream()
            .sorted(Comparator.comparing(DayNote::at).thenComparingLong(DayNote::seq).reversed())
            .toList();
    StringBuilder html =
        new StringBuilder("<details open><summary>The day's notes</summary><ul class=\"notes\">");
    newest.stream().filter(note -> !sent(note)).forEach(note -> html.append(note(note, day)));
    html.append("</ul></details>");
    List<DayNote> sent = newest.stream().filter(this::sent).toList();
    return sent.isEmpty() ? html.toString() : html.append(sent(sent, day)).toString();
  }

  private String sent(List<DayNote> sent, Followed day) {
    StringBuilder html =
        new StringBuilder("<details><summary>What the tied instruments sent</summary>");
    if (sent.size() > SENT_SHOWN) {
      html.append(
          "<p>The newest %d of %d readings, and older ones that are hard to believe. All of them are in the book.</p>"
              .formatted(SENT_SHOWN, sent.size()));
    }
    html.append("<ul class=\"sent\">");
    sent.stream().limit(SENT_SHOWN).forEach(note -> html.append(note(note, day)));
    sent.stream()
        .skip(SENT_SHOWN)
        .filter(note -> day.weighedBySeq().get(note.seq()) instanceof Weighed.SetAside)
        .forEach(note -> html.append(note(note, day)));
    return html.append("</ul></details>").toString();
  }

  private boolean sent(DayNote note) {
    return note.event() instanceof Event.ReadingTaken taken && sending.contains(taken.instrument());
  }

  private String note(DayNote note, Followed day) {
    String time = "<time datetime=\"%s\">%s</time> ".formatted(note.at(), note.at());
    String words = Html.escaped(says(note));
    if (!note.stands()) {
      return "<li>" + time + "<del>" + words + "</del> struck</li>";
    }
    Weighed came = day.weighedBySeq().get(note.seq());
    String late = day.tooLate().contains(note.seq()) ? " It was too late; it counts nowhere." : "";
    String expected = came == null ? late : " " + Html.escaped(expected(came));
    if (stays(note)) {
      return "<li>" + time + words + ".</li>";
    }
    return "<li>%s%s.%s <button type=\"button\" data-do=\"strike\" data-what=\"%d\" aria-label=\"strike %s\">Strike</button></li>"
        .formatted(time, words, expected, note.seq(), words);
  }

  /// The prediction stands beside an entry, after it was made.
  private String expected(Weighed came) {
    String key =
        follower.instruments().stream()
            .filter(one -> one.name().equals(came.reading().instrument()))
            .findFirst()
            .map(
                one ->
                    switch (one.measures()) {
                      case TEMPERATURE -> "wortC";
                      case HOT_VOLUME -> "hotL";
                      case STRENGTH -> "wortPlato";
                    })
            .orElse("wortC");
    String held =
        "Expected %s, give or take %s."
            .formatted(
                shown.value(key, came.expected()),
                shown.giveOrTake(
                    key,
                    new Band(
                        came.expected() - came.doubt(),
                        came.expected(),
                        came.expected() + came.doubt())));
    return came instanceof Weighed.SetAside
        ? held + " Hard to believe, so it counts little: read it again?"
        : held;
  }

  /// Whether a note cannot be struck.
  private static boolean stays(DayNote note) {
    return note.event() instanceof Event.PracticeStarted;
  }

  String says(DayNote note) {
    return switch (note.event()) {
      case Event.DayStarted _ -> "the day began";
      case Event.PracticeStarted(_, long seed, int pace) ->
          "a day for practice began, rehearsal number %d, %d times as fast as life"
              .formatted(seed, pace);
      case Event.PointReached(String milestone) ->
          follower.plan().forecast().milestone(milestone).map(Milestone::says).orElse(milestone);
      case Event.ReadingTaken taken ->
          taken.instrument()
              + " "
              + taken.asRead()
              + (taken.mixed() ? "" : ", not stirred")
              + (taken.sampleAsRead().isEmpty() ? "" : ", sample at " + taken.sampleAsRead());
      case Event.SwitchSet(String what, String state) ->
          what + " " + (state.isEmpty() ? "as planned" : state);
      case Event.WordSaid(_, String words) -> words;
      case Event.PlanChanged(String says, _) -> "plan changed: " + says;
      default -> "noted";
    };
  }
}
