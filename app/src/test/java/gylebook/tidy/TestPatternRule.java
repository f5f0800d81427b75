package gylebook.tidy;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/// What a test must not do: wait, look at the clock, roll unseeded dice, be switched off in
/// silence, or assert nothing.
final class TestPatternRule implements Rule {
  private static final Map<String, String> BANNED =
      Map.of(
          "Thread.sleep", "waits; wait for the thing itself",
          "Math.random", "rolls unseeded dice; use Cases",
          "ThreadLocalRandom.current", "rolls unseeded dice; use Cases",
          "RandomGenerator.getDefault", "rolls unseeded dice; use Cases",
          "System.currentTimeMillis", "looks at the wall clock; use a fixed time",
          "Instant.now", "looks at the wall clock; use a fixed time",
          "LocalDate.now", "looks at the wall clock; use a fixed time",
          "Mockito.mock", "mocks; use a real object");
  private static final Set<String> DICE = Set.of("Random", "SplittableRandom", "SecureRandom");
  private static final Pattern ASSERTING =
      Pattern.compile("(assert|fail|check|verify|expect|require|then).*|doesNotThrow.*");
  private static final Pattern DATED = Pattern.compile("(?s).*\\w{3,}.*\\d{4}-\\d{2}-\\d{2}.*");

  @Override
  public String name() {
    return "test";
  }

  @Override
  public List<Fault> faults(Sheet sheet) {
    List<Fault> faults = new ArrayList<>();
    new Scan(sheet, faults).scan(sheet.tree(), null);
    return faults;
  }

  private final class Scan extends TreeScanner<Void, Void> {
    private final Sheet sheet;
    private final List<Fault> faults;

    Scan(Sheet sheet, List<Fault> faults) {
      this.sheet = sheet;
      this.faults = faults;
    }

    @Override
    public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
      String name = call.getMethodSelect().toString();
      BANNED.forEach(
          (banned, why) -> {
            if (name.equals(banned) || name.endsWith("." + banned)) {
              fault(call, banned + " " + why);
            }
          });
      return super.visitMethodInvocation(call, null);
    }

    @Override
    public Void visitNewClass(NewClassTree made, Void nothing) {
      String type = made.getIdentifier().toString().replaceAll(".*\\.", "");
      if (DICE.contains(type) && made.getArguments().isEmpty()) {
        fault(made, "new " + type + "() rolls unseeded dice; use Cases");
      }
      return super.visitNewClass(made, null);
    }

    @Override
    public Void visitAnnotation(AnnotationTree note, Void nothing) {
      if (note.getAnnotationType().toString().equals("Disabled")
          && !DATED.matcher(note.getArguments().toString()).matches()) {
        fault(note, "@Disabled gives no reason with a date (2026-01-31)");
      }
      return super.visitAnnotation(note, null);
    }

    @Override
    public Void visitClass(ClassTree type, Void nothing) {
      Set<String> asserting = asserting(type);
      for (Tree member : type.getMembers()) {
        if (member instanceof MethodTree method
            && Sheet.annotation(method.getModifiers(), "Test").isPresent()) {
          if (!asserting.contains(method.getName().toString())) {
            fault(method, method.getName() + " asserts nothing");
          }
          if (method.getName().toString().startsWith("test")) {
            fault(method, method.getName() + " is no sentence; say what holds");
          }
        }
      }
      return super.visitClass(type, null);
    }

    private void fault(Tree at, String what) {
      faults.add(sheet.fault(TestPatternRule.this, at, what));
    }
  }

  /// The methods of a class that assert, themselves or through another method of the class.
  private static Set<String> asserting(ClassTree type) {
    Map<String, Set<String>> calls = new HashMap<>();
    for (Tree member : type.getMembers()) {
      if (member instanceof MethodTree method) {
        calls
            .computeIfAbsent(method.getName().toString(), _ -> new HashSet<>())
            .addAll(called(method));
      }
    }
    Set<String> asserting = new HashSet<>();
    boolean grew = true;
    while (grew) {
      grew = false;
      for (Map.Entry<String, Set<String>> entry : calls.entrySet()) {
        boolean does =
            entry.getValue().stream()
                .anyMatch(
                    name ->
                        asserting.contains(name)
                            || (ASSERTING.matcher(name).matches() && !calls.containsKey(name)));
        grew |= does && asserting.add(entry.getKey());
      }
    }
    return asserting;
  }

  private static Set<String> called(MethodTree method) {
    Set<String> names = new HashSet<>();
    new TreeScanner<Void, Void>() {
      @Override
      public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
        names.add(Algebra.calledName(call));
        return super.visitMethodInvocation(call, null);
      }

      @Override
      public Void visitNewClass(NewClassTree made, Void nothing) {
        if (made.getIdentifier().toString().equals("AssertionError")) {
          names.add("fail");
        }
        return super.visitNewClass(made, null);
      }
    }.scan(method, null);
    return names;
  }
}
