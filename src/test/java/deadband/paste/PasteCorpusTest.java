package deadband.paste;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.document.Source;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Two hundred pasted texts: at least 95 % of what they say is read right, and nothing is read
 * wrong, since a wrong reading is worse than none.
 */
class PasteCorpusTest {

  private static final Path BY_HAND = Path.of("src/test/resources/deadband/paste/by-hand.txt");
  private static final int HOMES = 13;

  /** How many values a corpus says, and how many of them were read. */
  private static final class Count {
    private int texts;
    private int said;
    private int right;
    private final List<String> missed = new ArrayList<>();
    private final List<String> wrong = new ArrayList<>();

    void add(String title, Map<String, String> says, Map<String, String> read) {
      texts++;
      said += says.size();
      says.forEach(
          (place, value) -> count(title + " " + place + " " + value, value, read.get(place)));
      read.forEach(
          (place, value) -> {
            if (!value.equals(says.get(place))) {
              wrong.add(title + ": " + place + " read as " + value + ", says " + says.get(place));
            }
          });
    }

    private void count(String what, String value, String read) {
      if (value.equals(read)) {
        right++;
      } else if (read == null) {
        missed.add(what);
      }
    }

    void hold(String corpus) {
      String figures =
          String.format(
              "%s: %d texts, %d values, %d right, %d wrong",
              corpus, texts, said, right, wrong.size());
      System.out.println(figures);
      assertThat(wrong).as(figures).isEmpty();
      assertThat(right).as(figures + missed).isGreaterThanOrEqualTo((int) Math.ceil(0.95 * said));
    }
  }

  @Test
  void textsWrittenByHandAreReadRight() throws IOException {
    Count count = new Count();
    String[] texts = Files.readString(BY_HAND).split("(?m)^== text ", 0);
    for (int i = 1; i < texts.length; i++) {
      String title = texts[i].lines().findFirst().orElseThrow();
      int says = texts[i].indexOf("== reads");
      count.add(
          title, said(texts[i].substring(says)), read(texts[i].substring(title.length(), says)));
    }

    assertThat(count.texts).isGreaterThanOrEqualTo(50);
    count.hold("by hand");
  }

  private static Map<String, String> said(String block) {
    Map<String, String> says = new LinkedHashMap<>();
    block
        .lines()
        .filter(line -> line.startsWith("/"))
        .forEach(
            line -> {
              int space = line.indexOf(' ');
              says.put(line.substring(0, space), line.substring(space + 1));
            });
    return says;
  }

  private static Map<String, String> read(String text) {
    Map<String, String> read = new LinkedHashMap<>();
    PasteReader.read(Source.of("mail.txt", text))
        .understood()
        .forEach(
            one -> read.put(one.pointer().toString(), PasteReader.shown(one.value()).orElse("?")));
    return read;
  }

  @Test
  void textsOfTwelveWritersAreReadRight() {
    Count count = new Count();
    for (int writer = 0; writer < WrittenHome.WRITERS; writer++) {
      for (int home = 0; home < HOMES; home++) {
        WrittenHome written = WrittenHome.of(writer, home);
        Map<String, String> says = new LinkedHashMap<>();
        written.values().forEach((place, value) -> says.put(place, shown(value)));
        count.add("writer " + writer + ", home " + home, says, read(written.text()));
      }
    }

    assertThat(count.texts).isGreaterThanOrEqualTo(150);
    count.hold("generated");
  }

  private static String shown(BigDecimal value) {
    return value.toPlainString();
  }
}
