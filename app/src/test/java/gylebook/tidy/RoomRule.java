package gylebook.tidy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/// The `package-info` of a room says what the room is, what it must not know, and where its door
/// is.
final class RoomRule implements Rule {
  private static final Pattern KNOWS_NOT =
      Pattern.compile("(?i)\\b(not|no|nothing|neither|never)\\b");
  private static final Pattern DOOR = Pattern.compile("(?i)front doors?\\b");

  @Override
  public String name() {
    return "room";
  }

  @Override
  public List<Fault> faults(Sheet sheet) {
    if (!sheet.file().endsWith("package-info.java")) {
      return List.of();
    }
    String text = String.join(" ", sheet.lines()).replace("///", " ").replaceAll("\\s+", " ");
    List<Fault> faults = new ArrayList<>();
    say(
        sheet,
        faults,
        KNOWS_NOT.matcher(text).find(),
        "does not say what the room must not know ('It must not know ...')");
    say(
        sheet,
        faults,
        DOOR.matcher(text).find(),
        "does not name the room's front door ('Front door: [X], [Y].')");
    say(sheet, faults, text.contains("@NullMarked"), "is not @NullMarked");
    return faults;
  }

  private void say(Sheet sheet, List<Fault> faults, boolean good, String what) {
    if (!good) {
      faults.add(sheet.fault(this, 1, what));
    }
  }

  /// Packages that have sources but no `package-info`.
  static Set<String> unexplained(List<Sheet> sheets) {
    Set<String> rooms = new TreeSet<>();
    sheets.forEach(sheet -> rooms.add(String.valueOf(sheet.tree().getPackageName())));
    sheets.stream()
        .filter(sheet -> sheet.file().endsWith("package-info.java"))
        .forEach(sheet -> rooms.remove(String.valueOf(sheet.tree().getPackageName())));
    return rooms;
  }
}
