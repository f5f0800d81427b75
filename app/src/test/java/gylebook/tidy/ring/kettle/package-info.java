/// One half of a cycle that the rule has to find: it knows the hose.
@NullMarked
package gylebook.tidy.ring.kettle;

import org.jspecify.annotations.NullMarked;
