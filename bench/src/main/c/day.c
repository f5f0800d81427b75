#include "model.h"

#include <math.h>
#include <string.h>

struct table tables[TABLES];

static const double TOLERANCE_K = 0.03, FIRST_SEC = 0.25, LEAST_SEC = 0.01, FOUND_K = 0.002;
static const double MASH_MOST_SEC = 60, MOST_SEC = 300, REFRESH_K = 2, REFRESH_FRAC = 0.005;

/* Chemistry. */

static double left_frac(double x) { return 1 / (1 + x + x * x / 2); }

static void exchange(struct state *s, const struct flows *f, double stepSec) {
  double kettleSideKg = f->kettleKg + f->headKg;
  double exchanged = f->bedKgPerSec + f->mixKgPerSec;
  if (!(kettleSideKg > 0) || !(f->bedKg > 0) || !(exchanged > 0)) {
    return;
  }
  double even = extract_kg(s) / (kettleSideKg + f->bedKg);
  double excessKg = s->bedExtractKg - even * f->bedKg;
  double movedKg =
      excessKg * (1 - left_frac(exchanged * (1 / kettleSideKg + 1 / f->bedKg) * stepSec));
  s->bedExtractKg -= movedKg;
  s->kettleExtractKg += movedKg;
}

void chemistry_mash(struct state *s, const struct flows *f, double stepSec, double bedC,
                    double kettleC) {
  double pastedKg = s->starchKg * (1 - left_frac(table_at(PASTING, bedC) * stepSec));
  s->starchKg -= pastedKg;
  double alphaLoss = table_at(ALPHA_LOSS, bedC) * stepSec;
  double alphaFrac = s->alphaFrac * left_frac(alphaLoss / 2);
  s->alphaFrac *= left_frac(alphaLoss);
  double thins = 1 / 60.0 * alphaFrac * stepSec;
  double thinnedKg =
      s->pastedKg * (1 - left_frac(thins)) + pastedKg * (1 - left_frac(thins / 2));
  s->pastedKg += pastedKg - thinnedKg;
  double washedKg = s->solubleKg * (1 - left_frac(1 / 180.0 * stepSec));
  s->solubleKg -= washedKg;
  double newKg = thinnedKg + washedKg;
  s->bedExtractKg += newKg / 2;
  exchange(s, f, stepSec);
  s->bedExtractKg += newKg / 2;
  double kg = liquid_kg(s);
  double share = kg > 0 ? f->bedKg / kg : 0;
  double meanC = share * bedC + (1 - share) * kettleC;
  double decay = table_at(BETA_LOSS, meanC) * stepSec;
  double mid = s->betaFrac * left_frac(decay / 2);
  s->betaFrac *= left_frac(decay);
  double activity = 0.069 + (1 - 0.069) * mid;
  double reachKg = 0.93367 * (extract_kg(s) - newKg / 2);
  double approach = 1 - left_frac(table_at(APPROACH, meanC) * activity * stepSec);
  s->fermentableKg += (reachKg - s->fermentableKg) * approach;
}

void chemistry_hops(struct state *s, double stepSec, double kettleC) {
  if (s->hopCount == 0) {
    return;
  }
  double lost = table_at(ISO_LOST, kettleC) * stepSec;
  double alphaLeft = left_frac(table_at(ISO_FORMED, kettleC) * stepSec);
  double isoLeft = left_frac(lost), newLeft = left_frac(lost / 2);
  for (int i = 0; i < s->hopCount; i++) {
    double formedMg = s->alphaMg[i] * (1 - alphaLeft);
    s->alphaMg[i] -= formedMg;
    s->isoMg[i] = s->isoMg[i] * isoLeft + formedMg * newLeft;
  }
}

void chemistry_sulfide(struct state *s, double stepSec, double kettleC, double steamKgPerSec) {
  double made = s->precursorFrac * (1 - left_frac(table_at(PRECURSOR_LOST, kettleC) * stepSec));
  s->precursorFrac -= made;
  double fracPerHr = steamKgPerSec * 3600 / most(1, liquid_kg(s));
  double driven = 0.18 / 60 * fracPerHr / 0.17 * stepSec;
  s->sulfideFrac = s->sulfideFrac * left_frac(driven) + made * left_frac(driven / 2);
}

