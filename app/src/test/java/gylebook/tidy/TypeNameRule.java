package gylebook.tidy;

import com.sun.source.tree.ClassTree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Types are nouns of the brewery or of physics, not of software.
final class TypeNameRule implements Rule {
  private static final Pattern EMPTY_WORD =
      Pattern.compile(".*(Manager|Helper|Utils?|Service|Impl|Data|Info|Base)$");

  @Override
  public String name() {
    return "type-name";
  }

  @Override
  public List<Fault> faults(Sheet sheet) {
    List<Fault> faults = new ArrayList<>();
    new TreeScanner<Void, Void>() {
      @Override
      public Void visitClass(ClassTree type, Void nothing) {
        Matcher word = EMPTY_WORD.matcher(type.getSimpleName());
        if (word.matches()) {
          faults.add(
              sheet.fault(
                  TypeNameRule.this,
                  type,
                  type.getSimpleName()
                      + " ends in "
                      + word.group(1)
                      + ", which says nothing; name the thing itself"));
        }
        return super.visitClass(type, null);
      }
    }.scan(sheet.tree(), null);
    return faults;
  }
}
