package deadband.reading;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.document.Problem;
import deadband.document.Problem.Kind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * All syntax errors of a file in one run and nothing that only follows from one: errors of every
 * sort are made in lines of a setup, and exactly those are reported, each on its line.
 */
class EveryErrorTest {

  private static final String SETUP =
      """
      {
        // first visit
        "deadband": 1,
        "site": {
          "reference": "Weir House",
          "country": "GB",
          "vulnerableOccupants": false
        },
        "outlets": [
          {
            "at": "bath",
            "blended": true
          },
          {
            "at": "kitchen",
            "blended": false
          }
        ],
        "relay": {
          "counts": [
            "export",
            "immersion"
          ],
          "start_kW": 3.20,
          "stop_kW": 0.35,
          "startDelay_min": 5,
          "contact": "solid state",
          "voltFree": true,
          "note": "near the meter"
        },
        "heatPump": {
          "input_kW": 2.4,
          "everyday": {
            "start_C": 47.5,
            "stop_C": 52.5
          }
        }
      }
      """;

  /** How one line, {@code "name": value,}, is written wrong, and what is reported. */
  private record Slip(Kind kind, String line, String wrong) {

    /** The line with the error in it, or as it is where the error does not fit it. */
    String in(String text) {
      return text.replaceFirst(line, wrong);
    }
  }

  private static final List<Slip> SLIPS =
      List.of(
          new Slip(Kind.DECIMAL_COMMA, "(: \\d+)\\.(\\d)", "$1,$2"),
          new Slip(Kind.UNIT_WRITTEN, "(_kW\": [\\d.]+)", "$1 kW"),
          new Slip(Kind.UNIT_WRITTEN, "(_C\": [\\d.]+)", "$1°C"),
          new Slip(Kind.PLUS_SIGN, ": (\\d)", ": +$1"),
          new Slip(Kind.LONG_MINUS, ": (\\d)", ": –$1"),
          new Slip(Kind.LEADING_ZERO, ": (\\d)", ": 0$1"),
          new Slip(Kind.POINT_WITHOUT_DIGIT, ": 0\\.", ": ."),
          new Slip(Kind.DIGITS_GROUPED, ": \\d[\\d.]*", ": 1 000"),
          new Slip(Kind.NUMBER_MALFORMED, ": (\\d)", ": 1.2.$1"),
          new Slip(Kind.NOT_FINITE, ": \\d[\\d.]*", ": NaN"),
          new Slip(Kind.WORD_MISSPELT, ": true", ": True"),
          new Slip(Kind.WORD_MISSPELT, ": false", ": FALSE"),
          new Slip(Kind.OTHER_WORD, ": true", ": yes"),
          new Slip(Kind.OTHER_WORD, ": \\d[\\d.]*", ": None"),
          new Slip(Kind.TEXT_NOT_QUOTED, ": \"([^\"]*)\"", ": $1"),
          new Slip(Kind.TEXT_NOT_QUOTED, ": \"([^\"]*)\"", ": $1\""),
          new Slip(Kind.TEXT_NOT_QUOTED, ": \\d[\\d.]*", ": 2026-05-01"),
          new Slip(Kind.SINGLE_QUOTES, ": \"([^\"]*)\"", ": '$1'"),
          new Slip(Kind.CURLY_QUOTES, ": \"([^\"]*)\"", ": “$1”"),
          new Slip(Kind.CURLY_QUOTES, ": \"([^\"]*)\"", ": \"$1”"),
          new Slip(Kind.QUOTE_NOT_CLOSED, "(: \"[^\"]*)\"", "$1"),
          new Slip(Kind.QUOTE_INSIDE, "(: \"[^\"]{2})([^\"]*)\"", "$1\"$2\"\""),
          new Slip(Kind.CONTROL_CHARACTER, "(: \"[^\"]{2})", "$1\t"),
          new Slip(Kind.ESCAPE_UNKNOWN, "(: \"[^\"]{2})", "$1\\\\k"),
          new Slip(Kind.HALF_CHARACTER, "(: \"[^\"]{2})", "$1\\\\ud83d"),
          new Slip(Kind.TEXT_AFTER_VALUE, "(: \"[^\"]*\")", "$1 (east)"),
          new Slip(Kind.NOT_JSON, ": (\\d)", ": ~$1"),
          new Slip(Kind.NAME_NOT_QUOTED, "\"(\\w+)\":", "$1:"),
          new Slip(Kind.NAME_NOT_QUOTED, "\"(\\w+)\":", "$1\":"),
          new Slip(Kind.SINGLE_QUOTES, "\"(\\w+)\":", "'$1':"),
          new Slip(Kind.CURLY_QUOTES, "\"(\\w+)\":", "“$1”:"),
          new Slip(Kind.QUOTE_NOT_CLOSED, "\"(\\w+)\":", "\"$1:"),
          new Slip(Kind.EQUALS_SIGN, "\":", "\" ="),
          new Slip(Kind.EQUALS_SIGN, "\":", "\" =>"),
          new Slip(Kind.COLON_MISSING, "\":", "\""),
          new Slip(Kind.COLON_TOO_MANY, "\":", "\"::"),
          new Slip(Kind.VALUE_MISSING, "\": [^\\[{,]+", "\": "),
          new Slip(Kind.VALUE_MISSING, "\": [^\\[{,]+", "\""),
          new Slip(Kind.NAME_MISSING, "\"\\w+\": ([^\\[{])", ": $1"),
          new Slip(Kind.COMMA_MISSING, "([^}\\]]),", "$1"),
          new Slip(Kind.COMMA_MISSING, "([}\\]]),", "$1"),
          new Slip(Kind.COMMA_TOO_MANY, ",", ",,"),
          new Slip(Kind.SEMICOLON, ",", ";"),
          new Slip(Kind.COMMENT_BY_HASH, "^( *[^ /].*)", "$1 # checked"),
          new Slip(Kind.STRANGE_BLANK, "^ +", "\u00a0"));

