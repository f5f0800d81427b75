package gylebook.reckon;

import gylebook.science.Air;
import gylebook.science.Atmosphere;
import gylebook.science.Attenuation;
import gylebook.science.BedFlow;
import gylebook.science.BetaAmylase;
import gylebook.science.BitternessUnits;
import gylebook.science.BoilingRise;
import gylebook.science.Brandam2003;
import gylebook.science.Colour;
import gylebook.science.DimethylSulfide;
import gylebook.science.Evaporation;
import gylebook.science.Fermentability;
import gylebook.science.Gelatinisation;
import gylebook.science.HoldingPower;
import gylebook.science.HopAge;
import gylebook.science.HopIsomerisation;
import gylebook.science.HopStorage;
import gylebook.science.HopUtilisation;
import gylebook.science.HoseHeat;
import gylebook.science.Humulinone;
import gylebook.science.LatentHeat;
import gylebook.science.Levels;
import gylebook.science.MaltHeat;
import gylebook.science.Overflow;
import gylebook.science.Radiation;
import gylebook.science.Saturation;
import gylebook.science.Suction;
import gylebook.science.WallHeat;
import gylebook.science.WaterDensity;
import gylebook.science.WaterHeat;
import gylebook.science.WortDensity;
import gylebook.science.WortHeat;
import gylebook.science.WortViscosity;
import java.util.List;

/// Every class of the science room that offers a function. The core lists no files, so they are
/// named here; a test holds the list against the compiled classes.
final class Phenomena {
  private static final Class<?>[] ALL = {
    Air.class,
    Atmosphere.class,
    Attenuation.class,
    BedFlow.class,
    BetaAmylase.class,
    BitternessUnits.class,
    BoilingRise.class,
    Brandam2003.class,
    Colour.class,
    DimethylSulfide.class,
    Evaporation.class,
    Fermentability.class,
    Gelatinisation.class,
    HoldingPower.class,
    HopAge.class,
    HopIsomerisation.class,
    HopStorage.class,
    HopUtilisation.class,
    HoseHeat.class,
    Humulinone.class,
    LatentHeat.class,
    Levels.class,
    MaltHeat.class,
    Overflow.class,
    Radiation.class,
    Saturation.class,
    Suction.class,
    WallHeat.class,
    WaterDensity.class,
    WaterHeat.class,
    WortDensity.class,
    WortHeat.class,
    WortViscosity.class,
  };

  private Phenomena() {}

  static List<Class<?>> all() {
    return List.of(ALL);
  }
}
