package gylebook.interchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/// Files that attack their reader, or were hurt on the way: one sentence each, nothing half-read.
class HostileFilesTest {
  @Test
  void anEntityBombIsRefusedAtOnce() {
    StringBuilder bomb =
        new StringBuilder("<?xml version=\"1.0\"?><!DOCTYPE B [<!ENTITY a \"ha\">");
    for (char name = 'b'; name <= 'z'; name++) {
      String before = "&" + (char) (name - 1) + ";";
      bomb.append("<!ENTITY ").append(name).append(" \"").append(before.repeat(10)).append("\">");
    }
    String file = bomb + "]><RECIPES><RECIPE><NAME>&z;</NAME></RECIPE></RECIPES>";
    assertThat(Foreign.refused(file)).contains("document type or entities");
  }

  @Test
  void aHundredMegabytesAreRefusedByTheirSize() {
    byte[] huge = new byte[100_000_000];
    Arrays.fill(huge, (byte) ' ');
    huge[0] = '{';
    assertThat(Foreign.refused(huge)).contains("100000000 bytes").contains("at most 4000000");
  }

  @Test
  void aFileCutOffAnywhereIsRefusedWhole() {
    for (String whole : new String[] {Foreign.file("plain.json"), Foreign.file("plain.xml")}) {
      String file = whole.strip();
      for (int at = 1; at < file.length(); at += 97) {
        assertThat(Foreign.refused(file.substring(0, at))).isNotEmpty();
      }
    }
    assertThat(Foreign.refused("")).contains("empty");
    assertThat(Foreign.refused(Foreign.file("plain.json").substring(0, 900)))
        .contains("ends in the middle");
  }

  @Test
  void aKeyThatStandsTwiceIsNamed() {
    String twice = Foreign.json("\"author\": \"nobody\"", "\"author\": \"a\", \"author\": \"b\"");
    assertThat(Foreign.refused(twice)).contains("'author' stands twice");
  }

  @Test
  void aNumberThatIsNoneIsNamed() {
    for (String none : new String[] {"NaN", "Infinity", "-Infinity"}) {
      assertThat(Foreign.refused(Foreign.json("\"value\": 4.2", "\"value\": " + none)))
          .contains("not whole JSON");
      assertThat(Foreign.refused(Foreign.xml("<AMOUNT>3.8<", "<AMOUNT>" + none + "<")))
          .contains("FERMENTABLE 1 > AMOUNT")
          .contains("number");
    }
    assertThat(Foreign.refused(Foreign.json("\"value\": 4.2", "\"value\": \"NaN\"")))
        .contains("has to be a number");
    assertThat(Foreign.refused(Foreign.json("\"value\": 4.2", "\"value\": 1e999999999")))
        .contains("number");
    assertThat(Foreign.refused(Foreign.json("\"value\": 4.2", "\"value\": -4.2")))
        .contains("fermentable_additions 1 > amount")
        .contains("mass");
    assertThat(Foreign.refused(Foreign.json("\"value\": 4.2", "\"value\": true")))
        .contains("has to be a number");
  }

  @Test
  void lettersOfAnotherEncodingAreRefusedWithAWayOut() {
    byte[] latin = Foreign.json("nobody", "Jörg").getBytes(StandardCharsets.ISO_8859_1);
    assertThat(Foreign.refused(latin)).contains("not UTF-8").contains("save the file again");
    String claims = Foreign.xml("ISO-8859-1", "UTF-8").replace("nobody", "Jörg");
    assertThat(Foreign.refused(claims.getBytes(StandardCharsets.ISO_8859_1)))
        .contains("not UTF-8")
        .contains("header");
    assertThat(Foreign.refused(Foreign.xml("ISO-8859-1", "KLINGON-7"))).contains("KLINGON-7");
  }

  @Test
  void nestingWithoutEndIsRefused() {
    assertThat(Foreign.refused("{\"a\":".repeat(100_000))).contains("nested deeper than");
    assertThat(Foreign.refused("<RECIPES>" + "<A>".repeat(100_000))).contains("tags");
  }

  @Test
  void whatIsNeitherStandardIsToldWhatItIsNot() {
    assertThat(Foreign.refused("hello")).contains("neither JSON nor XML");
    assertThat(Foreign.refused("{\"beer\": 1}")).contains("'beerjson'");
    assertThat(Foreign.refused("{\"beerjson\": 5}")).contains("'beerjson' has to be an object");
    assertThat(Foreign.refused("{\"beerjson\": {\"version\": 3, \"recipes\": {}}}"))
        .contains("has to be a list");
    assertThat(Foreign.refused("<HOPS><HOP/></HOPS>")).contains("holds no recipe");
    assertThat(Foreign.refused(new byte[] {(byte) 0xff, (byte) 0xd8, 1, 2})).contains("UTF-8");
    assertThat(
            Foreign.refused("{\"beerjson\": {\"version\": 3, \"recipes\": [{\"name\": \"x\"}]}}"))
        .contains("no 'ingredients'");
  }

  @Test
  void anUnknownUnitIsNamedWithThoseThatAreKnown() {
    String file =
        Foreign.json("\"value\": 4.2, \"unit\": \"kg\"", "\"value\": 1, \"unit\": \"st\"");
    assertThat(Foreign.refused(file)).contains("the unit 'st'").contains("kg, g, mg, lb, oz");
  }
}
