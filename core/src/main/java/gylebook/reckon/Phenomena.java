package gylebook.reckon;

import gylebook.science.Absorption;
import gylebook.science.Acid;
import gylebook.science.Air;
import gylebook.science.Atmosphere;
import gylebook.science.AtomicWeights;
import gylebook.science.Attenuation;
import gylebook.science.BedFlow;
import gylebook.science.BetaAmylase;
import gylebook.science.BitternessUnits;
import gylebook.science.Boil;
import gylebook.science.BoilingRise;
import gylebook.science.Brandam2003;
import gylebook.science.BrewhouseYield;
import gylebook.science.CarbonateWater;
import gylebook.science.Colour;
import gylebook.science.Dilution;
import gylebook.science.DimethylSulfide;
import gylebook.science.Dissociation;
import gylebook.science.Evaporation;
import gylebook.science.ExtractMass;
import gylebook.science.Fermentability;
import gylebook.science.FirstWort;
import gylebook.science.Gelatinisation;
import gylebook.science.HoldingPower;
import gylebook.science.HopAge;
import gylebook.science.HopIsomerisation;
import gylebook.science.HopStorage;
import gylebook.science.HopUtilisation;
import gylebook.science.HoseHeat;
import gylebook.science.Humulinone;
import gylebook.science.Hydrometer;
import gylebook.science.LatentHeat;
import gylebook.science.Lauter;
import gylebook.science.Levels;
import gylebook.science.MaltHeat;
import gylebook.science.MashPh;
import gylebook.science.MashVolume;
import gylebook.science.NbsC440Scale;
import gylebook.science.Overflow;
import gylebook.science.PlatoScale;
import gylebook.science.PotentialExtract;
import gylebook.science.Radiation;
import gylebook.science.ResidualAlkalinity;
import gylebook.science.Salt;
import gylebook.science.Saturation;
import gylebook.science.ShortPlatoScale;
import gylebook.science.Shrinkage;
import gylebook.science.SpecificGravity;
import gylebook.science.Strike;
import gylebook.science.Suction;
import gylebook.science.TapWater;
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
    Absorption.class,
    Acid.class,
    Air.class,
    Atmosphere.class,
    AtomicWeights.class,
    Attenuation.class,
    BedFlow.class,
    BetaAmylase.class,
    BitternessUnits.class,
    Boil.class,
    BoilingRise.class,
    Brandam2003.class,
    BrewhouseYield.class,
    CarbonateWater.class,
    Colour.class,
    Dilution.class,
    DimethylSulfide.class,
    Dissociation.class,
    Evaporation.class,
    ExtractMass.class,
    Fermentability.class,
    FirstWort.class,
    Gelatinisation.class,
    HoldingPower.class,
    HopAge.class,
    HopIsomerisation.class,
    HopStorage.class,
    HopUtilisation.class,
    HoseHeat.class,
    Humulinone.class,
    Hydrometer.class,
    LatentHeat.class,
    Lauter.class,
    Levels.class,
    MaltHeat.class,
    MashPh.class,
    MashVolume.class,
    NbsC440Scale.class,
    Overflow.class,
    PlatoScale.class,
    PotentialExtract.class,
    Radiation.class,
    ResidualAlkalinity.class,
    Salt.class,
    Saturation.class,
    ShortPlatoScale.class,
    Shrinkage.class,
    SpecificGravity.class,
    Strike.class,
    Suction.class,
    TapWater.class,
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
