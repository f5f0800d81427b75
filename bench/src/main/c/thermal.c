#include "model.h"

#include <math.h>
#include <string.h>

/* The nine quantities of Point.java. */
struct point {
  double kettle, bed, head, wall, hose, stub, probe, integral, set;
};

static const double STUB_ON_SEC = 5, STUB_OFF_SEC = 240, STUB_LOSS_FRAC = 0.03;
static const double HOSE_OFF_SEC = 600, HOSE_STRETCH = 1.4;

static const struct day *day;
static const struct member *m;

static double kettleJPerK, bedJPerK, headJPerK, bagWPerK, bedFlowWPerK, spillWPerK, loopWPerK;
static double returnWPerK, mixWPerK, surfaceWPerK, steamFrac, chillWPerK, chillC, hoseKeepsFrac;
static double hosePerSec, stubPerSec, stubKeepsFrac, setKPerSec, handFrac;
static bool bagIn, automatic, saturated;
static enum place place;

static struct point at, trial, k1, k2, rate, rate2;
static double dutyStartFrac, dutyEndFrac;

static double hoseGain, hoseDiv, headHose, headBed, headDiv, bedHead, bedDiv;
static double wallGain, wallDiv, stubGain, stubDiv, probeDiv, headGain, bedGain, probeGain;
static double dutyGain, dutyProbe, integralProbe, integralDiv, kettleDiv;

static void load(struct point *p, const struct state *s) {
  p->kettle = s->kettleC;
  p->bed = s->bedC;
  p->head = s->headC;
  p->wall = s->wallC;
  p->hose = s->hoseC;
  p->stub = s->stubC;
  p->probe = s->probeC;
  p->integral = s->integralFrac;
  p->set = s->setC;
}

static void sum(struct point *to, const struct point *from, double a, const struct point *slope) {
  to->kettle = from->kettle + a * slope->kettle;
  to->bed = from->bed + a * slope->bed;
  to->head = from->head + a * slope->head;
  to->wall = from->wall + a * slope->wall;
  to->hose = from->hose + a * slope->hose;
  to->stub = from->stub + a * slope->stub;
  to->probe = from->probe + a * slope->probe;
  to->integral = from->integral + a * slope->integral;
  to->set = from->set + a * slope->set;
}

double thermal_rises_sec(const struct state *s, const struct action *leg) {
  double leftK = leg->drive - most(s->setC, leg->risesFromC);
  return leg->risesKPerSec > 0 && leftK > 1e-6 ? leftK / leg->risesKPerSec : 0;
}

void thermal_prepare(const struct day *of, struct state *s, const struct action *leg,
                     const struct flows *f) {
  day = of;
  m = &of->member;
  place = (enum place)m->place;
  bagIn = s->bagIn;
  kettleJPerK = f->kettleJPerK;
  bedJPerK = f->bedJPerK;
  headJPerK = f->headJPerK;
  bagWPerK = bagIn ? m->bagWPerK : 0;
  bedFlowWPerK = f->bedWPerK;
  spillWPerK = f->spillWPerK;
  loopWPerK = bagIn ? f->loopWPerK : 0;
  returnWPerK = bagIn ? 0 : f->loopWPerK;
  mixWPerK = f->mixWPerK;
  surfaceWPerK = leg->lidOn ? m->lidOnWPerK : m->lidOffWPerK;
  steamFrac = leg->lidOn ? m->lidLeakFrac : 1;
  chillWPerK = f->chillWPerK;
  chillC = m->tapC;
  bool hoseRuns = f->loopWPerK > 0;
  hoseKeepsFrac = hoseRuns ? f->hoseKeepsFrac : 0;
  hosePerSec =
      hoseRuns ? f->loopLPerSec / (HOSE_STRETCH * most(0.01, m->hoseL)) : 1 / HOSE_OFF_SEC;
  stubPerSec = 1 / (hoseRuns ? STUB_ON_SEC : STUB_OFF_SEC);
  stubKeepsFrac = hoseRuns ? 1 : 1 - STUB_LOSS_FRAC;
  automatic = leg->automatic;
  setKPerSec = 0;
  if (automatic && thermal_rises_sec(s, leg) > 0) {
    s->setC = most(s->setC, leg->risesFromC);
    setKPerSec = leg->risesKPerSec;
  } else if (automatic) {
    s->setC = leg->drive;
  }
  handFrac = automatic ? 0 : leg->drive;
}

static int surface_index(double wortC) {
  int i = (int)wortC;
  i = i > SURFACE_COUNT - 2 ? SURFACE_COUNT - 2 : i;
  return i < 0 ? 0 : i;
}

static double surface_at(const double *row, double wortC) {
  int i = surface_index(wortC);
  return row[i] + (wortC - i) * (row[i + 1] - row[i]);
}

static double surface_w(double topC) {
  return steamFrac * surface_at(day->surfaceW, topC) + surfaceWPerK * (topC - m->roomC);
}