static double dose_min(double stepSec, double startC, double endC) {
  return (table_at(DOSE, startC) + 4 * table_at(DOSE, (startC + endC) / 2) +
          table_at(DOSE, endC)) / 6 * stepSec;
}

/* The step. */

static const struct day *day;
static const struct member *m;
static struct state *s;
static struct log *out;
static struct flows flows;
static double refreshedC, refreshedFrac, refreshedKg, growth;
static bool landed, rises;
static double beforeC[9];

static void keep(void) {
  double now[9] = {s->kettleC, s->bedC,  s->headC,  s->wallC,
                   s->hoseC,   s->stubC, s->probeC, s->integralFrac, s->setC};
  memcpy(beforeC, now, sizeof now);
}

static void give_back(void) {
  s->kettleC = beforeC[0];
  s->bedC = beforeC[1];
  s->headC = beforeC[2];
  s->wallC = beforeC[3];
  s->hoseC = beforeC[4];
  s->stubC = beforeC[5];
  s->probeC = beforeC[6];
  s->integralFrac = beforeC[7];
  s->setC = beforeC[8];
}

static void milestone(void) {
  struct row *row = &out->rows[out->count++];
  row->atSec = s->clockSec;
  row->wortC = s->kettleC;
  row->grainC = s->bagIn ? s->bedC : s->kettleC;
  row->hotL = hot_l(s, m);
  row->coldL = cold_l(s);
  row->wortPlato = wort_plato(s, &flows);
  row->elementJ = s->elementJ;
  row->steamKg = s->steamKg;
}

static double boils_c(double extractFrac) {
  return m->waterBoilsC + extractFrac * (m->riseKPerFrac + extractFrac * m->riseKPerFrac2);
}

static double left_behind_kg(void) {
  return (m->deadL + m->chillHeldL) * wort_kg_per_l(extract_frac(s), 20) + s->hopWortKg;
}

static bool reached(const struct action *leg) {
  switch (leg->until) {
    case READS:
      return thermal_rises_sec(s, leg) <= 0 && s->probeC + m->probeBiasK >= leg->untilValue - FOUND_K;
    case BOILS: return s->boiling;
    case COOLED_TO: return s->kettleC <= leg->untilValue + FOUND_K;
    case RUN_OFF: return liquid_kg(s) <= left_behind_kg() + 1e-6;
    default: return false;
  }
}

static double gap_k(const struct action *leg, double boilsC) {
  double legK = -INFINITY;
  if (leg->until == READS && !rises) {
    legK = s->probeC + m->probeBiasK - leg->untilValue;
  } else if (leg->until == COOLED_TO) {
    legK = leg->untilValue - s->kettleC;
  }
  double boilK = s->boiling ? -INFINITY : s->kettleC - boilsC;
  return most(legK, boilK);
}

static void refresh(const struct action *leg, bool always) {
  weigh(&flows, s, m);
  double extractFrac = extract_frac(s);
  if (always || fabs(s->kettleC - refreshedC) > REFRESH_K ||
      fabs(extractFrac - refreshedFrac) > REFRESH_FRAC ||
      fabs(liquid_kg(s) / refreshedKg - 1) > REFRESH_FRAC) {
    run_flows(&flows, s, m, leg);
    refreshedC = s->kettleC;
    refreshedFrac = extractFrac;
    refreshedKg = most(0.01, liquid_kg(s));
  }
  thermal_prepare(day, s, leg, &flows);
}

static double step_most_sec(const struct action *leg) {
  double mostSec = s->bagIn ? MASH_MOST_SEC : MOST_SEC;
  double fastest = s->bagIn && s->starchKg > 1e-3 ? table_at(PASTING, s->bedC) : 0;
  if (fastest > 0) {
    mostSec = least(mostSec, 0.35 / fastest);
  }
  if (thermal_rises_sec(s, leg) > 0) {
    mostSec = least(mostSec, thermal_rises_sec(s, leg));
  }
  if (leg->runOff) {
    double kgPerSec = most(1e-9, flows.runOffKgPerSec);
    mostSec = least(mostSec, most(1, 0.05 * liquid_kg(s) / kgPerSec));
  }
  return mostSec;
}

