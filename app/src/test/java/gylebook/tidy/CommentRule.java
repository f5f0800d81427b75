package gylebook.tidy;

import java.util.ArrayList;
import java.util.List;

/// Doc comments are whole and in the one form: `///`, never cut in two by a formatter.
final class CommentRule implements Rule {
  private static final int LINE_MAX = 100;

  @Override
  public String name() {
    return "comment";
  }

  @Override
  public List<Fault> faults(Sheet sheet) {
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < sheet.lines().size(); i++) {
      String line = sheet.lines().get(i).strip();
      String above = i == 0 ? "" : sheet.lines().get(i - 1).strip();
      if (above.startsWith("///") && line.startsWith("//") && !line.startsWith("///")) {
        faults.add(sheet.fault(this, i + 1, "breaks off a /// comment; make its lines shorter"));
      }
      if (line.startsWith("/**")) {
        faults.add(sheet.fault(this, i + 1, "write doc comments as /// (markdown)"));
      }
      if (line.startsWith("///") && sheet.lines().get(i).length() > LINE_MAX) {
        faults.add(sheet.fault(this, i + 1, "is longer than " + LINE_MAX + " characters"));
      }
    }
    return faults;
  }
}
