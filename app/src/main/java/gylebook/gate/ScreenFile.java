package gylebook.gate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/// Where the screens that were let in are kept: a small JSON file that only its owner may read.
///
/// It lies beside the book and not in it: the book keeps everything for ever and is carried about,
/// and whoever restores an old one must not let old screens in again.
public final class ScreenFile {
  private static final JsonMapper JSON = new JsonMapper();

  private final Path file;

  /// @param file where it lies; made when the first screen is let in
  public ScreenFile(Path file) {
    this.file = file;
  }

  /// What it holds. A file that cannot be understood lets nobody in and is put aside.
  List<Screen> read() {
    if (!Files.exists(file)) {
      return List.of();
    }
    try {
      List<Screen> screens = new ArrayList<>();
      for (JsonNode one : JSON.readTree(Files.readAllBytes(file)).get("screens")) {
        screens.add(
            new Screen(
                text(one, "screenId"),
                text(one, "name"),
                Instant.parse(text(one, "since")),
                Instant.parse(text(one, "seen")),
                text(one, "tokenDigest")));
      }
      return List.copyOf(screens);
    } catch (IOException | JacksonException | DateTimeException | NullPointerException _) {
      putAside();
      return List.of();
    }
  }

  private static String text(JsonNode one, String field) {
    return one.get(field).asString();
  }

  private void putAside() {
    try {
      Path aside = file.resolveSibling(file.getFileName() + ".unreadable");
      Files.move(file, aside, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException _) {
      // Then it is written over when the next screen is let in.
    }
  }

  /// Writes them down.
  ///
  /// @return why it could not be done
  Optional<String> write(List<Screen> screens) {
    ObjectNode whole = JSON.createObjectNode();
    ArrayNode all = whole.putArray("screens");
    for (Screen screen : screens) {
      all.addObject()
          .put("screenId", screen.screenId())
          .put("name", screen.name())
          .put("since", screen.since().toString())
          .put("seen", screen.seen().toString())
          .put("tokenDigest", screen.tokenDigest());
    }
    try {
      OwnFile.write(file, JSON.writeValueAsBytes(whole));
      return Optional.empty();
    } catch (IOException failure) {
      return Optional.of("'" + file + "' cannot be written: " + failure.getMessage());
    }
  }
}
