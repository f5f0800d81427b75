package gylebook.tidy.ring.kettle;

import gylebook.tidy.ring.hose.Inlet;

/// Leads into the hose.
public record Outlet(Inlet next) {}
