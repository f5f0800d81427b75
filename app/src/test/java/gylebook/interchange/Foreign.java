package gylebook.interchange;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.recipe.Recipe;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/// Small files of the open standards, written by us, and what came of reading them.
final class Foreign {
  private Foreign() {}

  /// A file of ours by its name.
  static String file(String name) {
    try (InputStream in = Foreign.class.getResourceAsStream("/interchange/" + name)) {
      byte[] bytes = Objects.requireNonNull(in, name).readAllBytes();
      return new String(bytes, StandardCharsets.UTF_8);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /// The plain JSON recipe with one place changed; the place has to be there.
  static String json(String place, String instead) {
    return changed(file("plain.json"), place, instead);
  }

  /// The plain XML recipe with one place changed; the place has to be there.
  static String xml(String place, String instead) {
    return changed(file("plain.xml"), place, instead);
  }

  static String changed(String file, String place, String instead) {
    assertThat(file).contains(place);
    return file.replace(place, instead);
  }

  static ReadRecipe read(String file) {
    return RecipeReader.read(file.getBytes(StandardCharsets.UTF_8), "a file");
  }

  static ReadRecipe.Understood understood(String file) {
    ReadRecipe read = read(file);
    assertThat(read).isInstanceOf(ReadRecipe.Understood.class);
    return (ReadRecipe.Understood) read;
  }

  static Recipe recipe(String file) {
    return understood(file).recipe();
  }

  /// What a refused file is told; it has to be a sentence without a stack or a class name.
  static String refused(byte[] file) {
    ReadRecipe read = RecipeReader.read(file, "a file");
    assertThat(read).isInstanceOf(ReadRecipe.NotUnderstood.class);
    String sentence = ((ReadRecipe.NotUnderstood) read).sentence();
    assertThat(sentence).endsWith(".").doesNotContain("Exception").doesNotContain("jackson");
    return sentence;
  }

  static String refused(String file) {
    return refused(file.getBytes(StandardCharsets.UTF_8));
  }

  /// Everything that was remarked, one line each: `path: sentence`.
  static String remarks(String file) {
    StringBuilder lines = new StringBuilder();
    for (Remark remark : understood(file).remarks()) {
      lines.append(remark.path()).append(": ").append(remark.says()).append('\n');
    }
    return lines.toString();
  }
}
