package gylebook.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class StrokeTest {
  private static final Pattern POINT = Pattern.compile("([ML])(-?[0-9.]+) (-?[0-9.]+)");

  private record At(double x, double y) {}

  private static List<At> points(String path) {
    List<At> points = new ArrayList<>();
    Matcher point = POINT.matcher(path);
    while (point.find()) {
      points.add(new At(Double.parseDouble(point.group(2)), Double.parseDouble(point.group(3))));
    }
    return points;
  }

  private static double heightAt(List<At> path, double x) {
    for (int i = 1; i < path.size(); i++) {
      At a = path.get(i - 1);
      At b = path.get(i);
      if (x <= b.x() || i == path.size() - 1) {
        return a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x());
      }
    }
    throw new AssertionError("no line");
  }

  @Test
  void aStraightLineIsItsTwoEnds() {
    Stroke stroke = new Stroke();
    for (int i = 0; i <= 100; i++) {
      stroke.to(10 + 3 * i, 20 + i);
    }
    assertThat(stroke.drawn()).isEqualTo("M10 20L310 120");
  }

  @Test
  void aGapStaysAGapAndACornerACorner() {
    Stroke stroke = new Stroke();
    for (int i = 0; i <= 10; i++) {
      stroke.to(i, Math.abs(i - 5));
    }
    stroke.lift();
    stroke.to(20, -1.25);
    stroke.to(21, 3);
    assertThat(stroke.drawn()).isEqualTo("M0 5L5 0L10 5M20 -1.2L21 3");
  }

  @Test
  void anOutlineThatTurnsBackIsClosed() {
    Stroke stroke = new Stroke();
    for (int i = 0; i <= 10; i++) {
      stroke.to(i, 1);
    }
    for (int i = 10; i >= 0; i--) {
      stroke.to(i, 4);
    }
    stroke.close();
    assertThat(stroke.drawn()).isEqualTo("M0 1L10 1L10 4L0 4Z");
  }

  /// Whatever the line does, no point of it lies further off what is drawn than is allowed, and the
  /// twentieth of a pixel that the last digit rounds.
  @Test
  void everyPointThatIsLeftOutLiesOnWhatIsDrawn() {
    SplittableRandom luck = new SplittableRandom(7);
    for (int line = 0; line < 200; line++) {
      Stroke stroke = new Stroke();
      List<At> all = new ArrayList<>();
      double y = 100;
      double slope = 0;
      for (int i = 0; i < 150; i++) {
        slope = luck.nextInt(10) == 0 ? luck.nextDouble(-3, 3) : slope;
        y += slope + luck.nextDouble(-0.1, 0.1);
        all.add(new At(6.3 * i, y));
        stroke.to(6.3 * i, y);
      }
      List<At> drawn = points(stroke.drawn());
      assertThat(drawn).hasSizeLessThan(120);
      for (At at : all) {
        assertThat(heightAt(drawn, at.x())).isCloseTo(at.y(), within(Stroke.NEAR_PX + 0.12));
      }
    }
  }
}
