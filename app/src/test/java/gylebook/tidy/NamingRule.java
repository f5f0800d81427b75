package gylebook.tidy;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreePathScanner;
import gylebook.units.UnitName;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import javax.lang.model.element.Modifier;

/// Every number that leaves a method body ends in its unit.
///
/// Asked of parameters, fields, record components and results that are a double, an array or an
/// optional of it, a `Parameter` or an `Entered`. Not asked of overriding methods (the overridden
/// one answers), of annotations, of private tables of coefficients and private coefficients that
/// keep their number from the paper (`N10`), and of types marked `@AnyUnit`.
final class NamingRule implements Rule {
  private static final Pattern NUMBER =
      Pattern.compile(
          "(@Nullable )?"
              + "(double(\\[])*|Double|OptionalDouble|(\\w+\\.)*(Parameter|Entered)(<.*>)?)");

  @Override
  public String name() {
    return "unit-name";
  }

  @Override
  public List<Fault> faults(Sheet sheet) {
    Set<Fault> faults = new LinkedHashSet<>();
    if (sheet.inCore()) {
      new Scan(sheet, faults).scan(sheet.tree(), null);
    }
    return List.copyOf(faults);
  }

  static boolean isNumber(Tree type) {
    return type != null && NUMBER.matcher(type.toString().strip()).matches();
  }

  private final class Scan extends TreePathScanner<Void, Void> {
    private final Sheet sheet;
    private final Set<Fault> faults;

    Scan(Sheet sheet, Set<Fault> faults) {
      this.sheet = sheet;
      this.faults = faults;
    }

    @Override
    public Void visitClass(ClassTree type, Void nothing) {
      Optional<? extends AnnotationTree> free = Sheet.annotation(type.getModifiers(), "AnyUnit");
      if (free.isPresent()) {
        if (free.get().getArguments().toString().replaceAll("\\W|value", "").isEmpty()) {
          faults.add(sheet.fault(NamingRule.this, type, "@AnyUnit gives no reason"));
        }
        return null;
      }
      return type.getKind() == Tree.Kind.ANNOTATION_TYPE ? null : super.visitClass(type, null);
    }

    @Override
    public Void visitMethod(MethodTree method, Void nothing) {
      if (Sheet.annotation(method.getModifiers(), "Override").isEmpty()) {
        if (isNumber(method.getReturnType())) {
          named(method, method.getName(), "method '" + method.getName() + "' gives a number but");
        }
        method.getParameters().forEach(this::named);
      }
      return super.visitMethod(method, null);
    }

    @Override
    public Void visitVariable(VariableTree variable, Void nothing) {
      boolean field = getCurrentPath().getParentPath().getLeaf() instanceof ClassTree;
      Set<Modifier> flags = variable.getModifiers().getFlags();
      boolean table =
          flags.containsAll(Set.of(Modifier.PRIVATE, Modifier.STATIC))
              && String.valueOf(variable.getType()).contains("[]");
      boolean symbol =
          flags.containsAll(Set.of(Modifier.PRIVATE, Modifier.STATIC, Modifier.FINAL))
              && variable.getName().toString().matches("[A-Z][0-9]*");
      if (field && !table && !symbol) {
        named(variable);
      }
      return super.visitVariable(variable, null);
    }

    private void named(VariableTree variable) {
      if (isNumber(variable.getType())) {
        named(variable, variable.getName(), variable.getType() + " '" + variable.getName() + "'");
      }
    }

    private void named(Tree at, CharSequence name, String what) {
      if (UnitName.of(name.toString()).isEmpty()) {
        faults.add(sheet.fault(NamingRule.this, at, what + " names no unit"));
      }
    }
  }
}
