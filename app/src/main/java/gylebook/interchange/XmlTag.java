package gylebook.interchange;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/// One tag of an XML file with its text and what is inside it.
///
/// Document types and outside entities are not read at all: they are how a file attacks its reader.
///
/// @param name in capitals
/// @param text the letters directly in it, without blanks around them
/// @param children in the order of the file
record XmlTag(String name, String text, List<XmlTag> children) {
  private static final int DEPTH_MOST = 20;
  private static final int TAGS_MOST = 100_000;

  static XmlTag read(String file) {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    factory.setXMLResolver(
        (_, system, _, _) -> {
          throw new XMLStreamException("asks for " + system);
        });
    try {
      XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(file.strip()));
      try {
        return tree(reader);
      } finally {
        reader.close();
      }
    } catch (XMLStreamException broken) {
      int line = broken.getLocation() == null ? 0 : broken.getLocation().getLineNumber();
      throw new Refusal(
          "The file is not whole XML at line "
              + line
              + ": a tag is not closed by its own name,"
              + " or the file ends in the middle.",
          "line " + line,
          "It is not mended in silence; maybe export it again.");
    }
  }

  private record Open(String name, StringBuilder text, List<XmlTag> children) {
    XmlTag closed() {
      return new XmlTag(name, text.toString().strip(), List.copyOf(children));
    }
  }

  private static XmlTag tree(XMLStreamReader reader) throws XMLStreamException {
    Deque<Open> open = new ArrayDeque<>();
    List<XmlTag> roots = new ArrayList<>();
    int count = 0;
    while (reader.hasNext()) {
      switch (reader.next()) {
        case XMLStreamConstants.START_ELEMENT -> {
          count++;
          open.push(started(reader, open.size(), count));
        }
        case XMLStreamConstants.END_ELEMENT -> {
          XmlTag closed = open.pop().closed();
          (open.isEmpty() ? roots : open.element().children()).add(closed);
        }
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
          if (!open.isEmpty()) {
            open.element().text().append(reader.getText());
          }
        }
        case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE -> throw document();
        default -> {
          // comments and processing instructions say nothing about beer
        }
      }
    }
    return roots.getFirst();
  }

  private static Open started(XMLStreamReader reader, int depth, int count) {
    if (depth >= DEPTH_MOST || count > TAGS_MOST) {
      throw new Refusal(
          "The file has more than "
              + DEPTH_MOST
              + " tags inside each other, or more than "
              + TAGS_MOST
              + " tags; no recipe has.",
          reader.getLocalName(),
          "Maybe it is another kind of file.");
    }
    String name = reader.getLocalName().toUpperCase(Locale.ROOT);
    return new Open(name, new StringBuilder(), new ArrayList<>());
  }

  private static Refusal document() {
    return new Refusal(
        "The file brings its own document type or entities; those are not read, because they can"
            + " pull in other files or grow without end.",
        "<!DOCTYPE",
        "Maybe take the DOCTYPE lines out, if you know where the file is from.");
  }

  /// The tag as text again.
  String written() {
    StringBuilder written = new StringBuilder("<").append(name).append('>');
    written.append(text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;"));
    children.forEach(child -> written.append(child.written()));
    return written.append("</").append(name).append('>').toString();
  }
}
