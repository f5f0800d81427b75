/// Single calculations: every equation of the science room, asked for by name.
///
/// Knows: which functions the science offers, what they ask for, how a typed amount becomes an
/// argument and a result becomes an amount to read. Must not know: how an equation works, files,
/// the terminal, pages. Front door: [Reckoner] finds a [Calculation], which gives a [Reckoning].
@NullMarked
package gylebook.reckon;

import org.jspecify.annotations.NullMarked;
