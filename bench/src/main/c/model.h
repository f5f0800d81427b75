/* The simulator's scheme in plain scalar C: the yardstick of speed for the Java code.
   Names follow the Java classes, so the two can be read side by side. */
#ifndef GYLEBOOK_MODEL_H
#define GYLEBOOK_MODEL_H

#include <stdbool.h>

#define MOST_HOPS 24
#define MOST_ACTIONS 64
#define TABLES 9
#define SURFACE_COUNT 109

#define WATER_J_PER_KG_K 4186.0
#define EXTRACT_J_PER_KG_K 2160.0
#define SOLIDS_J_PER_KG_K 1590.0

enum place { KETTLE, SUCTION, RETURN, BED };
enum chiller { NO_CHILLER, IMMERSION, COUNTERFLOW, PLATE };

/* The member's numbers, in the order in which the script gives them. */
struct member {
  double waterBoilsC, latentJPerKg, riseKPerFrac, riseKPerFrac2, roomC, tapC, pressureKpa;
  double surfaceM2, steelJPerK, wallWPerK, wortToWallWPerK, lidOnWPerK, lidOffWPerK, lidLeakFrac;
  double deadL, elementW, elementTopM, bedM2, permeabilityM2, bagWPerK, bedKgPerKg, crestM;
  double displacementLPerKg, hasPump, hoseL, hoseWPerK, mashLPerSec, whirlpoolLPerSec, suctionM;
  double suctionLossM, wantedNpshM, place, probeLagSec, probeBiasK, gainFracPerK, integralSec;
  double trackingSec, chiller, chillHotKPerW, chillColdKPerW, chillWortLPerSec, chillWaterLPerSec;
  double chillHeldL, mashFrac, mixingLPerSec;
};
#define MEMBER_COUNT (sizeof(struct member) / sizeof(double))

enum kind { LEG, DOUGH_IN, BAG_OUT, TOP_UP, ADD_EXTRACT, ADD_HOPS, MARK };
enum until { AFTER, READS, BOILS, COOLED_TO, RUN_OFF };
enum pump { PUMP_OFF, PUMP_MASH, PUMP_WHIRLPOOL };

/* An action: a leg's settings, or the numbers of a deed in `with`. */
struct action {
  enum kind kind;
  bool automatic, lidOn, stirred, chilling, runOff;
  double drive, risesFromC, risesKPerSec, untilValue, mostSec;
  enum pump pump;
  enum until until;
  double with[5];
};

struct table {
  int count;
  double perStep;
  double *values;
};

struct day {
  struct member member;
  double surfaceKgPerSec[SURFACE_COUNT], surfaceW[SURFACE_COUNT];
  struct action actions[MOST_ACTIONS];
  int actionCount;
  double waterKg, startC;
};

struct state {
  double clockSec;
  double waterKg, kettleExtractKg, bedExtractKg, grainKg, inertKg, solubleKg, starchKg, pastedKg;
  double fermentableKg;
  double kettleC, bedC, headC, wallC, hoseC, stubC, probeC, integralFrac, setC;
  bool boiling, bagIn;
  double alphaFrac, betaFrac;
  double alphaMg[MOST_HOPS], isoMg[MOST_HOPS], castIsoMg[MOST_HOPS];
  int hopCount;
  double hopWortKg, precursorFrac, sulfideFrac;
  double steamKg, bagWaterKg, bagExtractKg, bagUndissolvedKg, castWaterKg, castExtractKg;
  double castFermentableKg, castSulfideFracKg, castHeatJ, elementJ, wallLossJ, surfaceLossJ;
  double hoseLossJ, chilledJ, carriedJ, loopDoseMin, chillWaterKg, dutyFrac;
};

struct row {
  double atSec, wortC, grainC, hotL, coldL, wortPlato, elementJ, steamKg;
};

struct log {
  struct row rows[MOST_ACTIONS];
  int count, steps;
  double elementCoverM, highestM, doughInM, breakM, suctionM, drainC, bagKg, drippedKg;
  double grainMeanC, grainMeanSec;
  bool gaveUp;
};

struct flows {
  double kettleJPerK, bedJPerK, headJPerK, loopWPerK, bedWPerK, spillWPerK, mixWPerK, chillWPerK;
  double kettleKg, bedKg, headKg, loopLPerSec, bedKgPerSec, hoseKeepsFrac, mixKgPerSec;
  double runOffKgPerSec, bedHeadM, chillWaterKgPerSec, drainShareFrac;
};

/* In the order of the script. */
enum table_name {
  PASTING, BETA_LOSS, ALPHA_LOSS, APPROACH, ISO_FORMED, ISO_LOST, PRECURSOR_LOST, DOSE, SATURATION
};
extern struct table tables[TABLES];

static inline double least(double a, double b) { return a < b ? a : b; }
static inline double most(double a, double b) { return a > b ? a : b; }

static inline double table_at(enum table_name name, double wortC) {
  const struct table *t = &tables[name];
  double place = wortC * t->perStep;
  int i = (int)place;
  i = i > t->count - 2 ? t->count - 2 : i;
  i = i < 0 ? 0 : i;
  return t->values[i] + (place - i) * (t->values[i + 1] - t->values[i]);
}

static inline double extract_kg(const struct state *s) {
  return s->kettleExtractKg + s->bedExtractKg;
}
static inline double liquid_kg(const struct state *s) {
  return s->waterKg + s->kettleExtractKg + s->bedExtractKg;
}
static inline double extract_frac(const struct state *s) {
  double kg = liquid_kg(s);
  return kg > 0 ? extract_kg(s) / kg : 0;
}
static inline double solids_kg(const struct state *s) {
  return s->inertKg + s->solubleKg + s->starchKg + s->pastedKg;
}
static inline double wort_j_per_kg_k(double extractFrac) {
  return WATER_J_PER_KG_K + extractFrac * (EXTRACT_J_PER_KG_K - WATER_J_PER_KG_K);
}

double wort_kg_per_l(double extractFrac, double wortC);

void weigh(struct flows *f, const struct state *s, const struct member *m);
void run_flows(struct flows *f, const struct state *s, const struct member *m,
               const struct action *leg);
double passed_w_per_k(const struct member *m, double wortJPerLK);
double hot_l(const struct state *s, const struct member *m);
double cold_l(const struct state *s);
double wort_plato(const struct state *s, const struct flows *f);
void apply_deed(struct flows *f, const struct action *deed, struct state *s,
                const struct member *m);

/* Heat and control over one step. */
/* How long the set point still climbs. */
double thermal_rises_sec(const struct state *s, const struct action *leg);
void thermal_prepare(const struct day *day, struct state *s, const struct action *leg,
                     const struct flows *f);
void thermal_start(const struct state *s);
double thermal_tried_error(double stepSec, double toleranceK, bool boiling);
void thermal_land(struct state *s, double stepSec);
void thermal_book(struct state *s, double stepSec);
double thermal_steam(const struct state *end);
double thermal_surplus(const struct state *s);

void chemistry_mash(struct state *s, const struct flows *f, double stepSec, double bedC,
                    double kettleC);
void chemistry_hops(struct state *s, double stepSec, double kettleC);
void chemistry_sulfide(struct state *s, double stepSec, double kettleC, double steamKgPerSec);

void run_day(const struct day *day, struct state *s, struct log *log);

#endif
