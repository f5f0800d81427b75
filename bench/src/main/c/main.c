/* main SCRIPT             writes the end of each day in the script
   main SCRIPT REPEATS     writes the seconds of processor time that one day takes */
#include "model.h"

#include <stdio.h>
#include <stdlib.h>
#include <time.h>

static FILE *script;

static double number(void) {
  double value;
  if (fscanf(script, "%lf", &value) != 1) {
    fprintf(stderr, "the script ends early\n");
    exit(2);
  }
  return value;
}

static void numbers(double *to, int count) {
  for (int i = 0; i < count; i++) {
    to[i] = number();
  }
}

static void read_tables(void) {
  for (int i = 0; i < TABLES; i++) {
    tables[i].count = (int)number();
    tables[i].perStep = number();
    tables[i].values = malloc(sizeof(double) * (size_t)tables[i].count);
    numbers(tables[i].values, tables[i].count);
  }
}

static void read_action(struct action *action) {
  action->kind = (enum kind)number();
  if (action->kind == LEG) {
    action->automatic = number() != 0;
    action->drive = number();
    action->risesFromC = number();
    action->risesKPerSec = number();
    action->pump = (enum pump)number();
    action->lidOn = number() != 0;
    action->stirred = number() != 0;
    action->chilling = number() != 0;
    action->runOff = number() != 0;
    action->until = (enum until)number();
    action->untilValue = number();
    action->mostSec = number();
  } else {
    numbers(action->with, 5);
  }
}

static void read_day(struct day *day) {
  numbers((double *)&day->member, MEMBER_COUNT);
  numbers(day->surfaceKgPerSec, SURFACE_COUNT);
  numbers(day->surfaceW, SURFACE_COUNT);
  day->waterKg = number();
  day->startC = number();
  day->actionCount = (int)number();
  for (int i = 0; i < day->actionCount; i++) {
    read_action(&day->actions[i]);
  }
}

static void tell(const struct state *s, const struct log *log) {
  printf("%d %d", log->steps, log->count);
  for (int i = 0; i < log->count; i++) {
    const struct row *r = &log->rows[i];
    printf(" %.17g %.17g %.17g %.17g %.17g %.17g", r->atSec, r->wortC, r->grainC, r->hotL,
           r->coldL, r->wortPlato);
  }
  printf(" %.17g %.17g %.17g %.17g %.17g %.17g %.17g %.17g %.17g", s->castWaterKg,
         s->castExtractKg, s->castFermentableKg, s->castHeatJ, s->precursorFrac, s->sulfideFrac,
         s->loopDoseMin, s->elementJ, s->steamKg);
  printf(" %.17g %.17g\n", s->castIsoMg[0], log->highestM);
}

static double processor_sec(void) {
  struct timespec now;
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return (double)now.tv_sec + 1e-9 * (double)now.tv_nsec;
}

int main(int count, char **words) {
  if (count < 2 || !(script = fopen(words[1], "r"))) {
    fprintf(stderr, "no script\n");
    return 2;
  }
  read_tables();
  int days = (int)number();
  struct day *day = calloc((size_t)days, sizeof *day);
  for (int i = 0; i < days; i++) {
    read_day(&day[i]);
  }
  fclose(script);
  static struct state state;
  static struct log log;
  if (count < 3) {
    for (int i = 0; i < days; i++) {
      run_day(&day[i], &state, &log);
      tell(&state, &log);
    }
    return 0;
  }
  int repeats = atoi(words[2]);
  double kept = 0;
  double startSec = processor_sec();
  for (int r = 0; r < repeats; r++) {
    for (int i = 0; i < days; i++) {
      run_day(&day[i], &state, &log);
      kept += state.castExtractKg;
    }
  }
  double tookSec = processor_sec() - startSec;
  printf("%.9g %.9g\n", tookSec / repeats / days, kept);
  return 0;
}