  private static final List<String> LINES = SETUP.lines().toList();

  /** The kinds reported for a text, by line. */
  private static Map<Integer, List<Kind>> reported(String text) {
    Map<Integer, List<Kind>> kinds = new LinkedHashMap<>();
    for (Problem problem : JsonReading.ofText("m", text).problems()) {
      int line = problem.place().orElseThrow().line();
      kinds.computeIfAbsent(line, key -> new ArrayList<>()).add(problem.kind());
    }
    return kinds;
  }

  private static void assertReported(List<String> lines, Map<Integer, Kind> made) {
    String text = String.join("\n", lines);
    Map<Integer, List<Kind>> expected = new LinkedHashMap<>();
    made.forEach((line, kind) -> expected.put(line, List.of(kind)));
    assertThat(reported(text)).as(text).containsExactlyInAnyOrderEntriesOf(expected);
  }

  @Test
  void reportsEachErrorAloneOnEachLine() {
    for (Slip slip : SLIPS) {
      int fitting = 0;
      for (int i = 0; i < LINES.size(); i++) {
        String wrong = slip.in(LINES.get(i));
        if (!wrong.equals(LINES.get(i))) {
          List<String> lines = new ArrayList<>(LINES);
          lines.set(i, wrong);
          assertReported(lines, Map.of(i + 1, slip.kind()));
          fitting++;
        }
      }
      assertThat(fitting).as(slip.toString()).isPositive();
    }
  }

  @Test
  void reportsAllOfManyErrorsInOneRun() {
    Random random = new Random(5);
    for (int turn = 0; turn < 2_000; turn++) {
      List<String> lines = new ArrayList<>(LINES);
      Map<Integer, Kind> made = new HashMap<>();
      for (int i = 0; i < lines.size(); i++) {
        Slip slip = SLIPS.get(random.nextInt(SLIPS.size()));
        String wrong = random.nextInt(3) == 0 ? slip.in(lines.get(i)) : lines.get(i);
        if (!wrong.equals(lines.get(i))) {
          lines.set(i, wrong);
          made.put(i + 1, slip.kind());
        }
      }
      assertReported(lines, made);
    }
  }

  /** One bracket left out or put in: one problem, be the other lines as they may. */
  @Test
  void reportsABracketOnce() {
    for (int i = 0; i < SETUP.length(); i++) {
      String c = SETUP.substring(i, i + 1);
      if ("{}[]".contains(c) && i > 0) {
        String other = c.equals("}") ? "]" : c.equals("]") ? "}" : c.equals("[") ? "{" : "[";
        for (String put : List.of("", other, c + c)) {
          String text = SETUP.substring(0, i) + put + SETUP.substring(i + 1);
          List<Problem> problems = JsonReading.ofText("m", text).problems();
          assertThat(problems).as(text).hasSize(1);
        }
      }
    }
  }
}
