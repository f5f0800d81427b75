/// Readings against the belief: what a brew under way is held to be, and what the instruments are
/// worth.
///
/// Knows: ensemble filters, instruments with bias, gain and lag, discrete doubts, tests that would
/// settle them. It moves nothing by itself: the simulator moves the brew, the readings correct it.
/// It must not know journals, pages, devices, clocks or who typed a reading.
@NullMarked
package gylebook.estimate;

import org.jspecify.annotations.NullMarked;
