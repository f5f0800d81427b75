/// A brew as the fold of its entries: commands in, verdicts out.
///
/// It knows what may happen to a gyle and in which order, and must not know disks, clocks, screens
/// or the form of files. Front door: [gylebook.brewday.Book].
@NullMarked
package gylebook.brewday;

import org.jspecify.annotations.NullMarked;
