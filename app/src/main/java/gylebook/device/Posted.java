package gylebook.device;

import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/// The door for readings that come by HTTP POST. It knows no HTTP: whoever has the route hands in
/// the `Authorization` header and the body, and answers with the status given back.
public final class Posted {
  /// The longest body that is read; a route may stop reading behind it.
  public static final int BODY_BYTES_MOST = Received.BYTES_MOST;

  private static final String SCHEME = "bearer ";

  private final List<Board> boards;
  private final Watch watch;

  /// What to answer: an HTTP status and a sentence for whoever programs the board.
  public record Answer(int status, String words) {}

  /// Lets these boards in and hands on what they measured.
  public Posted(List<Board> boards, InstantSource clock, Consumer<Heard> ear) {
    this.boards = List.copyOf(boards);
    this.watch = new Watch(clock, ear);
  }

  /// Takes what a board posted.
  ///
  /// 204 taken; 400 taken as garbled, nothing in it could be read; 401 no or an unknown token; 413
  /// too long.
  public Answer take(Optional<String> authorization, byte[] body) {
    Optional<Board> board = authorization.flatMap(this::owner);
    if (board.isEmpty()) {
      return new Answer(401, "Send 'Authorization: Bearer' and the token of this board.");
    }
    if (body.length > BODY_BYTES_MOST) {
      return new Answer(413, "The body is longer than " + BODY_BYTES_MOST + " bytes.");
    }
    List<Decoded> all = new ArrayList<>();
    for (Board.Source source : board.get().sources()) {
      for (Decoded one : source.payload().decode(source.instrument(), body, watch.now())) {
        watch.hear(source.instrument(), one);
        all.add(one);
      }
    }
    return answer(all);
  }

  private Optional<Board> owner(String authorization) {
    if (!authorization.regionMatches(true, 0, SCHEME, 0, SCHEME.length())) {
      return Optional.empty();
    }
    String token = authorization.substring(SCHEME.length()).strip();
    // Every board is asked, so that the time does not tell which one it is.
    List<Board> owners = boards.stream().filter(board -> board.owns(token)).toList();
    return owners.stream().findFirst();
  }

  private static Answer answer(List<Decoded> all) {
    if (all.isEmpty()) {
      return new Answer(400, "There is no reading in it of an instrument of this board.");
    }
    return all.stream()
        .filter(one -> one instanceof Decoded.Value)
        .findFirst()
        .map(_ -> new Answer(204, ""))
        .orElseGet(() -> new Answer(400, why(all.getFirst())));
  }

  private static String why(Decoded decoded) {
    return decoded instanceof Decoded.Garbled(String text, String why)
        ? "What was received " + why + ": " + text
        : "";
  }
}
