/// The units people type and read, and the one unit inside.
@NullMarked
package gylebook.units;

import org.jspecify.annotations.NullMarked;
