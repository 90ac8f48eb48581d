package deadband.report;

import deadband.report.DayChart.Size;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.function.Function;

/** What all pages have in common: the style sheet, named by its hash in the page's policy. */
final class PageStyle {

  private static final String STYLE = "page.css";

  private PageStyle() {}

  static RecordModel.Sheet sheet(String title) {
    String style = style();
    return new RecordModel.Sheet(title, style, JobRecord.policyHash(style));
  }

  /** A picture in both layouts; the style sheet shows one of them. */
  static RecordModel.Picture picture(Function<Size, String> drawn) {
    return new RecordModel.Picture(drawn.apply(Size.PAGE), drawn.apply(Size.NARROW));
  }

  private static String style() {
    try (InputStream file = PageStyle.class.getResourceAsStream(STYLE)) {
      return new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("the style sheet cannot be read", e);
    }
  }
}