static double surface_slope(double topC) {
  int i = surface_index(topC);
  return steamFrac * (day->surfaceW[i + 1] - day->surfaceW[i]) + surfaceWPerK;
}

static double asked(const struct point *p) {
  return m->gainFracPerK * (p->set - p->probe - m->probeBiasK) + p->integral;
}

static double duty(const struct point *p) {
  return automatic ? most(0, least(1, asked(p))) : handFrac;
}

static double kettle_w(const struct point *p, double dutyFrac) {
  double k = p->kettle;
  double netW = dutyFrac * m->elementW - m->wortToWallWPerK * (k - p->wall) -
                (bagWPerK + bedFlowWPerK + mixWPerK) * (k - p->bed) - spillWPerK * (k - p->head) -
                returnWPerK * (k - p->hose) - chillWPerK * (k - chillC);
  return bagIn ? netW : netW - surface_w(k);
}

static double place_c(const struct point *p) {
  switch (place) {
    case SUCTION: return p->stub;
    case RETURN: return p->hose;
    case BED: return bagIn ? p->bed : p->kettle;
    default: return p->kettle;
  }
}

static double rates_and_duty(const struct point *p, bool boiling, struct point *to) {
  double dutyFrac = duty(p);
  to->kettle = boiling ? 0 : kettle_w(p, dutyFrac) / kettleJPerK;
  if (bagIn) {
    to->head = (loopWPerK * (p->hose - p->head) + mixWPerK * (p->bed - p->head) -
                surface_w(p->head)) / headJPerK;
    to->bed = ((bagWPerK + mixWPerK) * (p->kettle - p->bed) +
               (bedFlowWPerK + mixWPerK) * (p->head - p->bed)) / bedJPerK;
  } else {
    to->head = 0;
    to->bed = 0;
  }
  to->wall = (m->wortToWallWPerK * (p->kettle - p->wall) - m->wallWPerK * (p->wall - m->roomC)) /
             m->steelJPerK;
  to->hose = hosePerSec * (m->roomC + hoseKeepsFrac * (p->kettle - m->roomC) - p->hose);
  to->stub = stubPerSec * (m->roomC + stubKeepsFrac * (p->kettle - m->roomC) - p->stub);
  to->probe = (place_c(p) - p->probe) / m->probeLagSec;
  to->integral = 0;
  to->set = setKPerSec;
  if (automatic) {
    double errorK = p->set - p->probe - m->probeBiasK;
    to->integral = m->gainFracPerK * errorK / m->integralSec +
                   (dutyFrac - asked(p)) / m->trackingSec;
  }
  return dutyFrac;
}

void thermal_start(const struct state *s) {
  load(&at, s);
  dutyStartFrac = rates_and_duty(&at, s->boiling, &rate);
  double askedFrac = asked(&at);
  saturated = !automatic || askedFrac <= 0 || askedFrac >= 1;
}

static void eliminate_bed(double s) {
  if (!bagIn) {
    headGain = 0;
    bedGain = 0;
    return;
  }
  headDiv = 1 / (1 + s * (loopWPerK + mixWPerK + surface_slope(at.head)) / headJPerK);
  headHose = s * loopWPerK / headJPerK * headDiv;
  headBed = s * mixWPerK / headJPerK * headDiv;
  double bedKettle = s * (bagWPerK + mixWPerK) / bedJPerK;
  bedHead = s * (bedFlowWPerK + mixWPerK) / bedJPerK;
  bedDiv = 1 / (1 + s * (bagWPerK + bedFlowWPerK + 2 * mixWPerK) / bedJPerK - bedHead * headBed);
  bedGain = (bedKettle + bedHead * headHose * hoseGain) * bedDiv;
  headGain = headHose * hoseGain + headBed * bedGain;
}

static void eliminate_control(double s) {
  double gain = m->gainFracPerK;
  if (saturated) {
    integralDiv = automatic ? 1 / (1 + s / m->trackingSec) : 1;
    integralProbe = automatic ? s * gain * (1 / m->trackingSec - 1 / m->integralSec) : 0;
    dutyProbe = 0;
    dutyGain = 0;
  } else {
    integralDiv = 1;
    integralProbe = -s * gain / m->integralSec;
    dutyProbe = -gain * (1 + s / m->integralSec);
    dutyGain = dutyProbe * probeGain;
  }
}

static void eliminate(double s) {
  hoseDiv = 1 / (1 + s * hosePerSec);
  hoseGain = s * hosePerSec * hoseKeepsFrac * hoseDiv;
  wallDiv = 1 / (1 + s * (m->wortToWallWPerK + m->wallWPerK) / m->steelJPerK);
  wallGain = s * m->wortToWallWPerK / m->steelJPerK * wallDiv;
  stubDiv = 1 / (1 + s * stubPerSec);
  stubGain = s * stubPerSec * stubKeepsFrac * stubDiv;
  eliminate_bed(s);
  double placeGain;
  switch (place) {
    case SUCTION: placeGain = stubGain; break;
    case RETURN: placeGain = hoseGain; break;
    case BED: placeGain = bagIn ? bedGain : 1; break;
    default: placeGain = 1;
  }
  probeDiv = 1 / (1 + s / m->probeLagSec);
  probeGain = s / m->probeLagSec * placeGain * probeDiv;
  eliminate_control(s);
  double topWPerK = bagIn ? 0 : surface_slope(at.kettle);
  double coupling = m->wortToWallWPerK * (1 - wallGain) +
                    (bagWPerK + bedFlowWPerK + mixWPerK) * (1 - bedGain) +
                    spillWPerK * (1 - headGain) + returnWPerK * (1 - hoseGain) + chillWPerK +
                    topWPerK - m->elementW * dutyGain;
  kettleDiv = 1 / (1 + s * coupling / kettleJPerK);
}

