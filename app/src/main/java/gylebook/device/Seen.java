package gylebook.device;

import java.util.Map;

/// One thing that was seen at a place where an instrument is looked for.
///
/// @param group what it is one of: all the byte orders of one kind of number
/// @param where the topic, the chip, the byte order
/// @param says what stands there, as one can show it
/// @param fits whether it is the number that the controller is said to show
/// @param fill the fields of a form that choosing it fills
public record Seen(
    String group, String where, String says, boolean fits, Map<String, String> fill) {}
