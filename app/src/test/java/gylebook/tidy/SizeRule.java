package gylebook.tidy;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.TreePathScanner;
import java.util.ArrayList;
import java.util.List;

/// Files, methods and parameter lists a reader can hold in mind.
final class SizeRule implements Rule {
  private static final int FILE_LINES_MAX = 400;
  private static final int METHOD_LINES_MAX = 60;
  private static final int PARAMETERS_MAX = 7;

  @Override
  public String name() {
    return "size";
  }

  @Override
  public List<Fault> faults(Sheet sheet) {
    List<Fault> faults = new ArrayList<>();
    if (sheet.lines().size() > FILE_LINES_MAX) {
      faults.add(
          sheet.fault(
              this, 1, "has " + sheet.lines().size() + " lines, the limit is " + FILE_LINES_MAX));
    }
    new TreePathScanner<Void, Void>() {
      @Override
      public Void visitMethod(MethodTree method, Void nothing) {
        long lines = sheet.lastLine(method) - sheet.firstLine(method) + 1;
        if (lines > METHOD_LINES_MAX) {
          faults.add(
              sheet.fault(
                  SizeRule.this,
                  method,
                  method.getName() + " has " + lines + " lines, the limit is " + METHOD_LINES_MAX));
        }
        int count = method.getParameters().size();
        if (count > PARAMETERS_MAX && !isRecordConstructor(method)) {
          faults.add(
              sheet.fault(
                  SizeRule.this,
                  method,
                  method.getName()
                      + " takes "
                      + count
                      + " parameters, the limit is "
                      + PARAMETERS_MAX
                      + "; what travels together is a record"));
        }
        return super.visitMethod(method, null);
      }

      private boolean isRecordConstructor(MethodTree method) {
        return method.getReturnType() == null
            && getCurrentPath().getParentPath().getLeaf() instanceof ClassTree type
            && type.getKind() == Tree.Kind.RECORD;
      }
    }.scan(sheet.tree(), null);
    return faults;
  }
}
