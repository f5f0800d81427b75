package gylebook.interchange;

import java.util.Arrays;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.ValueDeserializer;

/// One of a few choices, in a file. Older files do not know the question: theirs is the usual one.
final class ChoiceText<E extends Enum<E>> extends ValueDeserializer<E> {
  private final E usual;
  private final String no;

  /// @param no how the sentence begins that says a choice is none: `no lid is`
  ChoiceText(E usual, String no) {
    this.usual = usual;
    this.no = no;
  }

  @Override
  public E deserialize(JsonParser from, DeserializationContext context) {
    String name = from.getValueAsString("");
    return Arrays.stream(usual.getDeclaringClass().getEnumConstants())
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(no + " '" + name + "'"));
  }

  @Override
  public E getAbsentValue(DeserializationContext context) {
    return usual;
  }
}
