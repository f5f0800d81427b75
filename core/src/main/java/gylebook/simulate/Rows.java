package gylebook.simulate;

import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ObjDoubleConsumer;
import java.util.function.ToDoubleFunction;

/// The state laid down as rows: one a quantity, so that many brews are columns of numbers.
@AnyUnit("rows of every quantity")
final class Rows {
  /// What a reading may correct, and within what.
  enum Kind {
    /// Kept as it is: accounts and switches.
    KEPT,
    /// Any number.
    FREE,
    /// Nothing below 0.
    MASS
  }

  /// One quantity of the state.
  record Row(
      String name, Kind kind, ToDoubleFunction<BrewState> get, ObjDoubleConsumer<BrewState> set) {}

  private static final List<Row> FIXED = fixed();

  private Rows() {}

  /// The rows of a day with so many additions of hops.
  static List<Row> of(int hops) {
    List<Row> rows = new ArrayList<>(FIXED);
    for (int i = 0; i < Gauge.MOST; i++) {
      int k = i;
      rows.add(new Row("gauge." + k, Kind.FREE, s -> s.gaugeC[k], (s, v) -> s.gaugeC[k] = v));
    }
    for (int i = 0; i < hops; i++) {
      int k = i;
      rows.add(new Row("alpha." + k, Kind.KEPT, s -> s.alphaMg[k], (s, v) -> s.alphaMg[k] = v));
      rows.add(new Row("iso." + k, Kind.KEPT, s -> s.isoMg[k], (s, v) -> s.isoMg[k] = v));
      rows.add(new Row("cast." + k, Kind.KEPT, s -> s.castIsoMg[k], (s, v) -> s.castIsoMg[k] = v));
    }
    return List.copyOf(rows);
  }

  private static List<Row> fixed() {
    List<Row> rows = new ArrayList<>();
    temperatures(rows);
    masses(rows);
    accounts(rows);
    return rows;
  }

  private static void temperatures(List<Row> rows) {
    rows.add(new Row("kettleC", Kind.FREE, s -> s.kettleC, (s, v) -> s.kettleC = v));
    rows.add(new Row("bedC", Kind.FREE, s -> s.bedC, (s, v) -> s.bedC = v));
    rows.add(new Row("headC", Kind.FREE, s -> s.headC, (s, v) -> s.headC = v));
    rows.add(new Row("wallC", Kind.FREE, s -> s.wallC, (s, v) -> s.wallC = v));
    rows.add(new Row("hoseC", Kind.FREE, s -> s.hoseC, (s, v) -> s.hoseC = v));
    rows.add(new Row("stubC", Kind.FREE, s -> s.stubC, (s, v) -> s.stubC = v));
    rows.add(new Row("probeC", Kind.FREE, s -> s.probeC, (s, v) -> s.probeC = v));
    rows.add(new Row("integral", Kind.FREE, s -> s.integralFrac, (s, v) -> s.integralFrac = v));
  }

  private static void masses(List<Row> rows) {
    rows.add(new Row("waterKg", Kind.MASS, s -> s.waterKg, (s, v) -> s.waterKg = v));
    rows.add(
        new Row("kettleKg", Kind.MASS, s -> s.kettleExtractKg, (s, v) -> s.kettleExtractKg = v));
    rows.add(new Row("bedKg", Kind.MASS, s -> s.bedExtractKg, (s, v) -> s.bedExtractKg = v));
    rows.add(new Row("solubleKg", Kind.MASS, s -> s.solubleKg, (s, v) -> s.solubleKg = v));
    rows.add(new Row("starchKg", Kind.MASS, s -> s.starchKg, (s, v) -> s.starchKg = v));
    rows.add(new Row("pastedKg", Kind.MASS, s -> s.pastedKg, (s, v) -> s.pastedKg = v));
    rows.add(
        new Row("fermentableKg", Kind.MASS, s -> s.fermentableKg, (s, v) -> s.fermentableKg = v));
    rows.add(new Row("hopWortKg", Kind.MASS, s -> s.hopWortKg, (s, v) -> s.hopWortKg = v));
    rows.add(new Row("steamKg", Kind.MASS, s -> s.steamKg, (s, v) -> s.steamKg = v));
    rows.add(new Row("bagWaterKg", Kind.MASS, s -> s.bagWaterKg, (s, v) -> s.bagWaterKg = v));
    rows.add(new Row("bagKg", Kind.MASS, s -> s.bagExtractKg, (s, v) -> s.bagExtractKg = v));
  }

