package gylebook.interchange;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// The letters of a file: a byte order mark is believed first, then the header, then the bytes
/// themselves.
final class FileText {
  private static final int HEADER_MOST = 200;
  private static final Pattern HEADER =
      Pattern.compile("^\\s*<\\?xml[^>]*?encoding\\s*=\\s*[\"']([^\"']{1,40})[\"']");
  private static final Charset CURLY = Charset.forName("windows-1252");

  private record Mark(List<Integer> bytes, Charset charset) {
    boolean begins(byte[] file) {
      for (int i = 0; i < bytes.size(); i++) {
        if (file.length <= i || (file[i] & 0xff) != bytes.get(i)) {
          return false;
        }
      }
      return true;
    }
  }

  private static final List<Mark> MARKS =
      List.of(
          new Mark(List.of(0xef, 0xbb, 0xbf), StandardCharsets.UTF_8),
          new Mark(List.of(0xff, 0xfe, 0, 0), Charset.forName("UTF-32LE")),
          new Mark(List.of(0, 0, 0xfe, 0xff), Charset.forName("UTF-32BE")),
          new Mark(List.of(0xff, 0xfe), StandardCharsets.UTF_16LE),
          new Mark(List.of(0xfe, 0xff), StandardCharsets.UTF_16BE));

  private FileText() {}

  /// The letters of a recipe file. What is guessed is told in the ledger.
  static String of(byte[] file, Ledger ledger) {
    Optional<String> marked = marked(file);
    if (marked.isPresent()) {
      return marked.get();
    }
    Matcher header = HEADER.matcher(head(file));
    if (header.find()) {
      return withHeader(file, header.group(1), ledger);
    }
    return isXml(file) && decoded(file, StandardCharsets.UTF_8).isEmpty()
        ? curly(file, "No header names its letters", ledger)
        : utf(file);
  }

  /// The letters of a JSON file: by its mark, or UTF-8. Nothing is guessed, so there is nothing to
  /// tell; XML has letters by a header or by a guess, and is refused as such.
  static String json(byte[] file, String what) {
    String text = marked(file).orElseGet(() -> isXml(file) ? "<" : utf(file));
    if (text.stripLeading().startsWith("<")) {
      throw new Refusal(
          "The file is XML; a " + what + " file is JSON.",
          "<",
          "Maybe it is a recipe, or choose the " + what + " file again.");
    }
    return text;
  }

  private static String head(byte[] file) {
    return new String(file, 0, Math.min(file.length, HEADER_MOST), CURLY);
  }

  private static boolean isXml(byte[] file) {
    return head(file).stripLeading().startsWith("<");
  }

  private static Optional<String> marked(byte[] file) {
    for (Mark mark : MARKS) {
      if (mark.begins(file)) {
        byte[] rest = Arrays.copyOfRange(file, mark.bytes().size(), file.length);
        return Optional.of(
            decoded(rest, mark.charset())
                .orElseThrow(() -> wrong(mark.charset().name(), "its first bytes say so")));
      }
    }
    return Optional.empty();
  }

  private static String utf(byte[] file) {
    String text =
        decoded(file, StandardCharsets.UTF_8)
            .orElseThrow(() -> wrong("UTF-8", "a JSON file has to be"));
    if (text.indexOf('\0') >= 0) {
      // letters of two or four bytes; which of them, only a mark could say
      throw wrong("UTF-8", "no mark at its beginning names others");
    }
    return text;
  }

  private static String withHeader(byte[] file, String name, Ledger ledger) {
    Charset said = charset(name);
    if (said.name().startsWith("UTF-16") || said.name().startsWith("UTF-32")) {
      // Programs write a text's inner form into the header and the text as UTF-8 behind it; had the
      // header been true, it could not have been read letter by letter.
      String why = "The header says " + name + ", but its letters are single bytes";
      Optional<String> text = decoded(file, StandardCharsets.UTF_8);
      if (text.isEmpty()) {
        return curly(file, why, ledger);
      }
      ledger.says("file", why + "; read as UTF-8.");
      return text.get();
    }
    boolean latin =
        said.equals(StandardCharsets.ISO_8859_1) || said.equals(StandardCharsets.US_ASCII);
    if (!latin) {
      return decoded(file, said).orElseThrow(() -> wrong(name, "its header says so"));
    }
    Optional<String> utf = decoded(file, StandardCharsets.UTF_8);
    boolean foreign = utf.isPresent() && utf.get().chars().anyMatch(c -> c > 0x7f);
    if (foreign) {
      ledger.says(
          "file", "The header says " + name + ", but the letters are UTF-8; read as UTF-8.");
    }
    return foreign ? utf.get() : latin(file, name, ledger);
  }

  private static String latin(byte[] file, String name, Ledger ledger) {
    for (byte letter : file) {
      int code = letter & 0xff;
      if (code >= 0x80 && code < 0xa0) {
        return curly(file, "The header says " + name + ", which has no such letters", ledger);
      }
    }
    return new String(file, StandardCharsets.ISO_8859_1);
  }

  private static String curly(byte[] file, String why, Ledger ledger) {
    ledger.says("file", why + "; read as Windows-1252.");
    return new String(file, CURLY);
  }

  private static Charset charset(String name) {
    try {
      return Charset.forName(name.toUpperCase(Locale.ROOT));
    } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
      throw new Refusal(
          "The header names an encoding that is not known here: '" + name + "'.",
          name,
          "Maybe save the file again as UTF-8.");
    }
  }

  private static Optional<String> decoded(byte[] file, Charset charset) {
    try {
      CharBuffer text =
          charset
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(file));
      return Optional.of(text.toString());
    } catch (CharacterCodingException broken) {
      return Optional.empty();
    }
  }

  private static Refusal wrong(String charset, String why) {
    return new Refusal(
        "The letters of the file are not " + charset + ", though " + why + ".",
        charset,
        "Maybe save the file again as UTF-8, or it is another kind of file.");
  }
}
