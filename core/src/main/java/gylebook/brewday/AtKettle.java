package gylebook.brewday;

import java.time.Instant;

/// The one screen whose hands count; every other one watches.
///
/// @param screen the name it gave itself, of no meaning to people
/// @param called what people call it
/// @param since when it was taken there
public record AtKettle(String screen, String called, Instant since) {}
