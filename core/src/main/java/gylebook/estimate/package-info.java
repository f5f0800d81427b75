/// Readings against the belief: what a brew under way is held to be, and what the instruments are
/// worth.
///
/// Knows: ensemble filters, instruments with bias, gain and lag, discrete doubts, tests that would
/// settle them. It moves nothing by itself: the simulator moves the brew, the readings correct it.
/// It must not know journals, pages, devices, clocks or who typed a reading. Front door:
/// [gylebook.estimate.Belief] takes a [gylebook.estimate.Reading] and gives a
/// [gylebook.estimate.Weighed]; [gylebook.estimate.Witnesses] says which instrument to trust;
/// [gylebook.estimate.Suspicion] weighs what may be wrong with the day; [gylebook.estimate.Levers]
/// says what can still be done about a day off its plan; [gylebook.estimate.LiveGuards] says what
/// goes wrong at the kettle; [gylebook.estimate.Hindsight] looks at a finished day again, and
/// [gylebook.estimate.Findings] are what it says of the rig.
@NullMarked
package gylebook.estimate;

import org.jspecify.annotations.NullMarked;
