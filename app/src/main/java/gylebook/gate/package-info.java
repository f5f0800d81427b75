/// Who may come in from the home network: codes, tokens, limits, and what this machine is called.
///
/// It knows addresses, names and its own small file. It must not know HTTP, pages or the book.
/// Front door: [gylebook.gate.Gate].
@NullMarked
package gylebook.gate;

import org.jspecify.annotations.NullMarked;
