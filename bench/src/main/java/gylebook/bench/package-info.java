/// Measurements: how fast the simulator and a forecast are, beside plain C and general solvers.
///
/// Knows everything of `core` and the oracles of its tests; nothing knows it. Front doors:
/// [gylebook.bench.Yardsticks] and [gylebook.bench.ForecastBench].
@NullMarked
package gylebook.bench;

import org.jspecify.annotations.NullMarked;
