package gylebook.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/// Reports sent one JSON line at a time while the work goes on. The work tells of itself from
/// several threads, so one line is written at a time.
final class Lines {
  private static final int PER_CENT = 100;

  private final OutputStream out;
  private final Runnable left;
  private int told = -1;
  private boolean gone;

  /// @param left what to do when the reader has gone
  Lines(Context context, Runnable left) {
    context.contentType("application/x-ndjson; charset=utf-8");
    try {
      this.out = context.res().getOutputStream();
    } catch (IOException failure) {
      throw new UncheckedIOException("cannot answer", failure);
    }
    this.left = left;
  }

  synchronized void progress(int done, int of) {
    int percent = PER_CENT * done / of;
    // Every per cent would be more lines than a reader can see.
    if (percent / 5 != told) {
      told = percent / 5;
      line(Map.of("progress", percent));
    }
  }

  /// A forecast as it is sent.
  ///
  /// @param last whether nothing follows it
  static Map<String, Object> forecast(long seq, int days, boolean last, GyleRoutes.Told told) {
    return Map.of(
        "seq", seq, "days", days, "last", last, "expect", told.expect(), "forecast", told.html());
  }

  synchronized void forecast(Map<String, Object> forecast) {
    told = -1;
    line(forecast);
  }

  synchronized void overtaken() {
    line(Map.of("overtaken", true));
  }

  private void line(Map<String, ?> report) {
    if (gone) {
      return;
    }
    try {
      out.write((Said.JSON.writeValueAsString(report) + "\n").getBytes(StandardCharsets.UTF_8));
      out.flush();
    } catch (IOException _) {
      gone = true;
      left.run();
    }
  }
}
