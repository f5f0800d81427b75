package gylebook.tidy;

import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/// Numbers are written the same on every machine: a decimal point is not left to the default
/// locale.
final class LocaleRule implements Rule {
  private static final Pattern NUMBER = Pattern.compile("%[-#+ 0,(0-9.$]*(?:[aefgAEG]|,\\d*d)");

  @Override
  public String name() {
    return "locale";
  }

  @Override
  public List<Fault> faults(Sheet sheet) {
    List<Fault> faults = new ArrayList<>();
    new TreeScanner<Void, Void>() {
      @Override
      public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
        if (call.getMethodSelect() instanceof MemberSelectTree select) {
          boolean formatted = select.getIdentifier().contentEquals("formatted");
          boolean format =
              select.toString().equals("String.format") && !call.getArguments().isEmpty();
          ExpressionTree pattern =
              formatted ? select.getExpression() : format ? call.getArguments().getFirst() : call;
          if (pattern instanceof LiteralTree text
              && text.getValue() instanceof String words
              && NUMBER.matcher(words).find()) {
            faults.add(
                sheet.fault(
                    LocaleRule.this, call, "formats for the default locale; name Locale.ROOT"));
          }
        }
        return super.visitMethodInvocation(call, null);
      }
    }.scan(sheet.tree(), null);
    return faults;
  }
}
