/// Recipe and rig in; a plan with a forecast in bands out, or what stands in the way.
///
/// The planner finds the inputs that reach the wanted beer by running the simulator; it never
/// reckons a figure that the simulator does not. Front door: [gylebook.plan.Planner],
/// [gylebook.plan.Planned], [gylebook.plan.Forecast].
@NullMarked
package gylebook.plan;

import org.jspecify.annotations.NullMarked;
