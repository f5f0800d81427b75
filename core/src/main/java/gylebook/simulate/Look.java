package gylebook.simulate;

import gylebook.units.AnyUnit;

/// What the lines of the day chart show at one moment.
@AnyUnit("one row of several quantities")
final class Look {
  private Look() {}

  static void at(BrewState state, Member member, Flows flows, double[] to) {
    to[DayLog.Line.WORT_C.ordinal()] = state.kettleC;
    to[DayLog.Line.GRAIN_C.ordinal()] = state.bagIn ? state.bedC : Double.NaN;
    to[DayLog.Line.READ_C.ordinal()] = state.probeC + member.probeBiasK;
    to[DayLog.Line.OUTSIDE_M.ordinal()] = Views.outsideM(state, member, flows);
    to[DayLog.Line.DUTY_FRAC.ordinal()] = state.dutyFrac;
    to[DayLog.Line.WORT_PLATO.ordinal()] =
        state.extractKg() > 0 ? Views.wortPlato(state, flows) : Double.NaN;
  }
}
