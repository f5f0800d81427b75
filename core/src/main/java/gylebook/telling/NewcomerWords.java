package gylebook.telling;

import gylebook.rig.Newcomer;
import gylebook.units.AnyUnit;
import gylebook.units.ReadingUnits;
import java.util.List;

/// What a newcomer is asked of their rig, as a few sentences; two minutes are enough.
@AnyUnit("shows amounts of every quantity")
public final class NewcomerWords {
  private NewcomerWords() {}

  /// The questions, with what was answered so far in their places.
  public static List<Section> of(Newcomer newcomer, ReadingUnits units) {
    return new Draft(newcomer, units)
        .section("Your rig, in two minutes")
        .say(
            "I call it {name|name of the rig}: a kettle that holds {kettleL|what the kettle holds to"
                + " the rim} to the rim, with an element of {plateW|power on the plate} at"
                + " {plateV|voltage on the plate} on its plate; the socket gives"
                + " {mainsV|mains voltage}. I live {altitudeM|height above the sea} above the sea.")
        .say(
            "A pump brings the wort back over the bag: {pump|whether there is a pump}; its hose is"
                + " {hoseM|length of the hose} long and {boreM|bore of the hose} inside. The"
                + " thermometer that steers sits {place|where the thermometer sits}.")
        .say(
            "I press the bag when it is out: {squeezed|whether the bag is squeezed}; a hoist lifts"
                + " it: {hoist|whether there is a hoist}.")
        .say(
            "I cool with a chiller of the kind {chiller|kind of chiller}, into a fermenter that"
                + " holds {fermenterL|what the fermenter holds} to the brim and a keg that holds"
                + " {kegL|what the keg holds}.")
        .sections();
  }
}
