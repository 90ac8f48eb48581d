package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class OpenQuestionTest {

  private static List<OpenQuestion> questions(String setup) {
    return Setups.judge(setup).questions();
  }

  private static String place(OpenQuestion open) {
    return open.question().pointer().dotted();
  }

  private static boolean isEssential(OpenQuestion open) {
    return open.opens().stream().anyMatch(Check::essential);
  }

  @Test
  void aGoodHomeLeavesNothingToAsk() {
    assertThat(questions(Setups.text(Setups.good().get(0)))).isEmpty();
  }

  /** First what the essential checks wait for, then what hazards wait for, then the others. */
  @Test
  void theMostUrgentComesFirst() {
    List<OpenQuestion> asked = questions("{ \"relay\": { \"drives\": \"heat pump\" } }");

    List<Integer> urgency =
        asked.stream().map(q -> isEssential(q) ? 0 : q.hazards() > 0 ? 1 : 2).toList();
    assertThat(urgency).isSorted().contains(0, 1, 2);
    for (int i = 1; i < asked.size(); i++) {
      if (urgency.get(i).equals(urgency.get(i - 1))) {
        assertThat(asked.get(i).opens()).hasSizeLessThanOrEqualTo(asked.get(i - 1).opens().size());
      }
    }
  }

  /** Both thresholds of the relay are asked for, and the answer of one closes its question. */
  @Test
  void anAnswerClosesItsQuestion() {
    assertThat(questions("{ \"relay\": { \"drives\": \"heat pump\" } }"))
        .extracting(OpenQuestionTest::place)
        .contains("relay.start_kW", "relay.stop_kW");
    assertThat(questions("{ \"relay\": { \"drives\": \"heat pump\", \"start_kW\": 3 } }"))
        .extracting(OpenQuestionTest::place)
        .contains("relay.stop_kW")
        .doesNotContain("relay.start_kW");
  }

  /** Each check that waits for values is opened by each of them, or by the section they are in. */
  @Test
  void everyCheckThatWaitsIsAskedFor() {
    Judgement judgement = Setups.judge("{ \"tank\": { \"volume_L\": 200 } }");

    for (NotJudged open : judgement.notJudged()) {
      assertThat(judgement.questions().stream().filter(q -> q.opens().contains(open.check())))
          .as(open.check().name())
          .extracting(q -> q.question().pointer())
          .containsExactlyInAnyOrderElementsOf(OpenQuestion.outermost(open.missing()));
    }
  }

  @Test
  void whatIsAcceptedOpenIsNotAskedFor() {
    String setup =
        Setups.text(Path.of("sample-configs/good/mill-cottage.json"))
            .replace("\"clearanceNeeded_mm\": 200,", "");
    String accepted =
        setup.replace(
            "\"accepted\": []",
            "\"accepted\": [ { \"check\": \"clearance-too-small\", \"reason\": \"r\", \"by\":"
                + " \"b\", \"on\": \"2026-05-01\", \"pointer\": \"/diverter/clearanceNeeded_mm\" }"
                + " ]");

    assertThat(questions(setup))
        .extracting(OpenQuestionTest::place)
        .containsExactly("diverter.clearanceNeeded_mm");
    assertThat(questions(accepted)).isEmpty();
  }
}
