package gylebook.interchange;

/// One thing a reader has to know about a file that was read or written.
///
/// @param path where in the file, outermost first: `hop_additions 2 > timing`
/// @param says what is guessed, lost, clamped or kept, in one sentence
public record Remark(String path, String says) {}
