package gylebook.app;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.testing.Checkout;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The script at the root of the house, run as a brewer runs it.
final class LauncherTest {
  private static final Instant EARLY = Instant.parse("2026-01-01T10:00:00Z");
  private static final Instant LATE = Instant.parse("2026-01-01T11:00:00Z");

  @TempDir private Path folder;

  private record Ended(int code, String out, String err) {}

  @Test
  void withoutJavaItSaysInOneSentenceWhatIsMissingAndWhereToGetIt() throws Exception {
    Ended ended =
        run(launcherAlone(), Map.of("GYLEBOOK_JVM_FOLDERS", folder + "/none"), "--version");

    assertThat(ended.code()).isEqualTo(3);
    assertThat(ended.out()).isEmpty();
    assertThat(ended.err().strip().lines()).hasSize(1);
    assertThat(ended.err()).contains("JDK", "25", "https://adoptium.net");
  }

  @Test
  void checkSaysTheSameWithoutJava() throws Exception {
    Ended ended = run(launcherAlone(), Map.of("GYLEBOOK_JVM_FOLDERS", folder + "/none"), "check");

    assertThat(ended.code()).isEqualTo(3);
    assertThat(ended.err()).contains("https://adoptium.net");
  }

  @Test
  void anOlderJavaIsPassedOver() throws Exception {
    Path jvms = folder.resolve("jvms");
    kit(jvms.resolve("a-17"), "17.0.15");
    Ended old = run(launcherAlone(), Map.of("GYLEBOOK_JVM_FOLDERS", jvms.toString()), "--version");
    assertThat(old.code()).isEqualTo(3);

    kit(jvms.resolve("b-25"), "25.0.3");
    made();
    Ended found =
        run(
            launcherAlone(),
            Map.of(
                "GYLEBOOK_JVM_FOLDERS",
                jvms.toString(),
                "GYLEBOOK_MADE",
                folder.resolve("made").toString()),
            "plan",
            "two words");
    assertThat(found.out())
        .as("the kit that answers, and the words passed on: " + found.err())
        .contains("kit 25.0.3")
        .contains("gylebook.app.Gylebook plan two words");
  }

  @Test
  void itBuildsAgainOnlyWhenASourceIsNewerThanWhatWasBuilt() throws Exception {
    Path house = launcherAlone();
    Map<String, String> env = Map.of("GYLEBOOK_MADE", folder.resolve("made").toString());
    assertThat(run(house, env, "is-stale").out()).as("never built").contains("yes");

    made();
    assertThat(run(house, env, "is-stale").out()).as("just built").contains("no");

    Path source = house.resolve("core/src/main/New.java");
    Files.createFile(source);
    Files.setLastModifiedTime(source, FileTime.from(LATE.plusSeconds(5)));
    assertThat(run(house, env, "is-stale").out()).as("a newer source").contains("yes");

    Files.setLastModifiedTime(source, FileTime.from(EARLY));
    Files.setLastModifiedTime(source.getParent(), FileTime.from(EARLY));
    assertThat(run(house, env, "is-stale").out()).as("an older source").contains("no");

    Files.delete(source);
    assertThat(run(house, env, "is-stale").out()).as("a source gone").contains("yes");
  }

  /// A build that only leaves behind what a build leaves behind.
  private Path fakeMaven() throws IOException {
    Path mvn = folder.resolve("tools").resolve("mvn");
    Files.createDirectories(mvn.getParent());
    Files.writeString(
        mvn,
        """
        #!/bin/sh
        mkdir -p app/target/lib
        echo app >app/target/gylebook-app-2.jar
        echo tests >app/target/gylebook-app-2-tests.jar
        echo lib >app/target/lib/lib.jar
        """);
    Files.setPosixFilePermissions(mvn, PosixFilePermissions.fromString("rwxr-xr-x"));
    return mvn;
  }

