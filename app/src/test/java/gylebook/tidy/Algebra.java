package gylebook.tidy;

import com.sun.source.tree.ArrayAccessTree;
import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.TypeCastTree;
import com.sun.source.tree.UnaryTree;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// The dimension of an expression, as far as its names tell it. Empty is "no idea", never a fault.
final class Algebra {
  private static final Set<String> CHOICE = Set.of("abs", "max", "min", "clamp", "ulp");

  /// Accessors that give the number of a `Parameter` or the like: its name says the unit.
  private static final Set<String> BARE_VALUE = Set.of("value", "middle", "inside", "orElse");

  private Algebra() {}

  static Optional<Dimension> of(ExpressionTree expression) {
    return switch (expression) {
      case IdentifierTree name -> Dimension.named(name.getName());
      case MemberSelectTree select when select.toString().equals("Math.PI") ->
          Optional.of(Dimension.NONE);
      case MemberSelectTree select -> Dimension.named(select.getIdentifier());
      case ArrayAccessTree cell -> of(cell.getExpression());
      case MethodInvocationTree call -> ofCall(call);
      case ParenthesizedTree group -> of(group.getExpression());
      case TypeCastTree cast -> of(cast.getExpression());
      case UnaryTree unary -> of(unary.getExpression());
      case LiteralTree _ -> Optional.of(Dimension.NONE);
      case ConditionalExpressionTree choice ->
          agreed(choice.getTrueExpression(), choice.getFalseExpression());
      case BinaryTree binary -> ofBinary(binary);
      default -> Optional.empty();
    };
  }

  /// A number written out: it joins anything, because nobody can see its unit.
  static boolean literal(ExpressionTree expression) {
    return switch (expression) {
      case LiteralTree _ -> true;
      case ParenthesizedTree group -> literal(group.getExpression());
      case UnaryTree unary -> literal(unary.getExpression());
      case TypeCastTree cast -> literal(cast.getExpression());
      case BinaryTree binary ->
          literal(binary.getLeftOperand()) && literal(binary.getRightOperand());
      default -> false;
    };
  }

  private static Optional<Dimension> agreed(ExpressionTree left, ExpressionTree right) {
    if (literal(left)) {
      return literal(right) ? Optional.of(Dimension.NONE) : of(right);
    }
    return literal(right) ? of(left) : of(left).filter(one -> of(right).equals(Optional.of(one)));
  }

  private static Optional<Dimension> ofBinary(BinaryTree binary) {
    Optional<Dimension> left = of(binary.getLeftOperand());
    Optional<Dimension> right = of(binary.getRightOperand());
    if (binary.getKind() == Tree.Kind.DIVIDE
        && binary.getRightOperand().toString().matches("2(\\.0)?")
        && binary.getLeftOperand() instanceof ParenthesizedTree mean
        && mean.getExpression() instanceof BinaryTree sum
        && sum.getKind() == Tree.Kind.PLUS
        && of(sum.getLeftOperand()).equals(of(sum.getRightOperand()))) {
      return of(sum.getLeftOperand());
    }
    if (left.isEmpty() || right.isEmpty()) {
      return Optional.empty();
    }
    return switch (binary.getKind()) {
      case MULTIPLY -> left.get().times(right.get(), 1);
      case DIVIDE -> left.get().times(right.get(), -1);
      case PLUS, MINUS -> sum(binary, left.get(), right.get());
      default -> Optional.empty();
    };
  }

  private static Optional<Dimension> sum(BinaryTree binary, Dimension left, Dimension right) {
    if (literal(binary.getLeftOperand()) || literal(binary.getRightOperand())) {
      boolean bare = left.equals(Dimension.NONE) && right.equals(Dimension.NONE);
      return bare ? Optional.of(Dimension.NONE) : Optional.empty();
    }
    return binary.getKind() == Tree.Kind.PLUS ? left.plus(right) : left.minus(right);
  }

  static String calledName(MethodInvocationTree call) {
    return call.getMethodSelect() instanceof MemberSelectTree select
        ? select.getIdentifier().toString()
        : call.getMethodSelect().toString();
  }

  private static Optional<Dimension> ofCall(MethodInvocationTree call) {
    String name = calledName(call);
    List<? extends ExpressionTree> given = call.getArguments();
    if (CHOICE.contains(name) && !given.isEmpty()) {
      return given.size() == 2 ? agreed(given.get(0), given.get(1)) : of(given.getFirst());
    }
    if (name.equals("sqrt") && given.size() == 1) {
      return of(given.getFirst()).flatMap(inner -> inner.raised(1));
    }
    if (name.equals("pow") && given.size() == 2) {
      return given.get(1) instanceof LiteralTree power
              && power.getValue() instanceof Number number
              && number.doubleValue() == number.intValue()
          ? of(given.getFirst()).flatMap(inner -> inner.raised(2 * number.intValue()))
          : Optional.empty();
    }
    if (BARE_VALUE.contains(name) && call.getMethodSelect() instanceof MemberSelectTree select) {
      return of(select.getExpression());
    }
    return Dimension.named(name);
  }
}
