package gylebook.reckon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// What brewers say for a calculation. The names of the calculations are words as well; here stand
/// only the ways of asking that no name has in it.
final class Phrases {
  /// Phrases, then the calculations they may mean, the likeliest first.
  private static final String SAID =
      """
      boiling point, boils, boil at, water boil, saturation temperature: \
      boiling-point wort-boiling-point
      vapour pressure, vapor pressure, water boils at, boils at pressure: \
      saturation-pressure boiling-point
      boiling point elevation, boiling point rise, boiling rise, point elevation: \
      boiling-rise
      boiling at depth, boil at depth: boiling-rise-at-depth
      latent heat, heat of evaporation: latent-heat latent-heat-of-the-boil
      specific heat of wort, heat capacity of wort: wort-heat-capacity
      specific heat of malt, heat capacity of malt: malt-heat-capacity malt-heat-ratio
      specific heat of water, heat capacity of water: water-heat-capacity
      slaking, slaking heat, heat of wetting, wetting heat: malt-wetting-heat malt-wetting-rise
      wort held, held wort, squeezed: spent-grain-wort
      trub, break: break-loss
      best mash temperature, best rest: best-single-rest
      attenuation at mash, attenuation at mash temperature, attenuation mash: \
      attenuation-limit attenuation-after-rest
      sugars, sugar spectrum: attenuation-from-sugars
      pkw: water-pk
      hardness, hardness of water: water-hardness alkalinity-from-degrees alkalinity
      alkalinity: alkalinity alkalinity-from-degrees residual-alkalinity
      alkalinity consumed at, alkalinity used at: alkalinity-used-at-ph
      dh, german degrees: alkalinity-from-degrees
      calcium chloride, baking soda, chalk, slaked lime, lime, table salt, magnesium chloride: salt-ions
      ph at mash temperature, ph hot, ph reads hot, hot ph: ph-read-hot
      conductivity, conductance: salted-water
      gypsum, epsom salt, epsom: salt-ions
      hard water, preboil: liquor-heated
      isomerisation, isomerization: iso-alpha-formed hop-isomerisation-rate
      whirlpool, hop stand, flameout, flame out: \
      iso-alpha-formed iso-alpha-in-even-cooling iso-alpha-in-free-cooling iso-alpha-of-addition
      first wort hop, first wort hops, first wort hopping: first-wort-hop-iso-alpha
      alpha solubility, solubility of alpha, large addition, hopping rate: iso-alpha-of-large-addition
      gypsum solubility, gypsum dissolve, gypsum dissolves: salted-water
      hydroxyapatite, calcium phosphate, phosphate precipitation: apatite-index
      iso alpha loss, iso alpha lost: iso-alpha-lost
      liquor ph: liquor-ph-with-lactic-acid
      iso alpha breakdown, sour wort, kettle sour: iso-alpha-lost-by-ph iso-alpha-lost
      humulinone: dry-hop-bitterness
      smm, smm half life, half life of smm, dms half life, half life of dms: precursor-half-life precursor-half-life-from-boil
      mcu, malt colour units: beer-colour malt-colour-units
      colour of malt, colour from malt, color from malt: beer-colour-of-malt
      turbidity, haze: colour-haze
      lauter efficiency, sparge: lauter rinse
      density of alcohol, ethanol density: alcohol-water-density
      sg of ethanol, gravity of alcohol, sg of alcohol: alcohol-gravity
      vol to mass, volume to mass: alcohol-by-mass
      original gravity from alcohol: original-extract
      real extract: alcohol
      rdf, real degree, real degree of fermentation: attenuation-real attenuation-real-corrected
      pitch lager, pitch ale, lager yeast, ale yeast, yeast for, pitching rate lager, pitching rate ale, \
      lager, ale: cells-to-pitch-by-habit
      yeast needed, how much yeast: cells-to-pitch dried-yeast-for-wort
      fermentation take, how long does fermentation: ferment-time
      stuck, stuck fermentation, fermentation stuck: ferment-state ferment-done
      fermentation done, fermentation over, ferment finished, is it done: ferment-done ferment-state
      ferment later, what will it read: ferment-ahead
      where will it end, will it end, ferment readings, fermentation readings: ferment-fit
      fermentation warming, fermentation warms: fermentation-rise fermentation-above-room
      warmer than the room, ferment above room: fermentation-above-room
      oxygen demand, oxygen need: oxygen-demand
      pure oxygen: pure-oxygen-over-air
      co2 in water, carbon dioxide in water: carbon-dioxide-in-water carbon-dioxide-henry
      co2 solubility: carbon-dioxide-in-beer
      co2 in beer, carbon dioxide in beer: carbon-dioxide-in-beer carbonation
      psi, how many psi: carbonation-pressure
      carbonation at altitude, carbonate at altitude: carbonation-altitude
      time to carbonate, carbonation time: carbonation-time
      ua from temperatures, learn chiller, measured ua, chiller learn: chiller-ua-measured
      lift load, lifting load: lift-load
      co2 limit, co2 limits: carbon-dioxide-limits
      gfci, rcd, earth leakage: ground-fault-trip
      bleach, iodophor, chlorine, peracetic, peracetic acid: sanitiser-dose
      caustic, lye, cleaner, acid cleaner: cleaner-dose
      hot sanitising, sanitise chiller, sanitise plate chiller, sanitise counterflow, hot sanitise, heat sanitise: hot-circuit pasteurisation-units
      heat kill: heat-kill-time
      purge, purges, purging: purge-oxygen
      station pressure: air-pressure-from-report air-pressure
      hose in draught, hose draught, loss draught: hose-drop-in-draught
      ergun: bed-pressure-ergun
      rattles, rattle, rattling: suction-head pump-need
      pump rattled, npshr, pump needs: pump-need
      salts in house, salts for ions, water profile, ion profile: salts-for-liquor salt-ions
      pt100 tolerance, pt100 class, pt100 limit: pt100-class-b pt100-class-a
      ice and boil check, calibration check, ice boil reads, ice boil reading, \
      reading ice boil, ice and boil: two-point-calibration
      ice check, ice point: ice-point-calibration
      calibrate, calibrate thermometer: two-point-calibration ice-point-calibration
      uncertainty, uncertainty of thermometer: doubt-from-limits doubt-combined
      weighted mean, mean of thermometers, two probes, three probes: \
      two-thermometers three-thermometers
      en, en number, en score, normalised error: thermometer-difference
      budget, gum: doubt-combined
      kalman: belief-after-reading
      crps: score-of-normal-forecast
      skill, forecast skill: skill-of-forecast
      coverage, ranges held: ranges-held
      scorch, scorching: surface-load sheath-superheat
      film, film coefficient, heat transfer in tube: tube-film
      wort boiling point, wort boils: wort-boiling-point
      strike, strike water, strike temperature, strike heat: strike strike-from-moisture
      mash temperature, mash in, mash temp, mash end up: mash-temperature strike
      og fg, fg og: alcohol
      abv to abw, weight from abv, mass from abv: alcohol-by-mass
      abv, alcohol, strong, alcohol by volume: alcohol alcohol-by-volume alcohol-water-density
      abw, alcohol by mass, alcohol by weight: alcohol-by-mass alcohol
      abv regression: alcohol-regression
      abv shortcut: alcohol-shortcut
      carbonate, carbonate to, force carbonate, carb, force carb, gauge pressure: carbonation-pressure carbonation
      carbonation, volumes, vols: carbonation carbonation-pressure residual-carbonation
      residual carbonation, residual co2: residual-carbonation
      prime, priming, priming sugar, dextrose, corn sugar, bottle sugar, sugar to bottle: priming-sugar
      over carbonation, bottle bomb, gusher: over-carbonation sealed-package
      bottle pressure, keg gets warm: bottle-pressure keg-pressure-warmed
      attenuation, apparent attenuation: \
      attenuation-apparent attenuation-limit attenuation-after-rest attenuation-after-two-rests
      real attenuation: attenuation-real
      attenuation limit, limit attenuation, fermentability, fermentable: \
      attenuation-limit attenuation-after-rest
      attenuation after rest, two rests: attenuation-after-rest attenuation-after-two-rests
      ibu, ibus, bitterness, hop bitterness, bittering: bitterness-of-addition iso-alpha-of-addition
      utilisation, utilization: hop-utilisation
      iso alpha: iso-alpha-formed
      hydrometer, hydrometer correction, spindle: hydrometer spindle-correction
      refractometer: beer-refractometer
      refractometer temperature, warm refractometer, refractometer warm: refractometer-warmth
      mash thickness, thick mash, thin mash: mash-thickness
      forced ferment, forced fermentation, malt fermentability: malt-offset
      dilute, dilute to, top up, water down: dilution-water dilution
      boil off, boiloff: boil-off boil-evaporation boil-concentration boil-loss-from-two-duties
      evaporation, evaporate, evaporation rate: boil-evaporation evaporation-open
      concentrate, boil down: boil-concentration dilution-water
      hold at, hold temperature, holding power: holding-power-open holding-power-lid
      lift, lifting, heavy bag: lift-limit lift-index lift-load
      burn, scald: seconds-to-burn
      pitch, pitching rate, yeast cells: cells-to-pitch
      dry yeast, dried yeast, yeast packet: dried-yeast dried-yeast-for-wort
      starter: starter-cells starter-in-steps
      two starters, stepped starter, starter steps: starter-in-steps
      viability, yeast age, old yeast: yeast-viability-stored yeast-viability-packaged
      yeast pack, liquid yeast: yeast-viability-packaged
      old packet, dried yeast age: yeast-viability-dried
      rehydrate, rehydration, sprinkle yeast: dried-yeast-alive
      lactic acid: mash-acid lactic-acid-strength liquor-ph-with-lactic-acid
      residual alkalinity, ra: residual-alkalinity residual-alkalinity-from-equivalents
      mash ph, ph of mash: mash-ph
      mash acid, acid for mash, acid to: mash-acid
      plato, in plato, to plato, degrees plato: plato
      sg, gravity, in sg, specific gravity: gravity plato
      brix: brix gravity-from-brix
      ebc, in ebc, to ebc, colour: ebc-from-srm ebc-from-lovibond srm-from-ebc beer-colour-of-malt
      srm, in srm, to srm, color: \
      srm-from-ebc srm-from-light-passed ebc-from-srm beer-colour-of-malt
      lovibond, in lovibond, to lovibond: lovibond-from-ebc ebc-from-lovibond
      counterflow, plate chiller: counterflow-chiller
      water to chill: least-chilling-water
      chill, chilling time, immersion chiller, cool: immersion-chilling-time counterflow-chiller
      chilling water: least-chilling-water
      coil, coil size: coil-ua
      hose loss, hose drop, hose: hose-drop hose-loss
      heat up, heating time, heat, time to heat, warm up: heating-time heating-rate
      mix, mixing, put together: mixing-temperature
      line length, draught line, beer line: draught-line-length draught-line-gradient
      element power, element on: element-power
      amps, current, ampere: heater-current
      breaker, fuse: breaker-size breaker-continuous-power
      cable: cable-drop
      wire, wire size, cable size: conductor-current cable-drop
      hop age, old hops, hop storage: hop-alpha-left hop-storage-loss
      dry hop, dry hopping, dry hops: \
      dry-hop-bitterness bitterness-after-dry-hops dry-hop-loss dry-hop-extraction
      hop creep: hop-creep
      pasteurise, pasteurize, pu, pasteurisation: pasteurisation-units
      ferment time, fermentation time, how long ferment: ferment-time
      first wort, first runnings: first-wort conversion
      mash volume, mash fit, room for mash, fit in: mash-volume
      grist volume, bulk volume, dry grist: grist-volume
      oxygen, aerate: oxygen-in-wort oxygen-in-water oxygen-in-wort-disputed
      shrink, shrinkage, cooling shrinkage, cold volume: cold-volume shrinkage
      hot volume: hot-volume
      altitude, air pressure, pressure at: air-pressure altitude
      co2 cylinder, cylinder leak: room-gas-from-cylinder
      co2 in room, co2 room, room gas, cellar gas, co2 in closed room: room-gas-from-fermentation room-gas-from-cylinder
      how large a room, how big a room, room size, closed room: room-for-gas
      gas of fermentation, gas given off: room-gas-given-off
      salt, salts, ions: salt-ions
      diacetyl, diacetyl rest, vdk: diacetyl-rest diacetyl-after-rest diacetyl-in-ferment
      forced test, forced diacetyl test, diacetyl while fermenting: diacetyl-in-ferment
      dms, dimethyl sulfide, dimethyl sulphide: \
      dimethyl-sulfide-after-boil dimethyl-sulfide-after-stand
      dms with lid, dms after stand, dms in whirlpool: dimethyl-sulfide-after-stand
      hsi: hop-storage-index hop-storage-loss
      calories, energy of beer, kcal: food-energy food-energy-from-gravities
      efficiency, brewhouse efficiency, yield: measured-yield brewhouse-yield
      extract mass, potential: potential-extract extract-mass
      npsh, cavitation, cavitate, suction, pump head: suction-head
      sanitiser, sanitizer: sanitiser-dose
      drain: drain-tempering
      pt100: pt100-temperature pt100-resistance
      thermistor, ntc: thermistor-temperature thermistor-resistance
      thermocouple: thermocouple-k-temperature thermocouple-k-voltage
      thermocouple t, type t: thermocouple-t-temperature thermocouple-t-voltage
      molar mass, molecular weight: molar-mass
      step response: step-test
      simc: controller-settings kettle-controller-settings
      controller, pid: kettle-controller-settings controller-settings controller-trial
      overshoot, overshoots: controller-trial kettle-controller-settings
      gain margin, delay margin, swings for ever: controller-margins
      pump off, pump is off: controller-pump-off
      gelatinisation, gelatinise: gelatinisation-temperature gelatinisation-rate
      best mash: best-single-rest
      equivalent age, beer age, storage: equivalent-age
      fermentation heat: fermentation-heat fermentation-peak-power
      """;

