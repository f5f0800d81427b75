/// The units people type and read, and the one unit inside.
///
/// Knows: what can be measured in a brewery, how each unit turns into the inside one, how people
/// write amounts, how a name in the code spells its unit. Must not know: brewing physics, rigs,
/// recipes, files, pages. Front door: [Typed] reads what somebody typed, [ReadingUnits] writes it
/// the way they like to read it, [Unit] converts, [UnitName] reads the unit out of a name.
@NullMarked
package gylebook.units;

import org.jspecify.annotations.NullMarked;
