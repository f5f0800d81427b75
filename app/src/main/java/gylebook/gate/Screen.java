package gylebook.gate;

import java.time.Instant;

/// One screen that was let in.
///
/// @param screenId its name among us
/// @param name as it called itself
/// @param since when it was let in
/// @param seen when it last asked for something
/// @param tokenDigest the digest of its token; the token itself is kept nowhere here
public record Screen(
    String screenId, String name, Instant since, Instant seen, String tokenDigest) {}
