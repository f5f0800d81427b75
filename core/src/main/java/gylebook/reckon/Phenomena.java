package gylebook.reckon;

import gylebook.science.Absorption;
import gylebook.science.Acid;
import gylebook.science.Air;
import gylebook.science.Alcohol;
import gylebook.science.AlcoholShortcut;
import gylebook.science.AlphaSolubility;
import gylebook.science.Apatite;
import gylebook.science.Atmosphere;
import gylebook.science.AtomicWeights;
import gylebook.science.Attenuation;
import gylebook.science.Balling;
import gylebook.science.BedFlow;
import gylebook.science.BeerAge;
import gylebook.science.BeerGas;
import gylebook.science.BeerRefractometer;
import gylebook.science.BetaAmylase;
import gylebook.science.BitternessUnits;
import gylebook.science.Boil;
import gylebook.science.BoilingRise;
import gylebook.science.Brandam2003;
import gylebook.science.Breaker;
import gylebook.science.BrewhouseYield;
import gylebook.science.Calibration;
import gylebook.science.CarbonDioxide;
import gylebook.science.CarbonateWater;
import gylebook.science.Carbonation;
import gylebook.science.CarbonationTime;
import gylebook.science.ChiSquareGate;
import gylebook.science.Chiller;
import gylebook.science.ChillerFilms;
import gylebook.science.ChipThermometer;
import gylebook.science.Circuit;
import gylebook.science.Colour;
import gylebook.science.ControlLoop;
import gylebook.science.ControllerTuning;
import gylebook.science.Cutaia2009;
import gylebook.science.DeAndresToro1998;
import gylebook.science.DegreeOfFermentation;
import gylebook.science.Diacetyl;
import gylebook.science.Dilution;
import gylebook.science.DimethylSulfide;
import gylebook.science.Dissociation;
import gylebook.science.Doubt;
import gylebook.science.Drain;
import gylebook.science.DraughtLine;
import gylebook.science.DryHop;
import gylebook.science.DryHopBitterness;
import gylebook.science.Element;
import gylebook.science.EthanolWater;
import gylebook.science.Evaporation;
import gylebook.science.ExtractMass;
import gylebook.science.Fermentability;
import gylebook.science.FermentationCurve;
import gylebook.science.FermentationFit;
import gylebook.science.FermentationHeat;
import gylebook.science.FermentationState;
import gylebook.science.FirstWort;
import gylebook.science.FoodEnergy;
import gylebook.science.ForecastScore;
import gylebook.science.GeeRamirez1988;
import gylebook.science.Gelatinisation;
import gylebook.science.Hardness;
import gylebook.science.HenryIapws2004;
import gylebook.science.HoldingPower;
import gylebook.science.HopAge;
import gylebook.science.HopIsomerisation;
import gylebook.science.HopStorage;
import gylebook.science.HopUtilisation;
import gylebook.science.HoseHeat;
import gylebook.science.Humulinone;
import gylebook.science.Hydrometer;
import gylebook.science.IsoAlphaAcidity;
import gylebook.science.KegPressure;
import gylebook.science.KettleDip;
import gylebook.science.LatentHeat;
import gylebook.science.Lauter;
import gylebook.science.Levels;
import gylebook.science.LiftFrequency;
import gylebook.science.Lifting;
import gylebook.science.MaltHeat;
import gylebook.science.MaltOffset;
import gylebook.science.MashPh;
import gylebook.science.MashThickness;
import gylebook.science.MashVolume;
import gylebook.science.Mixing;
import gylebook.science.NbsC440Scale;
import gylebook.science.Ntc;
import gylebook.science.Overflow;
import gylebook.science.Oxygen;
import gylebook.science.Pasteurisation;
import gylebook.science.Pitching;
import gylebook.science.PlatoScale;
import gylebook.science.PotentialExtract;
import gylebook.science.ProbeLagFit;
import gylebook.science.Pt100;
import gylebook.science.PumpNeed;
import gylebook.science.Purge;
import gylebook.science.Radiation;
import gylebook.science.RateLearning;
import gylebook.science.RefractometerRegression;
import gylebook.science.RefractometerWarmth;
import gylebook.science.RelayTest;
import gylebook.science.ResidualAlkalinity;
import gylebook.science.RoomGas;
import gylebook.science.Salt;
import gylebook.science.SaltDoses;
import gylebook.science.Sanitiser;
import gylebook.science.Saturation;
import gylebook.science.ScalarKalman;
import gylebook.science.Scald;
import gylebook.science.SealedPackage;
import gylebook.science.SensorLag;
import gylebook.science.ShortPlatoScale;
import gylebook.science.Shrinkage;
import gylebook.science.SpecificGravity;
import gylebook.science.Starter;
import gylebook.science.StemConduction;
import gylebook.science.StepTest;
import gylebook.science.Strike;
import gylebook.science.Suction;
import gylebook.science.Tabarie;
import gylebook.science.TapWater;
import gylebook.science.Thermocouple;
import gylebook.science.Thermometers;
import gylebook.science.TubeFilm;
import gylebook.science.WallHeat;
import gylebook.science.WaterDensity;
import gylebook.science.WaterHeat;
import gylebook.science.WaterViscosity;
import gylebook.science.WortDensity;
import gylebook.science.WortHeat;
import gylebook.science.WortViscosity;
import gylebook.science.YeastAge;
import java.util.List;

