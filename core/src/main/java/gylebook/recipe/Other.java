package gylebook.recipe;

import gylebook.units.Entered;

/// Anything else that goes in: finings, spice, nutrient.
///
/// @param name in the brewer's words
/// @param kind what it is for, in plain words
/// @param amountNumber mass (kg), volume (L) or a count
/// @param when at which point of the gyle
public record Other(String name, String kind, Entered amountNumber, Hop.When when) {}
