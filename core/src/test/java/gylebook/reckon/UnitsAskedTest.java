package gylebook.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.science.Reckoned;
import gylebook.units.ReadingUnits;
import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/// Every number asked for and given is in the unit its name ends in, read by a list written by
/// hand.
class UnitsAskedTest {
  /// How the code spells each unit, and how a reader sees it. Longer spellings win.
  private static final Map<String, String> SPELT = new TreeMap<>();

  static {
    for (String each :
        """
        Kg kg|G g|L L|Ml mL|M m|Mm mm|Um µm|M2 m²|M3 m³|Inch in|Lb lb|Sec s|Min min|Hr h|Day d
        C °C|K K|Plato °P|Sg SG|Ebc EBC|Srm SRM|Lovibond °L|Ph pH|Vol vol|Ppm ppm|Kpa kPa|J J|W W
        Kj kJ|Kcal kcal|A A|Ma mA|V V|Mv mV|Ohm Ω|Meq meq|PaSec Pa_s
        Frac -|Ratio -|Factor -|Number -|Count -|CountPerMl 1/mL|CountPerG 1/g
        PerK 1/K|PerPlato 1/°P|PerSec 1/s|PerMin 1/min|PerHr 1/h|PerDay 1/d|FracPerHr 1/h
        GPerL g/L|MgPerL mg/L|UgPerL µg/L|MgPerM3 mg/m³|KgPerL kg/L|KgPerM3 kg/m³|KgPerKg kg/kg
        LPerKg L/kg|LPerSec L/s|LPerHr L/h|KgPerSec kg/s|KgPerHr kg/h|MPerSec m/s|KgPerM2Sec kg/(m²_s)
        KPerSec K/s|KPerMin K/min|KPerKpa K/kPa|KPerW K/W|WPerK W/K|WPerM2 W/m²|WPerM2K W/(m²_K)|WPerMK W/(m_K)
        MKPerW m_K/W|JPerK J/K|JPerKg J/kg|JPerKgK J/(kg_K)|KjPerKg kJ/kg|KjPerL kJ/L
        KpaPerM kPa/m|PaPerM Pa/m|GPerMol g/mol|MlPerMol mL/mol|MlPerL mL/L|MolPerM3 mol/m³
        MmolPerL mmol/L|MmolPerKg mmol/kg|MolPerKg mol/kg|MeqPerL meq/L|MeqPerKg meq/kg
        MeqPerMl meq/mL|MeqPerKgPh meq/(kg_pH)|UsPerCm µS/cm"""
            .split("[|\n]", -1)) {
      String[] pair = each.strip().split(" ", -1);
      SPELT.put(pair[0], pair[1].equals("-") ? "" : pair[1].replace('_', ' '));
    }
  }

  /// A number's name in the code beside the unit that the reckoner found in it.
  private record Found(String where, String javaName, String unit) {}

  private static List<Method> offered() {
    return Phenomena.all().stream()
        .flatMap(type -> Arrays.stream(type.getDeclaredMethods()))
        .filter(method -> method.isAnnotationPresent(Reckoned.class))
        .toList();
  }

  private static Calculation calculation(Method method) {
    return new Calculation(method, method.getAnnotation(Reckoned.class));
  }

  private static List<Found> asked(Method method) {
    List<Found> found = new ArrayList<>();
    List<Input> inputs = calculation(method).inputs();
    for (int i = 0; i < inputs.size(); i++) {
      Parameter part = method.getParameters()[i];
      if (part.getType() != String.class) {
        found.add(new Found(method.toString(), part.getName(), inputs.get(i).unit()));
      }
    }
    return found;
  }

  /// Names of the numbers in a result, in the order in which they are given.
  private static Stream<String> numbers(String name, Class<?> type) {
    if (type.isRecord()) {
      return Arrays.stream(type.getRecordComponents())
          .flatMap((RecordComponent part) -> numbers(part.getName(), part.getType()));
    }
    return Stream.of(type == double.class || type == int.class ? name : "");
  }

  private static List<Found> given(Method method) {
    List<Found> found = new ArrayList<>();
    List<String> names = numbers(method.getName(), method.getReturnType()).toList();
    List<Output> outputs = calculation(method).outputs();
    assertThat(names).as(method.toString()).hasSameSizeAs(outputs);
    for (int i = 0; i < names.size(); i++) {
      if (!names.get(i).isEmpty()) {
        found.add(new Found(method.toString(), names.get(i), outputs.get(i).unit()));
      }
    }
    return found;
  }

  /// The longest spelling of the list that a name ends in; what follows `From` says where it is
  /// from.
  private static String spelling(String javaName) {
    String name = Character.toUpperCase(javaName.charAt(0)) + javaName.substring(1);
    return longest(name)
        .or(() -> longest(name.replaceFirst("From[A-Z].*$", "")))
        .orElseThrow(() -> new AssertionError(javaName + " ends in no unit of the list"));
  }

  private static Optional<String> longest(String name) {
    return SPELT.keySet().stream()
        .filter(name::endsWith)
        .max(Comparator.comparingInt(String::length));
  }

  @Test
  void everyNumberIsInTheUnitThatItsNameEndsIn() {
    Set<String> seen = new HashSet<>();
    List<Method> offered = offered();
    assertThat(offered).hasSameSizeAs(Reckoner.all());
    for (Method method : offered) {
      List<Found> all = new ArrayList<>(asked(method));
      all.addAll(given(method));
      for (Found each : all) {
        String spelling = spelling(each.javaName());
        seen.add(spelling);
        assertThat(each.unit())
            .as(each.where() + " " + each.javaName())
            .isEqualTo(SPELT.get(spelling));
      }
    }
    assertThat(seen).as("a spelling nobody uses any more").hasSameElementsAs(SPELT.keySet());
  }

  @Test
  void theBufferOfAMashIsNoPh() {
    Map<String, String> typed =
        Map.of(
            "malt-kg", "4.4",
            "buffer", "35 meq/(kg pH)",
            "liquor", "20 L",
            "alkalinity", "2",
            "calcium", "2",
            "magnesium", "0.5");
    Calculation mash = ((Search.Hit) Reckoner.find("mash-ph")).calculation();
    Reckoning.Answer answer = (Reckoning.Answer) mash.reckon(typed, ReadingUnits.METRIC);
    // 5.7 + 20 (2 - 2/3.5 - 0.5/7) / (4.4 35), by hand.
    assertThat(answer.results().getFirst().value()).isCloseTo(5.8763, within(1e-4));
    assertThat(answer.inputs()).extracting(Amount::shown).contains("35 meq/(kg pH)");
    assertThat(answer.cautions()).isEmpty();
  }
}