  /// One word for another; small letters.
  private static final Map<String, String> SAME =
      Map.ofEntries(
          Map.entry("og", "original"),
          Map.entry("fg", "apparent"),
          Map.entry("final", "apparent"),
          Map.entry("grain", "malt"),
          Map.entry("grist", "malt"),
          Map.entry("water", "liquor"),
          Map.entry("hops", "hop"),
          Map.entry("sulphate", "sulfate"),
          Map.entry("temp", "temperature"),
          Map.entry("colour", "color"),
          Map.entry("litres", "volume"),
          Map.entry("liters", "volume"),
          Map.entry("co2", "gas"),
          Map.entry("ambient", "room"),
          Map.entry("aa", "alpha"),
          Map.entry("ca", "calcium"),
          Map.entry("na", "sodium"),
          Map.entry("caco3", "carbonate"),
          Map.entry("meq", "equivalent"),
          Map.entry("hco3", "bicarbonate"),
          Map.entry("so4", "sulfate"),
          Map.entry("ethanol", "alcohol"),
          Map.entry("bicarb", "bicarbonate"),
          Map.entry("read", "reading"),
          Map.entry("amplitude", "swing"),
          Map.entry("rest", "mash"));

  private static final Map<List<String>, List<String>> MEANT = read();

  private Phrases() {}

  /// Each phrase, word by word, and what it may mean.
  static Map<List<String>, List<String>> meant() {
    return MEANT;
  }

  /// Whether a word is said for another.
  static boolean known(String word) {
    return SAME.containsKey(word);
  }

  /// Whether two words are said for the same thing.
  static boolean same(String one, String other) {
    return plain(one).equals(plain(other));
  }

  private static String plain(String word) {
    return SAME.getOrDefault(word, word);
  }

  private static Map<List<String>, List<String>> read() {
    Map<List<String>, List<String>> meant = new LinkedHashMap<>();
    for (String line : SAID.strip().split("\n", -1)) {
      int colon = line.indexOf(':');
      List<String> names =
          new ArrayList<>(Arrays.asList(line.substring(colon + 1).strip().split(" ", -1)));
      for (String phrase : line.substring(0, colon).split(",", -1)) {
        List<String> words = List.of(phrase.strip().split(" ", -1));
        if (meant.put(words, List.copyOf(names)) != null) {
          throw new IllegalStateException("the phrase '" + phrase.strip() + "' stands twice");
        }
      }
    }
    return meant;
  }
}
