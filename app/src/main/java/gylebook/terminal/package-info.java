/// The command line: one word, one thing done, plain text or JSON out.
///
/// Knows: how to ask the core and how to write its answers for a terminal or a script; units are
/// converted here. Must not know: the other faces (pages, files of other programs, devices, the
/// store) and how anything is computed. Front door: the commands, each with its writers passed in.
@NullMarked
package gylebook.terminal;

import org.jspecify.annotations.NullMarked;
