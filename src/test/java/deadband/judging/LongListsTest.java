package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.days.DayRuns;
import deadband.document.Literal;
import deadband.document.Node;
import deadband.limits.Limits;
import java.nio.file.Path;
import java.util.Collections;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** A long list in a file asks for no more trials than a short one. */
class LongListsTest {

  private static final Path HOME = Path.of("sample-configs/good/mill-cottage.json");

  /** How often days are asked for: once for the setup, and once for each set that is tried. */
  private static int trials(int outlets) {
    AtomicInteger asked = new AtomicInteger();
    DayRuns counting =
        model -> {
          asked.incrementAndGet();
          return DayRuns.none().of(model);
        };
    Judgement judgement =
        new Judge(Setups.JUDGE.book(), counting)
            .judge(
                Setups.read("outlets", withOutlets(outlets)).setup(),
                Limits.standard(),
                Setups.AS_OF);
    assertThat(judgement.findings()).hasSizeGreaterThanOrEqualTo(outlets);
    return asked.get();
  }

  /** The home with so many baths whose valves are set far too hot. */
  private static String withOutlets(int outlets) {
    String bath = "{ \"at\": \"bath\", \"blended\": true, \"mixed_C\": 60 }";
    Node.Section root = Setups.read("home", Setups.text(HOME)).document().root();
    StringBuilder text = new StringBuilder("{");
    for (var member : root.members()) {
      if (!member.name().equals("outlets")) {
        text.append('"').append(member.name()).append("\": ");
        text.append(Literal.of(member.value()).json()).append(",\n");
      }
    }
    String list = String.join(",", Collections.nCopies(outlets, bath));
    return text.append("\"outlets\": [").append(list).append("] }").toString();
  }

  @Test
  void trialsDoNotGrowWithTheList() {
    assertThat(trials(300)).isEqualTo(trials(60));
  }
}