  private static void accounts(List<Row> rows) {
    kept(rows, "setC", s -> s.setC, (s, v) -> s.setC = v);
    kept(rows, "clockSec", s -> s.clockSec, (s, v) -> s.clockSec = v);
    kept(rows, "grainKg", s -> s.grainKg, (s, v) -> s.grainKg = v);
    kept(rows, "inertKg", s -> s.inertKg, (s, v) -> s.inertKg = v);
    kept(rows, "boiling", s -> s.boiling ? 1 : 0, (s, v) -> s.boiling = v > 0);
    kept(rows, "bagIn", s -> s.bagIn ? 1 : 0, (s, v) -> s.bagIn = v > 0);
    kept(rows, "alphaFrac", s -> s.alphaFrac, (s, v) -> s.alphaFrac = v);
    kept(rows, "betaFrac", s -> s.betaFrac, (s, v) -> s.betaFrac = v);
    kept(rows, "hopCount", s -> s.hopCount, (s, v) -> s.hopCount = (int) v);
    kept(rows, "precursorFrac", s -> s.precursorFrac, (s, v) -> s.precursorFrac = v);
    kept(rows, "sulfideFrac", s -> s.sulfideFrac, (s, v) -> s.sulfideFrac = v);
    kept(rows, "bagUndissolved", s -> s.bagUndissolvedKg, (s, v) -> s.bagUndissolvedKg = v);
    kept(rows, "keptWaterKg", s -> s.keptWaterKg, (s, v) -> s.keptWaterKg = v);
    kept(rows, "keptExtractKg", s -> s.keptExtractKg, (s, v) -> s.keptExtractKg = v);
    kept(rows, "castWaterKg", s -> s.castWaterKg, (s, v) -> s.castWaterKg = v);
    kept(rows, "castExtractKg", s -> s.castExtractKg, (s, v) -> s.castExtractKg = v);
    kept(rows, "castFermentable", s -> s.castFermentableKg, (s, v) -> s.castFermentableKg = v);
    kept(rows, "castSulfide", s -> s.castSulfideFracKg, (s, v) -> s.castSulfideFracKg = v);
    kept(rows, "castHeatJ", s -> s.castHeatJ, (s, v) -> s.castHeatJ = v);
    kept(rows, "elementJ", s -> s.elementJ, (s, v) -> s.elementJ = v);
    kept(rows, "wallLossJ", s -> s.wallLossJ, (s, v) -> s.wallLossJ = v);
    kept(rows, "surfaceLossJ", s -> s.surfaceLossJ, (s, v) -> s.surfaceLossJ = v);
    kept(rows, "hoseLossJ", s -> s.hoseLossJ, (s, v) -> s.hoseLossJ = v);
    kept(rows, "chilledJ", s -> s.chilledJ, (s, v) -> s.chilledJ = v);
    kept(rows, "carriedJ", s -> s.carriedJ, (s, v) -> s.carriedJ = v);
    kept(rows, "loopDoseMin", s -> s.loopDoseMin, (s, v) -> s.loopDoseMin = v);
    kept(rows, "chillWaterKg", s -> s.chillWaterKg, (s, v) -> s.chillWaterKg = v);
    kept(rows, "dutySec", s -> s.dutySec, (s, v) -> s.dutySec = v);
    kept(rows, "dutyFrac", s -> s.dutyFrac, (s, v) -> s.dutyFrac = v);
  }

  private static void kept(
      List<Row> rows,
      String name,
      ToDoubleFunction<BrewState> get,
      ObjDoubleConsumer<BrewState> set) {
    rows.add(new Row(name, Kind.KEPT, get, set));
  }
}
