package gylebook.web;

import gylebook.brewday.Book;
import gylebook.brewday.Command;
import gylebook.brewday.DayNote;
import gylebook.brewday.FixedPlan;
import gylebook.brewday.Follower;
import gylebook.brewday.Gyle;
import gylebook.brewday.LookedBack;
import gylebook.estimate.Findings;
import gylebook.rig.Rig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.concurrent.ConcurrentHashMap;

/// Looking back on a finished day, and carrying what it says of the rig to the next.
final class LearntRoutes {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH).withZone(ZoneOffset.UTC);

  private final Desk desk;
  private final Papers papers;
  private final Followers followers;
  private final Map<String, Seen> seenByGyle = new ConcurrentHashMap<>();

  /// What a day said by its notes.
  private record Seen(long startedSeq, List<DayNote> notes, LookedBack back) {}

  LearntRoutes(Desk desk, Papers papers, Followers followers) {
    this.desk = desk;
    this.papers = papers;
    this.followers = followers;
  }

  void register(RoutesConfig routes) {
    routes.get("/gyles/{gyleId}/learnt", this::page);
    routes.get("/api/gyles/{gyleId}/learnt", this::look);
    routes.post("/api/gyles/{gyleId}/learnt", this::take);
  }

  private void page(Context context) {
    Said.gyle(desk, context).ifPresent(gyle -> context.html(new LearntPage(gyle).whole()));
  }

  private void look(Context context) {
    Said.gyle(desk, context)
        .ifPresent(gyle -> Said.json(context, HttpStatus.OK, Map.of("html", html(gyle))));
  }

  private String html(Gyle gyle) {
    Optional<FixedPlan> plan = gyle.brewedBy();
    Optional<LookedBack> back = back(gyle);
    if (plan.isEmpty() || back.isEmpty()) {
      return LearntPage.tooSoon();
    }
    Rig rig = papers.rig(plan.get().rig());
    return new LearntPage(gyle)
        .told(back.get(), rig, desk.book().units(), onto(desk.book(), gyle, back.get()));
  }

  /// What a day says; empty while it is not over. Reckoned once, however many ask.
  private Optional<LookedBack> back(Gyle gyle) {
    Optional<Follower> follower = followers.of(gyle);
    boolean over =
        follower
            .map(one -> !one.at(gyle.happened(), gyle.now(desk.now())).underWay())
            .orElse(false);
    if (!over || gyle.started().isEmpty()) {
      return Optional.empty();
    }
    long startedSeq = gyle.started().get().seq();
    List<DayNote> notes = gyle.happened();
    Seen seen =
        seenByGyle.compute(
            gyle.gyleId(),
            (_, known) ->
                known != null && known.startedSeq() == startedSeq && known.notes().equals(notes)
                    ? known
                    : new Seen(startedSeq, notes, follower.get().lookBack(notes, basis(gyle))));
    return Optional.of(seen.back());
  }

  private static String basis(Gyle gyle) {
    return "learnt from \u201c%s\u201d of %s"
        .formatted(
            gyle.name(), gyle.started().map(note -> DAY.format(note.at())).orElse("that day"));
  }

  /// Pages whose rig still has a number that the day says something of: this one first, then those
  /// that were not brewed yet.
  private Map<String, String> onto(Book book, Gyle gyle, LookedBack back) {
    SequencedMap<String, String> onto = new LinkedHashMap<>();
    if (!back.teaches() || gyle.practice().isPresent()) {
      return onto;
    }
    String called = papers.rig(gyle.rig().document()).name();
    book.gyles().stream()
        .filter(one -> one.gyleId().equals(gyle.gyleId()) || one.started().isEmpty())
        .filter(
            one -> {
              Rig rig = papers.rig(one.rig().document());
              return rig.name().equals(called)
                  && !Findings.carried(rig, back.findings()).equals(rig);
            })
        .forEach(
            one -> {
              if (one.gyleId().equals(gyle.gyleId())) {
                onto.putFirst(one.gyleId(), one.name());
              } else {
                onto.put(one.gyleId(), one.name());
              }
            });
    return onto;
  }

  private void take(Context context) {
    Optional<Gyle> found = Said.gyle(desk, context);
    if (found.isEmpty()) {
      return;
    }
    Gyle gyle = found.get();
    String id = Said.words(context).getOrDefault("onto", "");
    Optional<LookedBack> back = back(gyle);
    Optional<Gyle> onto =
        back.filter(each -> onto(desk.book(), gyle, each).containsKey(id))
            .flatMap(_ -> desk.book().gyle(id));
    if (back.isEmpty() || onto.isEmpty()) {
      Said.json(
          context,
          HttpStatus.UNPROCESSABLE_CONTENT,
          Map.of(
              "what", "Nothing is left to carry there.",
              "value", id,
              "maybe", "Look at the page as it is now."));
      return;
    }
    Rig learnt = Findings.carried(papers.rig(onto.get().rig().document()), back.get().findings());
    Command keep = new Command.KeepRig(papers.document(learnt), basis(gyle));
    Said.answer(
        context,
        desk.write(id, onto.get().lastSeq(), keep, Said.once(context)),
        book ->
            Map.of("html", html(book.gyle(gyle.gyleId()).orElse(gyle)), "kept", onto.get().name()));
  }
}