static double solids_and_extract_j(void) {
  return s->bedC * (solids_kg(s) * SOLIDS_J_PER_KG_K + s->bedExtractKg * EXTRACT_J_PER_KG_K) +
         s->kettleC * s->kettleExtractKg * EXTRACT_J_PER_KG_K;
}

static double boil_kg_per_sec(double stepSec, double boilsC) {
  if (!s->boiling) {
    if (s->kettleC >= boilsC - FOUND_K && !s->bagIn) {
      s->boiling = thermal_surplus(s) > 0;
    }
    return 0;
  }
  double surplusW = thermal_surplus(s);
  double driftW = flows.kettleJPerK * (boilsC - s->kettleC) / stepSec;
  s->kettleC = boilsC;
  if (surplusW - driftW <= 0) {
    s->boiling = false;
    return 0;
  }
  s->surfaceLossJ += (surplusW - driftW) * stepSec;
  return (surplusW - driftW) / m->latentJPerKg;
}

static void run_off(double stepSec) {
  double kg = liquid_kg(s);
  double movedKg = most(0, least(flows.runOffKgPerSec * stepSec, kg - left_behind_kg()));
  double share = movedKg / kg;
  double extractFrac = extract_frac(s);
  double cp = wort_j_per_kg_k(extractFrac);
  double wortJPerLK = cp * wort_kg_per_l(extractFrac, 60);
  double castC = s->kettleC;
  if (m->chiller == COUNTERFLOW || m->chiller == PLATE) {
    double part = passed_w_per_k(m, wortJPerLK) / (m->chillWortLPerSec * wortJPerLK);
    castC = s->kettleC - part * (s->kettleC - m->tapC);
  }
  s->castHeatJ += movedKg * cp * castC;
  s->chilledJ += movedKg * cp * (s->kettleC - castC);
  s->carriedJ += movedKg * cp * castC;
  s->castWaterKg += s->waterKg * share;
  s->castExtractKg += s->kettleExtractKg * share;
  s->castFermentableKg += s->fermentableKg * share;
  s->castSulfideFracKg += s->sulfideFrac * movedKg;
  for (int i = 0; i < s->hopCount; i++) {
    double isoMg = s->isoMg[i] * share;
    s->castIsoMg[i] += isoMg;
    s->isoMg[i] -= isoMg;
    s->alphaMg[i] *= 1 - share;
  }
  s->waterKg *= 1 - share;
  s->kettleExtractKg *= 1 - share;
  s->fermentableKg *= 1 - share;
}

static void watch(const struct action *leg) {
  double levelM = hot_l(s, m) / 1000 / m->surfaceM2;
  out->highestM = most(out->highestM, levelM);
  if (s->boiling && out->breakM == 0) {
    out->breakM = levelM;
  }
  if (s->dutyFrac > 0.02) {
    double fallM = flows.bedHeadM * m->bedM2 / m->surfaceM2;
    out->elementCoverM = least(out->elementCoverM, levelM - fallM - m->elementTopM);
  }
  if (flows.loopLPerSec > 0) {
    double vapourKpa = table_at(SATURATION, least(s->kettleC, m->waterBoilsC));
    double npshM = most(0, m->pressureKpa - vapourKpa) / (1.03 * 9.80665) + levelM + m->suctionM -
                   m->suctionLossM;
    out->suctionM = least(out->suctionM, npshM - m->wantedNpshM);
  }
  if (leg->chilling && flows.chillWaterKgPerSec > 0) {
    out->drainC = most(out->drainC, m->tapC + flows.drainShareFrac * (s->kettleC - m->tapC));
  }
}