static void solve(const struct point *r, double s, bool boiling, struct point *k) {
  double hose = r->hose * hoseDiv;
  double wall = r->wall * wallDiv;
  double stub = r->stub * stubDiv;
  double head = 0, bed = 0;
  if (bagIn) {
    double alone = r->head * headDiv + headHose * hose;
    bed = (r->bed + bedHead * alone) * bedDiv;
    head = alone + headBed * bed;
  }
  double here;
  switch (place) {
    case SUCTION: here = stub; break;
    case RETURN: here = hose; break;
    case BED: here = bed; break;
    default: here = 0;
  }
  double probe = (r->probe + s / m->probeLagSec * here) * probeDiv;
  double dutyFrac = saturated ? 0 : r->integral + dutyProbe * (probe - r->set);
  double kettle = 0;
  if (!boiling) {
    kettle = (r->kettle + s / kettleJPerK *
                              (m->elementW * dutyFrac + m->wortToWallWPerK * wall +
                               (bagWPerK + bedFlowWPerK + mixWPerK) * bed + spillWPerK * head +
                               returnWPerK * hose)) *
             kettleDiv;
  }
  k->kettle = kettle;
  k->hose = hose + hoseGain * kettle;
  k->wall = wall + wallGain * kettle;
  k->stub = stub + stubGain * kettle;
  k->head = head + headGain * kettle;
  k->bed = bed + bedGain * kettle;
  k->probe = probe + probeGain * kettle;
  k->set = r->set;
  k->integral = (r->integral + integralProbe * (k->probe - k->set)) * integralDiv;
}

double thermal_tried_error(double stepSec, double toleranceK, bool boiling) {
  double s = (1 - sqrt(0.5)) * stepSec;
  eliminate(s);
  solve(&rate, s, boiling, &k1);
  sum(&trial, &at, stepSec, &k1);
  dutyEndFrac = rates_and_duty(&trial, boiling, &rate2);
  sum(&rate2, &rate2, -2, &k1);
  solve(&rate2, s, boiling, &k2);
  double worst = fabs(k1.kettle + k2.kettle);
  worst = most(worst, fabs(k1.bed + k2.bed));
  worst = most(worst, fabs(k1.head + k2.head));
  worst = most(worst, fabs(k1.wall + k2.wall) / 4);
  if (automatic) {
    worst = most(worst, fabs(k1.probe + k2.probe));
  }
  return stepSec / 2 * worst / toleranceK;
}

void thermal_land(struct state *s, double stepSec) {
  sum(&trial, &at, 1.5 * stepSec, &k1);
  sum(&trial, &trial, 0.5 * stepSec, &k2);
  s->kettleC = trial.kettle;
  s->bedC = trial.bed;
  s->headC = trial.head;
  s->wallC = trial.wall;
  s->hoseC = trial.hose;
  s->stubC = trial.stub;
  s->probeC = trial.probe;
  s->integralFrac = trial.integral;
  s->setC = trial.set;
}

void thermal_book(struct state *s, double stepSec) {
  double topStartC = bagIn ? at.head : at.kettle;
  double topEndC = bagIn ? s->headC : s->kettleC;
  double kettleMeanC = (at.kettle + s->kettleC) / 2;
  s->dutyFrac = (dutyStartFrac + dutyEndFrac) / 2;
  s->elementJ += s->dutyFrac * m->elementW * stepSec;
  s->wallLossJ += m->wallWPerK * ((at.wall + s->wallC) / 2 - m->roomC) * stepSec;
  s->surfaceLossJ += (surface_w(topStartC) + surface_w(topEndC)) / 2 * stepSec;
  s->hoseLossJ += (loopWPerK + returnWPerK) * (kettleMeanC - (at.hose + s->hoseC) / 2) * stepSec;
  s->chilledJ += chillWPerK * (kettleMeanC - chillC) * stepSec;
}

double thermal_steam(const struct state *end) {
  double startC = bagIn ? at.head : at.kettle;
  double endC = bagIn ? end->headC : end->kettleC;
  return steamFrac *
         (surface_at(day->surfaceKgPerSec, startC) + surface_at(day->surfaceKgPerSec, endC)) / 2;
}

double thermal_surplus(const struct state *s) {
  load(&trial, s);
  return kettle_w(&trial, duty(&trial));
}
