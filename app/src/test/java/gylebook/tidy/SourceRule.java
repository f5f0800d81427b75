package gylebook.tidy;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.AssignmentTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.TreePathScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.lang.model.element.Modifier;

/// Every public function of the science room says where it comes from, by a key that exists.
final class SourceRule implements Rule {
  private final Set<String> keys;

  /// @param keys the keys of `docs/sources.bib`
  SourceRule(Set<String> keys) {
    this.keys = Set.copyOf(keys);
  }

  @Override
  public String name() {
    return "source";
  }

  @Override
  public List<Fault> faults(Sheet sheet) {
    List<Fault> faults = new ArrayList<>();
    boolean science = sheet.room().filter("science"::equals).isPresent();
    new TreePathScanner<Void, Void>() {
      @Override
      public Void visitClass(ClassTree type, Void nothing) {
        return Sheet.annotation(type.getModifiers(), "AnyUnit").isPresent()
            ? null
            : super.visitClass(type, null);
      }

      @Override
      public Void visitMethod(MethodTree method, Void nothing) {
        if (science
            && isFunction(method)
            && Sheet.annotation(method.getModifiers(), "Source").isEmpty()) {
          faults.add(
              sheet.fault(
                  SourceRule.this, method, method.getName() + " has no @Source; say who says so"));
        }
        return super.visitMethod(method, null);
      }

      @Override
      public Void visitAnnotation(AnnotationTree note, Void nothing) {
        String type = note.getAnnotationType().toString();
        if (type.equals("Source") || type.endsWith(".Source")) {
          note.getArguments().stream()
              .filter(AssignmentTree.class::isInstance)
              .map(AssignmentTree.class::cast)
              .filter(part -> part.getVariable().toString().equals("key"))
              .filter(part -> part.getExpression() instanceof LiteralTree)
              .map(part -> ((LiteralTree) part.getExpression()).getValue().toString())
              .filter(key -> !keys.contains(key))
              .forEach(
                  key ->
                      faults.add(
                          sheet.fault(SourceRule.this, note, key + " is not in docs/sources.bib")));
        }
        return super.visitAnnotation(note, null);
      }

      /// A public static method that is no factory of its own type.
      private boolean isFunction(MethodTree method) {
        if (method.getReturnType() == null
            || !(getCurrentPath().getParentPath().getLeaf() instanceof ClassTree type)) {
          return false;
        }
        Set<Modifier> flags = method.getModifiers().getFlags();
        return flags.contains(Modifier.PUBLIC)
            && flags.contains(Modifier.STATIC)
            && type.getModifiers().getFlags().contains(Modifier.PUBLIC)
            && !method.getReturnType().toString().equals(type.getSimpleName().toString())
            && !hasSourcedNamesake(type, method);
      }

      /// A shorter form of a function that says its source itself.
      private boolean hasSourcedNamesake(ClassTree type, MethodTree method) {
        return type.getMembers().stream()
            .filter(MethodTree.class::isInstance)
            .map(MethodTree.class::cast)
            .filter(other -> other != method && other.getName().equals(method.getName()))
            .anyMatch(other -> Sheet.annotation(other.getModifiers(), "Source").isPresent());
      }
    }.scan(sheet.tree(), null);
    return faults;
  }
}
