package gylebook.tidy;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/// One source file as the compiler reads it: its tree and its text.
record Sheet(CompilationUnitTree tree, Trees trees, String file, List<String> lines) {

  /// Whether names and types are looked up (slower), or only the grammar is read.
  enum Reading {
    RESOLVED,
    GRAMMAR
  }

  /// Reads every source below some folders in one go.
  static List<Sheet> read(List<Path> folders, Path root, Reading reading) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, Locale.ROOT, null)) {
      List<String> options =
          List.of("-proc:none", "-Xlint:none", "-classpath", System.getProperty("java.class.path"));
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null,
                  files,
                  complaint -> {},
                  options,
                  null,
                  files.getJavaFileObjectsFromPaths(sources(folders)));
      List<CompilationUnitTree> trees = new ArrayList<>();
      task.parse().forEach(trees::add);
      if (reading == Reading.RESOLVED) {
        task.analyze();
      }
      Trees lookup = Trees.instance(task);
      List<Sheet> sheets = new ArrayList<>();
      for (CompilationUnitTree tree : trees) {
        String file = root.relativize(Path.of(tree.getSourceFile().toUri())).toString();
        List<String> lines = tree.getSourceFile().getCharContent(true).toString().lines().toList();
        sheets.add(new Sheet(tree, lookup, file, lines));
      }
      return List.copyOf(sheets);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /// The sources below some folders; the module descriptor is left to the real compiler.
  private static List<Path> sources(List<Path> folders) throws IOException {
    List<Path> found = new ArrayList<>();
    for (Path folder : folders) {
      try (Stream<Path> walk = Files.walk(folder)) {
        walk.filter(path -> path.toString().endsWith(".java"))
            .filter(path -> !path.endsWith("module-info.java"))
            .sorted()
            .forEach(found::add);
      }
    }
    return found;
  }

  /// The room the file stands in.
  Optional<String> room() {
    return tree.getPackageName() == null
        ? Optional.empty()
        : Rooms.of(tree.getPackageName().toString());
  }

  boolean inCore() {
    return room().filter(Rooms.CORE::contains).isPresent();
  }

  long firstLine(Tree part) {
    return tree.getLineMap().getLineNumber(trees.getSourcePositions().getStartPosition(tree, part));
  }

  /// The line a part ends on; 0 for what the compiler wrote itself.
  long lastLine(Tree part) {
    long end = trees.getSourcePositions().getEndPosition(tree, part);
    return end < 0 ? 0 : tree.getLineMap().getLineNumber(end);
  }

  Fault fault(Rule rule, Tree at, String what) {
    return new Fault(rule.name(), file, firstLine(at), what);
  }

  Fault fault(Rule rule, long line, String what) {
    return new Fault(rule.name(), file, line, what);
  }

  /// The annotation of a simple name, if it is there.
  static Optional<? extends AnnotationTree> annotation(ModifiersTree modifiers, String name) {
    return modifiers.getAnnotations().stream()
        .filter(
            note -> {
              String type = note.getAnnotationType().toString();
              return type.equals(name) || type.endsWith("." + name);
            })
        .findFirst();
  }
}
