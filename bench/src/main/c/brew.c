/* What flows, what is done in a moment, and what a brewer sees of the state. */
#include "model.h"

#include <math.h>

double wort_kg_per_l(double w, double t) {
  double th = (t - 20) / 100;
  double c0 =
      385.1761 + w * (135.3705 + w * (40.9299 + w * (-3.9643 + w * (13.4853 + w * -17.2890))));
  double c1 = -46.2720 + w * (-7.1720 + w * (1.1597 + w * (5.1126 + w * 17.5254)));
  double c2 = 59.7712 + w * (7.2491 + w * (12.3630 + w * -35.4791));
  double c3 = -47.2207 + w * (-21.6977 + w * 27.6301);
  double c4 = 18.3184 + w * 12.3081;
  double excess = w * (c0 + th * (c1 + th * (c2 + th * (c3 + th * c4))));
  double above =
      999.83952 +
      t * (16.952577 + t * (-7.9905127e-3 + t * (-46.241757e-6 +
                                                 t * (105.84601e-9 + t * -281.03006e-12))));
  return above / (1 + 16.887236e-3 * t) / 1000 + excess / 1000;
}

static double wort_pa_sec(double extractFrac, double wortC) {
  double percent = 100 * extractFrac;
  double sugar = percent / (1900 - 18 * percent);
  double cold = (30 - wortC) / (91 + wortC);
  double exponent = 22.46 * sugar - 0.114 + cold * (1.1 + 43.1 * pow(sugar, 1.25));
  return 1e-3 * exp(log(10) * exponent);
}

static double liquid_l(const struct state *s, double atC) {
  return liquid_kg(s) / wort_kg_per_l(extract_frac(s), least(100, atC));
}

double hot_l(const struct state *s, const struct member *m) {
  double litres = liquid_l(s, s->kettleC);
  return s->bagIn ? litres + m->displacementLPerKg * s->grainKg : litres;
}

double cold_l(const struct state *s) { return liquid_l(s, 20); }

double wort_plato(const struct state *s, const struct flows *f) {
  double kg = f->kettleKg + f->headKg;
  return kg > 0 ? 100 * (s->kettleExtractKg / kg) : 0;
}

void weigh(struct flows *f, const struct state *s, const struct member *m) {
  double kg = liquid_kg(s);
  double cp = wort_j_per_kg_k(extract_frac(s));
  f->bedKg = f->headKg = f->bedJPerK = f->headJPerK = 0;
  if (s->bagIn) {
    f->bedKg = least(m->bedKgPerKg * s->grainKg, 0.50 * kg);
    f->headKg = least(3, 0.10 * kg);
    f->bedJPerK = f->bedKg * cp + solids_kg(s) * SOLIDS_J_PER_KG_K;
    f->headJPerK = f->headKg * cp;
  }
  f->kettleKg = kg - f->bedKg - f->headKg;
  f->kettleJPerK = most(f->kettleKg, 0.05) * cp;
}

static void run_bed(struct flows *f, const struct state *s, const struct member *m,
                    double extractFrac, double wortKgPerL) {
  f->bedWPerK = f->spillWPerK = f->bedKgPerSec = f->bedHeadM = 0;
  if (!s->bagIn || f->loopLPerSec <= 0) {
    return;
  }
  double bedL = m->bedKgPerKg * s->grainKg + m->displacementLPerKg * s->grainKg;
  double depthM = bedL / 1000 / m->bedM2;
  double viscosity = wort_pa_sec(extractFrac, least(s->bedC, 95));
  double headAllM = f->loopLPerSec / 1000 / m->bedM2 * viscosity * depthM /
                    (m->permeabilityM2 * 1000 * wortKgPerL * 9.80665);
  double headMostM = most(0.005, m->crestM) * m->surfaceM2 / (m->surfaceM2 - m->bedM2);
  double through = least(1, headMostM / headAllM);
  f->bedHeadM = least(headAllM, headMostM);
  f->bedWPerK = through * f->loopWPerK;
  f->spillWPerK = f->loopWPerK - f->bedWPerK;
  f->bedKgPerSec = through * f->loopLPerSec * wortKgPerL;
}

double passed_w_per_k(const struct member *m, double wortJPerLK) {
  double waterWPerK = m->chillWaterLPerSec * WATER_J_PER_KG_K;
  double wortWPerK = m->chillWortLPerSec * wortJPerLK;
  double ua = 1 / (m->chillHotKPerW / pow(m->chillWortLPerSec * 1.03, 0.8) +
                   m->chillColdKPerW / pow(m->chillWaterLPerSec, 0.8));
  if (m->chiller == NO_CHILLER) {
    return 0;
  }
  if (m->chiller == IMMERSION) {
    return waterWPerK * -expm1(-ua / waterWPerK);
  }
  double leastWPerK = least(waterWPerK, wortWPerK);
  double ratio = leastWPerK / most(waterWPerK, wortWPerK);
  double ntu = ua / leastWPerK;
  double unlike = 1 - ratio;
  if (ntu * unlike < 1e-9) {
    return leastWPerK * ntu / (1 + ntu);
  }
  double gone = -expm1(-ntu * unlike);
  return leastWPerK * (gone / (unlike + ratio * gone));
}

