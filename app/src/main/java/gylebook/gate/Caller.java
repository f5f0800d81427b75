package gylebook.gate;

import java.net.InetAddress;
import java.util.Optional;

/// Who asks, and for what kind of thing.
///
/// @param remote where the connection comes from
/// @param host how the caller called this machine, without the port; may be empty
/// @param secure whether the line is encrypted
/// @param changes whether it asks for a change
/// @param token what it shows
public record Caller(
    InetAddress remote,
    String host,
    boolean secure,
    boolean changes,
    Errand errand,
    Optional<String> token) {
  /// The kinds of things that are asked for.
  public enum Errand {
    /// Pages of the book and what they fetch.
    BOOK,
    /// The page where a screen asks to be let in, and what it is drawn with.
    DOORSTEP,
    /// A code that is tried.
    CODE,
    /// What a page is drawn with, and the home's own certificate: nothing in it is secret.
    OPEN,
    /// Readings of a board, which have a token of their own.
    READING
  }
}
