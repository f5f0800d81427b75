package gylebook.science;

import gylebook.plan.Planner; // FAULT ladder

final class UpTheLadder {}
