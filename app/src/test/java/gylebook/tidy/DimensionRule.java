package gylebook.tidy;

import com.sun.source.tree.AssignmentTree;
import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompoundAssignmentTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LambdaExpressionTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.ReturnTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.VariableElement;
import javax.lang.model.type.TypeKind;
import javax.lang.model.type.TypeMirror;

/// Follows the units in names through sums, products, comparisons, assignments, results and calls.
///
/// Does not follow unnamed locals, results of lambdas or collections, and cannot see the unit of a
/// number written out.
final class DimensionRule implements Rule {
  @Override
  public String name() {
    return "dimension";
  }

  @Override
  public List<Fault> faults(Sheet sheet) {
    Set<Fault> faults = new LinkedHashSet<>();
    if (sheet.inCore()) {
      new Scan(sheet, faults).scan(sheet.tree(), null);
    }
    return List.copyOf(faults);
  }

  private final class Scan extends TreePathScanner<Void, Void> {
    private final Sheet sheet;
    private final Set<Fault> faults;
    private final Deque<Optional<Dimension>> results = new ArrayDeque<>();

    Scan(Sheet sheet, Set<Fault> faults) {
      this.sheet = sheet;
      this.faults = faults;
    }

    @Override
    public Void visitClass(ClassTree type, Void nothing) {
      return Sheet.annotation(type.getModifiers(), "AnyUnit").isPresent()
          ? null
          : super.visitClass(type, null);
    }

    @Override
    public Void visitMethod(MethodTree method, Void nothing) {
      boolean gives = isDouble(method.getReturnType());
      results.push(gives ? Dimension.named(method.getName()) : Optional.empty());
      super.visitMethod(method, null);
      results.pop();
      return null;
    }

    @Override
    public Void visitLambdaExpression(LambdaExpressionTree lambda, Void nothing) {
      results.push(Optional.empty());
      super.visitLambdaExpression(lambda, null);
      results.pop();
      return null;
    }

    @Override
    public Void visitVariable(VariableTree variable, Void nothing) {
      ExpressionTree start = variable.getInitializer();
      if (start != null && isDouble(variable.getType())) {
        agree(variable, variable.getName(), start, "'" + variable.getName() + "' is set from");
      }
      return super.visitVariable(variable, null);
    }

    @Override
    public Void visitReturn(ReturnTree back, Void nothing) {
      if (back.getExpression() != null && results.peek() != null) {
        agree(back, results.peek(), back.getExpression(), "gives back");
      }
      return super.visitReturn(back, null);
    }

    @Override
    public Void visitAssignment(AssignmentTree set, Void nothing) {
      // Named arguments of annotations are assignments to the compiler, and mean no sum.
      if (getCurrentPath().getParentPath().getLeaf().getKind() != Tree.Kind.ANNOTATION) {
        agree(set, Algebra.of(set.getVariable()), set.getExpression(), "is set from");
      }
      return super.visitAssignment(set, null);
    }

    @Override
    public Void visitCompoundAssignment(CompoundAssignmentTree set, Void nothing) {
      if (set.getKind() == Tree.Kind.PLUS_ASSIGNMENT
          || set.getKind() == Tree.Kind.MINUS_ASSIGNMENT) {
        Optional<Dimension> held = Algebra.of(set.getVariable());
        Optional<Dimension> given = Algebra.of(set.getExpression());
        if (held.isPresent() && given.isPresent() && !Algebra.literal(set.getExpression())) {
          Optional<Dimension> sum =
              set.getKind() == Tree.Kind.PLUS_ASSIGNMENT
                  ? held.get().plus(given.get())
                  : held.get().minus(given.get());
          if (!sum.equals(held)) {
            fault(set, "adds " + given.get() + " to " + held.get());
          }
        }
      }
      return super.visitCompoundAssignment(set, null);
    }

    @Override
    public Void visitBinary(BinaryTree binary, Void nothing) {
      Optional<Dimension> left = Algebra.of(binary.getLeftOperand());
      Optional<Dimension> right = Algebra.of(binary.getRightOperand());
      boolean written =
          Algebra.literal(binary.getLeftOperand()) || Algebra.literal(binary.getRightOperand());
      if (left.isPresent() && right.isPresent() && !written) {
        boolean good =
            switch (binary.getKind()) {
              case PLUS ->
                  isText(binary) || isMean(left, right) || left.get().plus(right.get()).isPresent();
              case MINUS -> left.get().minus(right.get()).isPresent();
              case LESS_THAN,
                  LESS_THAN_EQUAL,
                  GREATER_THAN,
                  GREATER_THAN_EQUAL,
                  EQUAL_TO,
                  NOT_EQUAL_TO ->
                  left.equals(right);
              default -> true;
            };
        if (!good) {
          fault(binary, "combines " + left.get() + " with " + right.get());
        }
      }
      return super.visitBinary(binary, null);
    }

    @Override
    public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
      String name = Algebra.calledName(call);
      if ((name.equals("max") || name.equals("min")) && call.getArguments().size() == 2) {
        alike(call, call.getArguments().get(0), call.getArguments().get(1));
      }
      arguments(call.getArguments());
      return super.visitMethodInvocation(call, null);
    }

    @Override
    public Void visitNewClass(NewClassTree made, Void nothing) {
      arguments(made.getArguments());
      return super.visitNewClass(made, null);
    }

    private void alike(Tree at, ExpressionTree one, ExpressionTree other) {
      if (!Algebra.literal(one)) {
        agree(at, Algebra.of(one), other, "compares");
      }
    }

    private void arguments(List<? extends ExpressionTree> given) {
      if (!(sheet.trees().getElement(getCurrentPath()) instanceof ExecutableElement callee)) {
        return;
      }
      List<? extends VariableElement> wanted = callee.getParameters();
      for (int i = 0; i < Math.min(given.size(), wanted.size()); i++) {
        if (wanted.get(i).asType().getKind() == TypeKind.DOUBLE) {
          CharSequence name = wanted.get(i).getSimpleName();
          agree(
              given.get(i), name, given.get(i), callee.getSimpleName() + "(" + name + ") is given");
        }
      }
    }

    private void agree(Tree at, CharSequence name, ExpressionTree given, String how) {
      agree(at, Dimension.named(name), given, how);
    }

    private void agree(Tree at, Optional<Dimension> want, ExpressionTree given, String how) {
      Optional<Dimension> got = Algebra.literal(given) ? Optional.empty() : Algebra.of(given);
      if (want.isPresent() && got.isPresent() && !want.equals(got)) {
        fault(at, how + " " + got.get() + " where " + want.get() + " is meant");
      }
    }

    private boolean isDouble(Tree type) {
      return type != null && type.toString().equals("double");
    }

    /// Half of a sum of two temperatures is their mean.
    private boolean isMean(Optional<Dimension> left, Optional<Dimension> right) {
      TreePath above = getCurrentPath().getParentPath();
      while (above.getLeaf() instanceof ParenthesizedTree) {
        above = above.getParentPath();
      }
      return left.equals(right)
          && above.getLeaf() instanceof BinaryTree half
          && half.getKind() == Tree.Kind.DIVIDE
          && half.getRightOperand().toString().matches("2(\\.0)?");
    }

    /// Whether a plus joins text: any string in the chain makes it so.
    private boolean isText(BinaryTree binary) {
      TypeMirror type = sheet.trees().getTypeMirror(getCurrentPath());
      return binary.getKind() == Tree.Kind.PLUS
          && type != null
          && type.toString().equals("java.lang.String");
    }

    private void fault(Tree at, String what) {
      faults.add(sheet.fault(DimensionRule.this, at, what));
    }
  }
}
