/// One simulator of the whole hot day: state in, state out, the same from the same seed.
///
/// The state is conserved masses and energy; volumes and gravities are views of it. A day is a list
/// of [gylebook.simulate.Action]s; an ensemble is many days with different luck, one day a special
/// case. Front door: [gylebook.simulate.Simulator], [gylebook.simulate.Ensemble],
/// [gylebook.simulate.Action]. It must not know plans, files or clocks.
@NullMarked
package gylebook.simulate;

import org.jspecify.annotations.NullMarked;
