package gylebook.web;

import gylebook.brewday.Book;
import gylebook.brewday.Gyle;
import gylebook.telling.Filled;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// What a request says, and how it is answered: JSON with plain words in it.
final class Said {
  static final JsonMapper JSON = new JsonMapper();

  private static final HttpStatus UNCLEAR = HttpStatus.UNPROCESSABLE_CONTENT;

  private Said() {}

  /// The gyle a request is about; answers the request when there is none.
  static Optional<Gyle> gyle(Desk desk, Context context) {
    Optional<Gyle> gyle = desk.book().gyle(context.pathParam("gyleId"));
    if (gyle.isEmpty()) {
      GyleRoutes.notThere(context);
    }
    return gyle;
  }

  /// The words of the body: one flat JSON object of texts.
  static Map<String, String> words(Context context) {
    Map<String, String> words = new HashMap<>();
    try {
      JsonNode body = JSON.readTree(context.body());
      if (!body.isObject()) {
        throw new BadRequestResponse("The body must be a JSON object.");
      }
      body.properties().forEach(field -> words.put(field.getKey(), field.getValue().asString("")));
    } catch (JacksonException failure) {
      throw new BadRequestResponse("The body is not JSON: " + failure.getOriginalMessage());
    }
    return words;
  }

  /// The last entry that the sender had seen.
  static long seen(Context context) {
    String seen = Optional.ofNullable(context.header("Gyle-Seen")).orElse("");
    try {
      return Long.parseLong(seen);
    } catch (NumberFormatException _) {
      throw new BadRequestResponse(
          "The header Gyle-Seen is '" + seen + "'; it must be the number of an entry.");
    }
  }

  /// The sender's own name for this note.
  static String once(Context context) {
    return Optional.ofNullable(context.header("Gyle-Once")).orElse("");
  }

  static void unclear(Context context, Filled.Unclear<?> unclear) {
    json(
        context,
        UNCLEAR,
        Map.of("what", unclear.what(), "value", unclear.value(), "maybe", unclear.maybe()));
  }

  static void answer(
      Context context, Desk.Answer answer, Function<Book, Map<String, Object>> then) {
    switch (answer) {
      case Desk.Answer.Written(Book book) -> json(context, HttpStatus.OK, then.apply(book));
      case Desk.Answer.Refused(String because, String maybe) ->
          json(context, UNCLEAR, Map.of("what", because, "value", "", "maybe", maybe));
      case Desk.Answer.Overtaken(Book book) -> {
        Map<String, Object> now = new HashMap<>(then.apply(book));
        now.put("what", "This page was changed on another screen.");
        now.put("maybe", "Look at it as it is now, then change it again.");
        json(context, HttpStatus.CONFLICT, now);
      }
      case Desk.Answer.NotSaved(String says) ->
          json(
              context,
              HttpStatus.SERVICE_UNAVAILABLE,
              Map.of("what", "Not saved. " + says, "maybe", "Nothing is lost here: try again."));
    }
  }

  static void json(Context context, HttpStatus status, Map<String, ?> body) {
    context.status(status);
    context.contentType("application/json; charset=utf-8");
    context.result(JSON.writeValueAsString(body));
  }
}
