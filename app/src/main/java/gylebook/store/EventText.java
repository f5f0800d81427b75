package gylebook.store;

import gylebook.journal.Event;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/// Events as JSON and back.
final class EventText {
  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .build();

  private EventText() {}

  static String body(Event event) {
    return JSON.writeValueAsString(event);
  }

  /// Reads what stands in the file.
  ///
  /// @throws IllegalStateException when this build does not know the form: the book was written by
  ///   a newer one, and nothing of it may be guessed
  static Event event(String type, int version, String body) {
    EventForm form =
        EventForm.of(type, version)
            .orElseThrow(
                () ->
                    new IllegalStateException(
                        "The book holds an entry '"
                            + type
                            + "' of version "
                            + version
                            + ", which this build does not know. Open it with a newer Gylebook."));
    try {
      return JSON.readValue(body, form.form());
    } catch (JacksonException failure) {
      throw new IllegalStateException(
          "The book holds an entry '" + type + "' that cannot be read: " + failure.getMessage(),
          failure);
    }
  }
}
