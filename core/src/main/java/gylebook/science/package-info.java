/// Plain functions, one class per phenomenon: numbers in, number out, no state and no clock.
///
/// It knows physics and chemistry, each equation with its range and its source. It must not know
/// any rig, recipe or brew day. Front door: every public class; [Source] says where each comes
/// from.
@NullMarked
package gylebook.science;

import org.jspecify.annotations.NullMarked;
