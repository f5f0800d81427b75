/// The other half of the cycle: it knows the kettle.
@NullMarked
package gylebook.tidy.ring.hose;

import org.jspecify.annotations.NullMarked;
