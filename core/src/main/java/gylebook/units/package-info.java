/// The units people type and read, and the one unit inside.
///
/// It knows how a quantity is written and what it is inside. It must not know what anything is used
/// for. Front door: the public types of this room.
@NullMarked
package gylebook.units;

import org.jspecify.annotations.NullMarked;
