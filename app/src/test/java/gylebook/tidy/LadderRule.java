package gylebook.tidy;

import com.sun.source.tree.ImportTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.List;

/// A room uses only rooms further left, by import or by full name.
final class LadderRule implements Rule {
  @Override
  public String name() {
    return "ladder";
  }

  @Override
  public List<Fault> faults(Sheet sheet) {
    String where = String.valueOf(sheet.tree().getPackageName());
    String room = sheet.room().orElse("");
    if (!where.equals("gylebook." + room) || !Rooms.LADDER.contains(room)) {
      return List.of(sheet.fault(this, sheet.tree(), where + " is no room of the house"));
    }
    List<Fault> faults = new ArrayList<>();
    new TreeScanner<Void, Void>() {
      @Override
      public Void visitImport(ImportTree line, Void nothing) {
        look(line.getQualifiedIdentifier().toString(), line);
        return null;
      }

      @Override
      public Void visitMemberSelect(MemberSelectTree select, Void nothing) {
        if (select.getExpression().toString().matches("gylebook\\.[a-z]+")) {
          look(select.toString(), select);
        }
        return super.visitMemberSelect(select, null);
      }

      private void look(String qualified, com.sun.source.tree.Tree at) {
        Rooms.of(qualified)
            .flatMap(used -> Rooms.objection(room, used))
            .ifPresent(objection -> faults.add(sheet.fault(LadderRule.this, at, objection)));
      }
    }.scan(sheet.tree(), null);
    return faults;
  }
}