  @Test
  void aBuildTakesNothingFromUnderAProgramThatRunsAndTidiesAfterOneThatHasEnded() throws Exception {
    Path house = launcherAlone();
    Path jvms = folder.resolve("jvms");
    kit(jvms.resolve("b-25"), "25.0.3");
    fakeMaven();
    made();
    Path made = folder.resolve("made");
    Map<String, String> env =
        Map.of("GYLEBOOK_JVM_FOLDERS", jvms.toString(), "GYLEBOOK_MADE", made.toString());
    Path mark = made.resolve("1").resolve("in-use." + ProcessHandle.current().pid());
    Files.createFile(mark);
    Path source = Files.createFile(house.resolve("core/src/main/New.java"));

    Ended started = run(house, env, "plan");
    assertThat(started.code()).as(started.err()).isZero();
    assertThat(made.resolve("1").resolve("gylebook-app-1.jar")).exists();
    Path second = made.resolve("2");
    assertThat(started.out())
        .contains(
            "-cp " + second.resolve("gylebook-app-2.jar") + ":" + second.resolve("lib/lib.jar"))
        .doesNotContain("tests.jar");
    assertThat(run(house, env, "is-stale").out()).contains("no");

    // Nobody runs the first one any more: the next build takes it and the second, which has ended.
    Files.delete(mark);
    Files.setLastModifiedTime(
        source, FileTime.from(Files.getLastModifiedTime(second).toInstant().plusSeconds(60)));
    run(house, env, "plan");
    assertThat(made.resolve("1")).doesNotExist();
    assertThat(made.resolve("2").resolve("lib/lib.jar")).doesNotExist();
    assertThat(made.resolve("3").resolve("lib/lib.jar")).exists();
  }

  @Test
  void theScriptPassesTheShellsOwnSyntaxCheck() throws Exception {
    Path script = Checkout.root().resolve("gylebook");
    Process shell = new ProcessBuilder("/bin/sh", "-n", script.toString()).start();
    assertThat(shell.waitFor(20, TimeUnit.SECONDS)).isTrue();
    assertThat(shell.exitValue()).isZero();
  }

  /// A copy of the script in a house with empty rooms, so that no test touches the real build.
  private Path launcherAlone() throws IOException {
    Path house = folder.resolve("house");
    for (String room : List.of("core/src/main", "app/src/main")) {
      Files.createDirectories(house.resolve(room));
    }
    for (String pom : List.of("pom.xml", "core/pom.xml", "app/pom.xml")) {
      old(house.resolve(pom));
    }
    for (String room : List.of("core/src/main", "app/src/main")) {
      Files.setLastModifiedTime(house.resolve(room), FileTime.from(EARLY));
    }
    Path script = house.resolve("gylebook");
    if (!Files.exists(script)) {
      Files.copy(Checkout.root().resolve("gylebook"), script);
    }
    return house;
  }

  private static void old(Path file) throws IOException {
    if (!Files.exists(file)) {
      Files.createFile(file);
    }
    Files.setLastModifiedTime(file, FileTime.from(EARLY));
  }

  /// What a build leaves behind.
  private void made() throws IOException {
    Path made = folder.resolve("made");
    Path layout = Files.createDirectories(made.resolve("1"));
    Files.createDirectories(layout.resolve("lib"));
    Files.createFile(layout.resolve("gylebook-app-1.jar"));
    Path stamp = Files.writeString(made.resolve("launch.stamp"), "1\n");
    Files.setLastModifiedTime(stamp, FileTime.from(LATE));
  }

  /// A development kit that only says which it is and what it was asked.
  private static void kit(Path home, String version) throws IOException {
    Path bin = Files.createDirectories(home.resolve("bin"));
    Files.writeString(home.resolve("release"), "JAVA_VERSION=\"" + version + "\"\n");
    for (String tool : List.of("java", "javac")) {
      Path file = bin.resolve(tool);
      Files.writeString(file, "#!/bin/sh\necho kit " + version + " \"$@\"\n");
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }

  /// Runs the script with a path that holds the system's tools but no Java and no Maven.
  private Ended run(Path house, Map<String, String> more, String... words) throws Exception {
    Path tools = Files.createDirectories(folder.resolve("tools"));
    for (String tool :
        List.of("sed", "find", "mkdir", "rm", "mv", "readlink", "id", "cp", "touch")) {
      Path link = tools.resolve(tool);
      Path real =
          Files.exists(Path.of("/bin", tool)) ? Path.of("/bin", tool) : Path.of("/usr/bin", tool);
      if (!Files.exists(link)) {
        Files.createSymbolicLink(link, real);
      }
    }
    List<String> line = new java.util.ArrayList<>(List.of("/bin/sh", house + "/gylebook"));
    line.addAll(List.of(words));
    Path out = Files.createTempFile(folder, "out", "");
    Path err = Files.createTempFile(folder, "err", "");
    ProcessBuilder builder =
        new ProcessBuilder(line).redirectOutput(out.toFile()).redirectError(err.toFile());
    builder.environment().clear();
    builder.environment().putAll(Map.of("PATH", tools.toString(), "HOME", folder.toString()));
    builder.environment().putAll(more);
    Process process = builder.start();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    return new Ended(
        process.exitValue(),
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }
}
