package gylebook.app;

import gylebook.brewday.Command;
import gylebook.brewday.TiedInstrument;
import gylebook.device.Board;
import gylebook.device.Heard;
import gylebook.device.Panel;
import gylebook.device.Patience;
import gylebook.device.Posted;
import gylebook.device.Tie;
import gylebook.device.TieForm;
import gylebook.device.Unfit;
import gylebook.journal.Journal;
import gylebook.web.Desk;
import gylebook.web.Instruments;
import gylebook.web.Practice;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

/// Joins the book, which says what is tied, the panel, which listens, and the page.
final class Wiring implements Instruments, AutoCloseable {
  private static final int TOKEN_BYTES = 16;

  private final Desk desk;
  private final InstantSource clock;
  private final Panel panel;
  private final Looking looking;
  private final Practice practice;
  private final SecureRandom chance = new SecureRandom();
  private final List<Consumer<Heard>> ears = new CopyOnWriteArrayList<>();

  /// Ties in the book that this build cannot read; shown as what they are.
  private final List<Dial> unreadable = new CopyOnWriteArrayList<>();

  Wiring(Desk desk, InstantSource clock, Path oneWireRoot) {
    this.desk = desk;
    this.clock = clock;
    this.panel = new Panel(clock, Patience.USUAL, oneWireRoot, this::hear);
    this.practice = new Practising(desk, new Wallet());
    this.looking = new Looking(clock, oneWireRoot, panel);
  }

  /// Begins to listen to what the book says is tied; returns at once.
  void begin() {
    Thread.ofVirtual().name("instruments").start(this::tieAll);
  }

  /// Tells somebody of everything that is heard from now on, on the threads of the drivers.
  void listen(Consumer<Heard> ear) {
    ears.add(ear);
  }

  private void hear(Heard heard) {
    ears.forEach(ear -> ear.accept(heard));
  }

  private void tieAll() {
    List<Tie> ties = new ArrayList<>();
    for (TiedInstrument tied : desk.book().tied()) {
      if (desk.book().rehearses(tied.name())) {
        // The program was ended in the middle of a rehearsal; nobody has the token any more.
        loose(tied.name(), desk.book().seen(Journal.HOUSE), "");
        continue;
      }
      try {
        ties.add(TieForm.tie(tied.name(), tied.place(), TieForm.form(tied.document())));
      } catch (Unfit unfit) {
        unreadable.add(Dials.unreadable(tied, unfit));
      }
    }
    panel.tie(ties);
  }

  @Override
  public List<Dial> dials() {
    List<Dial> dials = new ArrayList<>(unreadable);
    panel.gauges().forEach(gauge -> dials.add(Dials.dial(gauge, clock.instant())));
    return dials;
  }

  @Override
  public synchronized Tied tie(Map<String, String> form, long afterSeq, String once) {
    Map<String, String> reach = new HashMap<>(form);
    String name = Optional.ofNullable(reach.remove("name")).orElse("").strip();
    String place = Optional.ofNullable(reach.remove("place")).orElse("").strip();
    // What was only for looking is not kept.
    reach.remove("shown");
    try {
      Optional<String> token = token(reach);
      Tie tie = TieForm.tie(name, place, reach);
      Command command = new Command.TieInstrument(name, place, TieForm.document(reach));
      Desk.Answer answer = desk.write(Journal.HOUSE, afterSeq, command, once);
      if (answer instanceof Desk.Answer.Written) {
        looking.stop();
        unreadable.removeIf(dial -> dial.name().equals(name));
        panel.tie(List.of(tie));
      }
      return new Tied.Answered(answer, token);
    } catch (Unfit unfit) {
      return new Tied.Unfit(unfit.field(), unfit.value(), words(unfit));
    }
  }

  /// A new token for a board that posts, unless it shares that of an instrument that is there.
  private Optional<String> token(Map<String, String> reach) throws Unfit {
    if (!reach.getOrDefault("kind", "").equals("post")) {
      return Optional.empty();
    }
    String board = Optional.ofNullable(reach.remove("board")).orElse("").strip();
    if (!board.isEmpty()) {
      for (TiedInstrument tied : desk.book().tied()) {
        String digest = TieForm.form(tied.document()).getOrDefault("tokenDigest", "");
        if (tied.name().equals(board) && !digest.isEmpty()) {
          reach.put("tokenDigest", digest);
          return Optional.empty();
        }
      }
    }
    byte[] bytes = new byte[TOKEN_BYTES];
    chance.nextBytes(bytes);
    String token = HexFormat.of().formatHex(bytes);
    reach.put("tokenDigest", Board.digest(token));
    return Optional.of(token);
  }

  @Override
  public synchronized Desk.Answer loose(String name, long afterSeq, String once) {
    Command command = new Command.LooseInstrument(name);
    Desk.Answer answer = desk.write(Journal.HOUSE, afterSeq, command, once);
    if (answer instanceof Desk.Answer.Written) {
      unreadable.removeIf(dial -> dial.name().equals(name));
      panel.loose(name);
    }
    return answer;
  }

  @Override
  public Looked look(Map<String, String> form) {
    try {
      return looking.look(form);
    } catch (Unfit unfit) {
      return new Looked.Unfit(unfit.field(), unfit.value(), words(unfit));
    }
  }

  private static String words(Unfit unfit) {
    return Optional.ofNullable(unfit.getMessage()).orElse("It does not fit.");
  }

  @Override
  public Practice practice() {
    return practice;
  }

  @Override
  public Taken post(Optional<String> authorization, byte[] body) {
    Posted.Answer answer = panel.post(authorization, body);
    return new Taken(answer.status(), answer.words());
  }

  @Override
  public void close() {
    practice.act("end");
    looking.stop();
    panel.close();
  }
}
