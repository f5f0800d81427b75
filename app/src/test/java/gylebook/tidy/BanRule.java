package gylebook.tidy;

import com.sun.source.tree.MemberReferenceTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.TreePathScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.TypeElement;

/// No clock, no chance and no outside world in core; no clock in most rooms of the app either.
final class BanRule implements Rule {
  private static final Set<String> CLOCK_ROOMS = Set.of("app", "device", "store");
  private static final Map<String, Ban> BANS =
      Ban.ALL.stream().collect(Collectors.toMap(Ban::call, Function.identity()));

  @Override
  public String name() {
    return "ban";
  }

  @Override
  public List<Fault> faults(Sheet sheet) {
    List<Fault> faults = new ArrayList<>();
    String room = sheet.room().orElse("");
    new TreePathScanner<Void, Void>() {
      @Override
      public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
        look(call);
        return super.visitMethodInvocation(call, null);
      }

      @Override
      public Void visitNewClass(NewClassTree made, Void nothing) {
        look(made);
        return super.visitNewClass(made, null);
      }

      @Override
      public Void visitMemberReference(MemberReferenceTree reference, Void nothing) {
        look(reference);
        return super.visitMemberReference(reference, null);
      }

      @Override
      public Void visitMemberSelect(MemberSelectTree select, Void nothing) {
        Element element = sheet.trees().getElement(getCurrentPath());
        if (element != null && element.getKind() == ElementKind.FIELD) {
          look(select);
        }
        return super.visitMemberSelect(select, null);
      }

      private void look(Tree at) {
        Element element = sheet.trees().getElement(getCurrentPath());
        if (element == null || !(element.getEnclosingElement() instanceof TypeElement owner)) {
          return;
        }
        boolean given =
            element.getKind() == ElementKind.CONSTRUCTOR
                && !((ExecutableElement) element).getParameters().isEmpty();
        Ban ban = BANS.get(owner.getQualifiedName() + "." + element.getSimpleName());
        if (ban != null && !given && applies(ban, sheet.inCore(), room)) {
          faults.add(sheet.fault(BanRule.this, at, "uses " + ban.call() + ": " + ban.instead()));
        }
      }
    }.scan(sheet.tree(), null);
    return faults;
  }

  private static boolean applies(Ban ban, boolean core, String room) {
    return core || (ban.kind() == Ban.Kind.CLOCK && !CLOCK_ROOMS.contains(room));
  }
}
