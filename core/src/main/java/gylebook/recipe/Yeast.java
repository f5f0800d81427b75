package gylebook.recipe;

import gylebook.units.Entered;
import java.util.Optional;

/// The yeast and how it is pitched.
///
/// @param name in the brewer's words
/// @param form dry, liquid, slurry ...
/// @param amountNumber packets (a count), mass (kg) or volume (L)
/// @param attenuationFrac apparent attenuation that its maker names; absent: the mash decides alone
/// @param pitchC wort when it goes in
public record Yeast(
    String name,
    String form,
    Entered amountNumber,
    Optional<Entered> attenuationFrac,
    Entered pitchC) {}
