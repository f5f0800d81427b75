package gylebook.recipe;

import java.util.List;
import java.util.Map;

/// A beer as somebody wants it.
///
/// @param name what it is called
/// @param wanted the beer in the brewer's own words: "dry, copper, best bitter"
/// @param invented whether it is a made-up example
/// @param aim what has to come out
/// @param grist malt and everything else that brings extract
/// @param liquor water, salts, acids
/// @param rests of the mash, in order
/// @param boil the boil
/// @param stands hot stands after it, in order
/// @param hops every addition
/// @param others finings, spice, nutrient
/// @param yeast the yeast
/// @param ferment the course of the ferment
/// @param pack how it is put up
/// @param notes free words
/// @param elsewhere what the recipe says of the rig it came from
/// @param kept what a foreign file held that has no place here, by its path, so that nothing is
///   lost
public record Recipe(
    String name,
    String wanted,
    boolean invented,
    Aim aim,
    List<Goods> grist,
    Liquor liquor,
    List<Rest> rests,
    Boil boil,
    List<Stand> stands,
    List<Hop> hops,
    List<Other> others,
    Yeast yeast,
    Ferment ferment,
    Pack pack,
    String notes,
    Elsewhere elsewhere,
    Map<String, String> kept) {

  /// Copies the lists; a hop that names a stand that is not there is refused.
  public Recipe {
    grist = List.copyOf(grist);
    rests = List.copyOf(rests);
    stands = List.copyOf(stands);
    hops = List.copyOf(hops);
    others = List.copyOf(others);
    kept = Map.copyOf(kept);
    for (Hop hop : hops) {
      if (hop.when() instanceof Hop.When.AtStand at
          && (at.standNumber() < 0 || at.standNumber() >= stands.size())) {
        throw new IllegalArgumentException(
            hop.name()
                + " goes in at stand "
                + (at.standNumber() + 1)
                + ", but the recipe has "
                + stands.size()
                + ". Maybe add the stand first.");
      }
    }
  }

  /// The same beer with another grist and other hops, as the planner scales them.
  public Recipe with(List<Goods> newGrist, List<Hop> newHops) {
    return new Recipe(
        name, wanted, invented, aim, newGrist, liquor, rests, boil, stands, newHops, others, yeast,
        ferment, pack, notes, elsewhere, kept);
  }

  /// The same beer aimed elsewhere.
  public Recipe withAim(Aim newAim) {
    return new Recipe(
        name, wanted, invented, newAim, grist, liquor, rests, boil, stands, hops, others, yeast,
        ferment, pack, notes, elsewhere, kept);
  }

  /// The same beer from another liquor.
  public Recipe withLiquor(Liquor newLiquor) {
    return new Recipe(
        name, wanted, invented, aim, grist, newLiquor, rests, boil, stands, hops, others, yeast,
        ferment, pack, notes, elsewhere, kept);
  }

  /// The same beer with other rests.
  public Recipe withRests(List<Rest> newRests) {
    return new Recipe(
        name, wanted, invented, aim, grist, liquor, newRests, boil, stands, hops, others, yeast,
        ferment, pack, notes, elsewhere, kept);
  }

  /// The same beer with another boil.
  public Recipe withBoil(Boil newBoil) {
    return new Recipe(
        name, wanted, invented, aim, grist, liquor, rests, newBoil, stands, hops, others, yeast,
        ferment, pack, notes, elsewhere, kept);
  }
}
