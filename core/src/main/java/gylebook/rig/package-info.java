/// What the rig is: kettle, element, bag, loop, probes, chiller, the place it stands in.
///
/// Every number is a [gylebook.rig.Parameter]: value, doubt and origin. The room knows no recipe
/// and moves nothing; it says what is there and what is only assumed. Front door:
/// [gylebook.rig.Rig], [gylebook.rig.Newcomer].
@NullMarked
package gylebook.rig;

import org.jspecify.annotations.NullMarked;
