package gylebook.app;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.ColorScheme;
import gylebook.brewday.Command;
import gylebook.brewday.FixedPlan;
import gylebook.brewday.Follower;
import gylebook.estimate.HiddenDay;
import gylebook.estimate.Supposition;
import gylebook.journal.Event;
import gylebook.plan.Demo;
import gylebook.plan.Planner;
import gylebook.rig.DemoRigs;
import gylebook.rig.Origin;
import gylebook.rig.Rig;
import java.time.Instant;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/// Looking back on a day, and carrying what it says of the rig to the next; the day is one of a
/// hidden rig, noted as a brewer would.
class LearntStoryTest extends Served {
  private static final Instant BEGAN = Instant.parse("2026-03-28T08:00:00Z");
  private static final double SECONDS = 60_000;

  @Override
  Instant now() {
    return BEGAN.plusSeconds(12 * 3600);
  }

  private void note(String gyleId, double sec, Command command) {
    note(gyleId, BEGAN.plusMillis(Math.round(1000 * sec)), command);
  }

  private void brewed(String gyleId, Supposition wrong) {
    write(gyleId, new Command.FixPlan("6", 20, 60, "as planned"));
    FixedPlan plan = clerk.book().gyle(gyleId).orElseThrow().plan().orElseThrow();
    Rig rig = wallet.rig(plan.rig());
    Follower follower =
        Follower.of(Demo.copperBitter(), rig, plan.days(), plan.seed(), BEGAN).orElseThrow();
    HiddenDay hidden =
        new HiddenDay(
            Planner.day(Demo.copperBitter(), rig, follower.plan().settings()),
            follower.instruments(),
            wrong,
            2);
    note(gyleId, 0, new Command.StartDay());
    double walkedSec = -900;
    while (hidden.underWay()) {
      String leg = hidden.leg();
      boolean ready = hidden.pass(hidden.clockSec() + 120);
      if (ready) {
        note(gyleId, hidden.clockSec(), new Command.Reach(leg));
        hidden.done();
        if (leg.equals("bagOut") || leg.equals("flameOut")) {
          read(gyleId, hidden, "dip-stick", "KETTLE", "L", 1);
          read(gyleId, hidden, "hydrometer", "KETTLE", "\u00b0P", 1);
        }
      } else if (!leg.equals("cast") && !leg.equals("knockOut")) {
        read(gyleId, hidden, HiddenDay.DUTY, "KETTLE", "%", 100);
        read(gyleId, hidden, "controller", "SUCTION", "\u00b0C", 1);
        if (hidden.clockSec() - walkedSec >= 900) {
          walkedSec = hidden.clockSec();
          String place = leg.startsWith("rest") ? "BED" : "KETTLE";
          read(gyleId, hidden, Follower.HAND_HELD, place, "\u00b0C", 1);
        }
      }
    }
  }

  private void read(
      String gyleId, HiddenDay hidden, String name, String place, String unit, double times) {
    String asRead = String.format(Locale.ROOT, "%.2f %s", hidden.shown(name) * times, unit);
    note(
        gyleId,
        hidden.clockSec(),
        new Command.Note(new Event.ReadingTaken(name, place, true, asRead, "")));
  }

  private Page looked(BrowserContext context, String gyleId) {
    Page page = opened(context, "gyles/" + gyleId + "/learnt");
    assertThat(page.locator("#learnt[aria-busy]"))
        .hasCount(0, new LocatorAssertions.HasCountOptions().setTimeout(SECONDS));
    sound(page);
    return page;
  }

  private Rig rig(String gyleId) {
    return wallet.rig(clerk.book().gyle(gyleId).orElseThrow().rig().document());
  }

  @Test
  void whatADaySaysIsShownAndCarriedOnlyWhenItIsTaken() {
    own("mine");
    own("next");
    brewed("mine", Supposition.NOTHING);
    try (BrowserContext phone = browser.sized(390, 844, ColorScheme.LIGHT)) {
      Page page = looked(phone, "mine");

      assertThat(page.locator("h1")).hasText("Looking back");
      assertThat(page.locator("main")).containsText("evaporation against the formula");
      assertThat(page.locator("main")).containsText("Doubt left");
      assertThat(rig("mine").kettle().evaporationFactor().origin()).isEqualTo(Origin.ASSUMED);
      page.locator("button[data-onto=next]").click();
      assertThat(page.locator("#state"))
          .containsText("the rig of \u201cnext\u201d has the numbers");
      assertThat(page.locator("button[data-onto=next]")).hasCount(0);
      assertThat(rig("next").kettle().evaporationFactor().origin()).isEqualTo(Origin.LEARNT);
      assertThat(rig("next").kettle().evaporationFactor().basis())
          .contains("mine", "28 March 2026");
      assertThat(rig("mine").kettle().evaporationFactor().origin()).isEqualTo(Origin.ASSUMED);
      assertThat(rig("next").kettle().deadL()).isEqualTo(DemoRigs.household().kettle().deadL());

      write("next", new Command.Undo());
      assertThat(rig("next")).isEqualTo(DemoRigs.household());
    }
  }

  @Test
  void aDayWithAFaultTeachesNothingAndSaysWhy() {
    own("mine");
    brewed("mine", Supposition.HEATER_DEAD);
    try (BrowserContext tablet = browser.sized(1024, 768, ColorScheme.DARK)) {
      Page page = looked(tablet, "mine");

      assertThat(page.locator("main")).containsText("nothing is learnt from this day");
      assertThat(page.locator("main")).containsText("The heater stays off");
      // Numbers that were reckoned as if all had been well would be believed.
      assertThat(page.locator("table")).hasCount(0);
      assertThat(page.locator("button[data-onto]")).hasCount(0);
    }
  }

  @Test
  void beforeTheEndThereIsNothingToLookBackOn() {
    own("mine");
    try (BrowserContext phone = browser.sized(390, 844, ColorScheme.LIGHT)) {
      Page page = looked(phone, "mine");
      assertThat(page.locator("#learnt")).containsText("This day is not over");

      write("mine", new Command.FixPlan("6", 20, 20, "as planned"));
      note("mine", 0, new Command.StartDay());
      page.reload();
      Locator told = page.locator("#learnt");
      assertThat(told).containsText("This day is not over");
    }
  }
}
