package gylebook.recipe;

import gylebook.units.Entered;

/// One addition of hops.
///
/// @param name the variety
/// @param lot the brewer's own mark; may be empty
/// @param form leaf or pellet
/// @param massG how much
/// @param alphaFrac alpha acid, as the packet says
/// @param when at which point of the gyle
public record Hop(String name, String lot, Form form, Entered massG, Entered alphaFrac, When when) {

  /// Leaf or pellet.
  public enum Form {
    LEAF("leaf"),
    WET_LEAF("fresh leaf"),
    PELLET("pellets"),
    PLUG("plugs"),
    POWDER("powder"),
    EXTRACT("extract");

    private final String words;

    Form(String words) {
      this.words = words;
    }

    /// The same in words for the page.
    public String words() {
      return words;
    }
  }

  /// At which point of the gyle something is added.
  public sealed interface When {
    /// With the goods.
    record InMash() implements When {}

    /// When the bag is out, before the boil.
    record FirstWort() implements When {}

    /// With so much of the boil left.
    ///
    /// @param leftSec time before flame-out
    record InBoil(Entered leftSec) implements When {}

    /// At flame-out; what follows is whatever the wort goes through.
    record FlameOut() implements When {}

    /// At the start of a stand.
    ///
    /// @param standNumber which stand, counted from 0
    record AtStand(int standNumber) implements When {}

    /// In the fermenter.
    ///
    /// @param afterSec after pitching
    /// @param holdSec how long
    record Dry(Entered afterSec, Entered holdSec) implements When {}
  }

  /// The same addition with another mass.
  public Hop withMass(Entered newMassG) {
    return new Hop(name, lot, form, newMassG, alphaFrac, when);
  }
}
