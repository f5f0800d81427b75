package gylebook.reckon;

/// Which typed amount was taken for which input.
///
/// @param input what it was taken for
/// @param typed as it was typed
/// @param value as it goes into the calculation: the same, or what it is worth there
/// @param how in words what was done to it; empty when nothing was
public record Taken(Input input, String typed, String value, String how) {}