void run_flows(struct flows *f, const struct state *s, const struct member *m,
               const struct action *leg) {
  double extractFrac = extract_frac(s);
  double wortKgPerL = wort_kg_per_l(extractFrac, least(s->kettleC, 100));
  double wortJPerLK = wortKgPerL * wort_j_per_kg_k(extractFrac);
  bool pumped = m->hasPump != 0;
  f->loopLPerSec = !pumped || leg->pump == PUMP_OFF ? 0
                   : leg->pump == PUMP_MASH         ? m->mashLPerSec
                                                    : m->whirlpoolLPerSec;
  f->loopWPerK = f->loopLPerSec * wortJPerLK;
  f->hoseKeepsFrac = f->loopWPerK > 0 ? exp(-m->hoseWPerK / f->loopWPerK) : 0;
  bool mixes = s->bagIn && (leg->stirred || !pumped);
  f->mixWPerK = mixes ? m->mixingLPerSec * wortJPerLK : 0;
  f->mixKgPerSec = mixes ? m->mixingLPerSec * wortKgPerL : 0;
  run_bed(f, s, m, extractFrac, wortKgPerL);
  f->chillWPerK = f->chillWaterKgPerSec = f->drainShareFrac = 0;
  if (leg->chilling && m->chiller != NO_CHILLER) {
    f->chillWaterKgPerSec = m->chillWaterLPerSec * 0.998203;
    f->chillWPerK = leg->runOff ? 0 : passed_w_per_k(m, wortJPerLK);
    double usualJPerLK = wort_j_per_kg_k(0.12) * wort_kg_per_l(0.12, 60);
    double passed =
        leg->runOff && m->chiller != IMMERSION ? passed_w_per_k(m, usualJPerLK) : f->chillWPerK;
    f->drainShareFrac = passed / (m->chillWaterLPerSec * WATER_J_PER_KG_K);
  }
  f->runOffKgPerSec = leg->runOff ? m->chillWortLPerSec * wortKgPerL : 0;
}

/* with: malt kg, moisture, extract, temperature, wetting heat in J */
static void dough_in(struct flows *f, const double *with, struct state *s,
                     const struct member *m) {
  double waterKg = with[0] * with[1];
  double dryKg = with[0] - waterKg;
  double potentialKg = dryKg * with[2] * m->mashFrac;
  double goodsJPerK = waterKg * WATER_J_PER_KG_K + dryKg * SOLIDS_J_PER_KG_K;
  double mashC = (f->kettleJPerK * s->kettleC + goodsJPerK * with[3] + with[4]) /
                 (f->kettleJPerK + goodsJPerK);
  s->carriedJ -= goodsJPerK * with[3] + with[4];
  s->waterKg += waterKg;
  s->grainKg = with[0];
  s->inertKg = dryKg - potentialKg;
  s->solubleKg = potentialKg * 0.25;
  s->starchKg = potentialKg - s->solubleKg;
  s->alphaFrac = s->betaFrac = s->precursorFrac = 1;
  s->bagIn = true;
  s->kettleC = s->bedC = s->headC = mashC;
}

static void bag_out(struct flows *f, double keptKgPerKg, struct state *s) {
  double keptKg = least(keptKgPerKg * s->grainKg, 0.9 * f->bedKg);
  double strength = f->bedKg > 0 ? s->bedExtractKg / f->bedKg : 0;
  double solidsJPerK = solids_kg(s) * SOLIDS_J_PER_KG_K;
  double bedWortJPerK = f->bedJPerK - solidsJPerK;
  double share = f->bedKg > 0 ? keptKg / f->bedKg : 0;
  double keptJPerK = solidsJPerK + share * bedWortJPerK;
  double drippedJPerK = (1 - share) * bedWortJPerK;
  double heldJ =
      f->kettleJPerK * s->kettleC + f->headJPerK * s->headC + drippedJPerK * s->bedC;
  s->carriedJ += keptJPerK * s->bedC;
  s->kettleC = heldJ / (f->kettleJPerK + f->headJPerK + drippedJPerK);
  double keptExtractKg = keptKg * strength;
  double shared = extract_kg(s) > 0 ? keptExtractKg / extract_kg(s) : 0;
  s->fermentableKg *= 1 - shared;
  s->precursorFrac *= 1 - keptKg / liquid_kg(s);
  s->kettleExtractKg += s->bedExtractKg - keptExtractKg;
  s->bedExtractKg = 0;
  s->bagExtractKg = keptExtractKg;
  s->bagWaterKg = keptKg - keptExtractKg;
  s->waterKg -= s->bagWaterKg;
  s->bagUndissolvedKg = solids_kg(s);
  s->inertKg = s->solubleKg = s->starchKg = s->pastedKg = 0;
  s->bagIn = false;
  s->bedC = s->headC = s->kettleC;
}

static void mix_into(const struct flows *f, struct state *s, double addedJPerK, double addedC) {
  s->carriedJ -= addedJPerK * addedC;
  s->kettleC =
      (f->kettleJPerK * s->kettleC + addedJPerK * addedC) / (f->kettleJPerK + addedJPerK);
  s->boiling = false;
}

void apply_deed(struct flows *f, const struct action *deed, struct state *s,
                const struct member *m) {
  const double *with = deed->with;
  weigh(f, s, m);
  switch (deed->kind) {
    case DOUGH_IN: dough_in(f, with, s, m); break;
    case BAG_OUT: bag_out(f, with[0], s); break;
    case TOP_UP:
      mix_into(f, s, with[0] * WATER_J_PER_KG_K, with[1]);
      s->waterKg += with[0];
      break;
    case ADD_EXTRACT:
      mix_into(f, s, with[1] * WATER_J_PER_KG_K + with[0] * EXTRACT_J_PER_KG_K, 20);
      s->waterKg += with[1];
      s->kettleExtractKg += with[0];
      s->fermentableKg += with[0] * with[2];
      break;
    case ADD_HOPS:
      s->alphaMg[(int)with[0]] += with[1];
      s->hopCount = (int)most(s->hopCount, with[0] + 1);
      s->hopWortKg += with[2];
      break;
    default: break;
  }
  weigh(f, s, m);
}
