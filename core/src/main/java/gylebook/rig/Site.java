package gylebook.rig;

import gylebook.science.Atmosphere;
import gylebook.science.Saturation;
import java.util.Optional;

/// Where the rig stands: air, water and height.
///
/// @param altitudeM height above the sea
/// @param stationKpa the day's pressure as a barometer on the spot shows it; taken before altitude
/// @param roomC air round the kettle
/// @param roomHumidityFrac relative humidity of that air
/// @param tapC cold water as it arrives
/// @param goodsC malt and everything dry, as it comes from the store
public record Site(
    Parameter altitudeM,
    Optional<Parameter> stationKpa,
    Parameter roomC,
    Parameter roomHumidityFrac,
    Parameter tapC,
    Parameter goodsC) {

  /// Where water boils there on a day of middling weather.
  public double waterBoilsC() {
    return Saturation.boilingC(
        stationKpa.map(Parameter::value).orElseGet(() -> Atmosphere.stationKpa(altitudeM.value())));
  }
}