/// Every class of the science room that offers a function. The core lists no files, so they are
/// named here; a test holds the list against the compiled classes.
final class Phenomena {
  private static final Class<?>[] ALL = {
    Absorption.class,
    Acid.class,
    Air.class,
    Alcohol.class,
    AlcoholShortcut.class,
    AlphaSolubility.class,
    Apatite.class,
    Atmosphere.class,
    AtomicWeights.class,
    Attenuation.class,
    Balling.class,
    BedFlow.class,
    BeerAge.class,
    BeerGas.class,
    BeerRefractometer.class,
    BetaAmylase.class,
    BitternessUnits.class,
    Boil.class,
    BoilingRise.class,
    Brandam2003.class,
    Breaker.class,
    BrewhouseYield.class,
    Calibration.class,
    CarbonDioxide.class,
    CarbonateWater.class,
    Carbonation.class,
    CarbonationTime.class,
    ChiSquareGate.class,
    Chiller.class,
    ChillerFilms.class,
    ChipThermometer.class,
    Circuit.class,
    Colour.class,
    ControlLoop.class,
    ControllerTuning.class,
    Cutaia2009.class,
    DeAndresToro1998.class,
    DegreeOfFermentation.class,
    Diacetyl.class,
    Dilution.class,
    DimethylSulfide.class,
    Dissociation.class,
    Doubt.class,
    Drain.class,
    DraughtLine.class,
    DryHop.class,
    DryHopBitterness.class,
    Element.class,
    EthanolWater.class,
    Evaporation.class,
    ExtractMass.class,
    Fermentability.class,
    FermentationCurve.class,
    FermentationFit.class,
    FermentationHeat.class,
    FermentationState.class,
    FirstWort.class,
    FoodEnergy.class,
    ForecastScore.class,
    GeeRamirez1988.class,
    Gelatinisation.class,
    Hardness.class,
    HenryIapws2004.class,
    HoldingPower.class,
    HopAge.class,
    HopIsomerisation.class,
    HopStorage.class,
    HopUtilisation.class,
    HoseHeat.class,
    Humulinone.class,
    Hydrometer.class,
    IsoAlphaAcidity.class,
    KegPressure.class,
    KettleDip.class,
    LatentHeat.class,
    Lauter.class,
    Levels.class,
    LiftFrequency.class,
    Lifting.class,
    MaltHeat.class,
    MaltOffset.class,
    MashPh.class,
    MashThickness.class,
    MashVolume.class,
    Mixing.class,
    NbsC440Scale.class,
    Ntc.class,
    Overflow.class,
    Oxygen.class,
    Pasteurisation.class,
    Pitching.class,
    PlatoScale.class,
    PotentialExtract.class,
    ProbeLagFit.class,
    Pt100.class,
    PumpNeed.class,
    Purge.class,
    Radiation.class,
    RateLearning.class,
    RefractometerRegression.class,
    RefractometerWarmth.class,
    RelayTest.class,
    ResidualAlkalinity.class,
    RoomGas.class,
    Salt.class,
    SaltDoses.class,
    Sanitiser.class,
    Saturation.class,
    ScalarKalman.class,
    Scald.class,
    SealedPackage.class,
    SensorLag.class,
    ShortPlatoScale.class,
    Shrinkage.class,
    SpecificGravity.class,
    Starter.class,
    StemConduction.class,
    StepTest.class,
    Strike.class,
    Suction.class,
    Tabarie.class,
    TapWater.class,
    Thermocouple.class,
    Thermometers.class,
    TubeFilm.class,
    WallHeat.class,
    WaterDensity.class,
    WaterHeat.class,
    WaterViscosity.class,
    WortDensity.class,
    WortHeat.class,
    WortViscosity.class,
    YeastAge.class,
  };

  private Phenomena() {}

  static List<Class<?>> all() {
    return List.of(ALL);
  }
}
