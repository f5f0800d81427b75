package gylebook.recipe;

import java.util.OptionalDouble;

/// What a recipe says of the rig it was written for, and what it claims comes out there.
///
/// @param brewhouseFrac extract in the fermenter per extract in the goods
/// @param lengthL into the fermenter
/// @param preBoilL before the boil
/// @param boilSec length of the boil
/// @param evaporationLPerHr driven off there
/// @param strengthPlato claimed before fermentation
/// @param finalPlato claimed after fermentation
/// @param bitternessMgPerL claimed
/// @param bitternessMethod by which formula; empty when not said
/// @param colourEbc claimed
public record Elsewhere(
    OptionalDouble brewhouseFrac,
    OptionalDouble lengthL,
    OptionalDouble preBoilL,
    OptionalDouble boilSec,
    OptionalDouble evaporationLPerHr,
    OptionalDouble strengthPlato,
    OptionalDouble finalPlato,
    OptionalDouble bitternessMgPerL,
    String bitternessMethod,
    OptionalDouble colourEbc) {

  /// Nothing said.
  public static Elsewhere silent() {
    OptionalDouble none = OptionalDouble.empty();
    return new Elsewhere(none, none, none, none, none, none, none, none, "", none);
  }
}
