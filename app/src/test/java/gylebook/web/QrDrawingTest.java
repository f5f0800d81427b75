package gylebook.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// What is drawn is read back by another library than the one that draws it: ZXing.
final class QrDrawingTest {
  private static final int SCALE = 4;
  private static final int WHITE = 0xffffff;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "http://192.168.7.5:8484/come-in#00417283",
        "https://[2001:db8:0:7:ffff:ffff:ffff:5]:8485/come-in#99999999"
      })
  void aCameraReadsTheAddressAndTheCode(String text) throws ReaderException {
    String svg = QrDrawing.svg(text);
    Matcher box = Pattern.compile("viewBox=\"0 0 (\\d+) (\\d+)\"").matcher(svg);
    assertThat(box.find()).isTrue();
    int side = SCALE * Integer.parseInt(box.group(1));
    int[] pixels = new int[side * side];
    Arrays.fill(pixels, WHITE);
    Pattern module = Pattern.compile("M(\\d+) (\\d+)h1v1h-1z");
    for (MatchResult at : module.matcher(svg).results().toList()) {
      int left = SCALE * Integer.parseInt(at.group(1));
      int top = SCALE * Integer.parseInt(at.group(2));
      for (int y = top; y < top + SCALE; y++) {
        Arrays.fill(pixels, y * side + left, y * side + left + SCALE, 0);
      }
    }
    BinaryBitmap picture =
        new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels)));
    assertThat(new QRCodeReader().decode(picture).getText()).isEqualTo(text);
  }
}
