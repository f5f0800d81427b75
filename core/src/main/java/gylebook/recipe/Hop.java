package gylebook.recipe;

import gylebook.units.Entered;
import java.util.Optional;

/// One addition of hops.
///
/// @param name the variety
/// @param lot the brewer's own mark; may be empty
/// @param form leaf or pellet
/// @param massG how much
/// @param alphaFrac alpha acid, as the packet says
/// @param when at which point of the gyle
/// @param agedSec since that alpha acid was measured; absent: it is taken as it stands
/// @param storedC where they were kept meanwhile; absent: nobody knows
/// @param wrap how they are wrapped
public record Hop(
    String name,
    String lot,
    Form form,
    Entered massG,
    Entered alphaFrac,
    When when,
    Optional<Entered> agedSec,
    Optional<Entered> storedC,
    Wrap wrap) {

  /// An addition whose packet is taken at its word.
  public Hop(String name, String lot, Form form, Entered massG, Entered alphaFrac, When when) {
    this(name, lot, form, massG, alphaFrac, when, Optional.empty(), Optional.empty(), Wrap.SEALED);
  }

  /// How hops are wrapped.
  public enum Wrap {
    SEALED("in a sealed packet"),
    OPENED("in an opened packet, pressed flat"),
    LOOSE("in a loose bag");

    private final String words;

    Wrap(String words) {
      this.words = words;
    }

    /// The same in words for the page.
    public String words() {
      return words;
    }
  }

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
    return new Hop(name, lot, form, newMassG, alphaFrac, when, agedSec, storedC, wrap);
  }
}
