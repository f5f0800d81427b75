package gylebook.journal;

import java.time.Instant;

/// An event with its place in the book.
///
/// Truth is ordered by `seq`, physics by `at`: a late note has an `at` in the past and a new `seq`.
///
/// @param seq its number; grows through the whole book, without doubles
/// @param gyleId the gyle it belongs to; [Journal#HOUSE] for what belongs to none
/// @param at when it happened
/// @param noted when we heard of it
/// @param event what happened
public record Entry(long seq, String gyleId, Instant at, Instant noted, Event event) {}