static void close_step(const struct action *leg, double stepSec, double boilsC) {
  out->steps++;
  thermal_book(s, stepSec);
  double kettleMidC = (beforeC[0] + s->kettleC) / 2;
  double bedMidC = (beforeC[1] + s->bedC) / 2;
  double steam = thermal_steam(s);
  steam += boil_kg_per_sec(stepSec, boilsC);
  if (s->bagIn) {
    double heldJ = solids_and_extract_j();
    chemistry_mash(s, &flows, stepSec, bedMidC, kettleMidC);
    s->carriedJ += heldJ - solids_and_extract_j();
    out->grainMeanC += bedMidC * stepSec;
    out->grainMeanSec += stepSec;
  }
  chemistry_hops(s, stepSec, kettleMidC);
  chemistry_sulfide(s, stepSec, kettleMidC, steam);
  if (leg->pump != PUMP_OFF && m->hasPump != 0) {
    s->loopDoseMin += dose_min(stepSec, beforeC[4], s->hoseC);
  }
  double steamKg = least(steam * stepSec, 0.5 * s->waterKg);
  s->waterKg -= steamKg;
  s->steamKg += steamKg;
  s->carriedJ += steamKg * WATER_J_PER_KG_K * (s->bagIn ? s->headC : s->kettleC);
  s->chillWaterKg += flows.chillWaterKgPerSec * stepSec;
  if (leg->runOff) {
    run_off(stepSec);
  }
  s->clockSec += stepSec;
  watch(leg);
}

static double stepped_sec(const struct action *leg, double stepSec) {
  bool boiling = s->boiling;
  rises = thermal_rises_sec(s, leg) > 0;
  keep();
  thermal_start(s);
  double boilsC = boils_c(extract_frac(s));
  double missK = gap_k(leg, boilsC);
  landed = false;
  double error = 0;
  for (int tries = 0; tries < 60; tries++) {
    error = thermal_tried_error(stepSec, TOLERANCE_K, boiling);
    if (error > 1 && stepSec > LEAST_SEC) {
      stepSec *= most(0.2, 0.85 / sqrt(error));
      continue;
    }
    thermal_land(s, stepSec);
    double overK = gap_k(leg, boilsC);
    if (missK < 0 && overK > FOUND_K && stepSec > LEAST_SEC) {
      give_back();
      stepSec *= most(0.05, least(0.98, -missK / (overK - missK)));
      landed = true;
      continue;
    }
    break;
  }
  growth = error > 0 ? least(5, 0.85 / sqrt(error)) : 5;
  close_step(leg, stepSec, boilsC);
  return stepSec;
}

static bool boiled_dry(void) { return extract_frac(s) > 0.5 || s->waterKg < 0.2; }

static void run_leg(const struct action *leg) {
  double endSec = s->clockSec + (leg->until == AFTER ? leg->untilValue : leg->mostSec);
  refresh(leg, true);
  if (!leg->automatic) {
    s->integralFrac = 0;
  }
  double stepSec = FIRST_SEC;
  bool ended = reached(leg);
  while (!ended && s->clockSec < endSec - 1e-6 && !boiled_dry()) {
    refresh(leg, false);
    double capped = least(stepSec, step_most_sec(leg));
    double taken = stepped_sec(leg, least(capped, endSec - s->clockSec));
    ended = reached(leg);
    stepSec = landed ? FIRST_SEC : most(FIRST_SEC, least(taken * growth, 5 * taken));
  }
  out->gaveUp |= (!ended && leg->until != AFTER) || boiled_dry();
  weigh(&flows, s, m);
  milestone();
}

static void do_deed(const struct action *deed) {
  if (deed->kind == BAG_OUT) {
    weigh(&flows, s, m);
    out->bagKg = solids_kg(s) + flows.bedKg;
  }
  apply_deed(&flows, deed, s, m);
  if (deed->kind == MARK) {
    milestone();
  } else if (deed->kind == DOUGH_IN) {
    out->doughInM = hot_l(s, m) / 1000 / m->surfaceM2;
  } else if (deed->kind == BAG_OUT) {
    out->drippedKg = s->bagUndissolvedKg + s->bagWaterKg + s->bagExtractKg;
  }
}

void run_day(const struct day *of, struct state *state, struct log *log) {
  day = of;
  m = &of->member;
  s = state;
  out = log;
  growth = 1;
  memset(state, 0, sizeof *state);
  memset(log, 0, sizeof *log);
  log->elementCoverM = INFINITY;
  log->suctionM = INFINITY;
  s->waterKg = of->waterKg;
  s->kettleC = s->bedC = s->headC = s->wallC = of->startC;
  s->hoseC = s->stubC = s->probeC = of->startC;
  for (int i = 0; i < of->actionCount; i++) {
    if (of->actions[i].kind == LEG) {
      run_leg(&of->actions[i]);
    } else {
      do_deed(&of->actions[i]);
    }
  }
}
