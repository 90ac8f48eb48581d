package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.facts.Facts;
import deadband.limits.Limits;
import deadband.setup.Setup;
import deadband.topics.Topics;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drools.model.Model;
import org.drools.model.impl.ModelImpl;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The page of a check shows every condition of its rule: less that condition, the rule comes to
 * something on a setup of the page that the page does not allow. What is joined with the case is
 * shown under "Does not apply".
 */
class ConditionDeletionTest {

  /** Joined conditions that only another section can show, and why. */
  private static final Map<String, String> SHOWN_ELSEWHERE =
      Map.of(
          "start-below-heat-pump-draw: HeaterCoversStart( no )",
          "Where the heater is known to run, the surplus that is compared holds its power: the"
              + " condition keeps the check open while that is not known.");

  static Stream<Named<Model>> topics() {
    return RuleBook.models().stream().map(model -> Named.of(topic(model), model));
  }

  private static String topic(Model model) {
    return model.getName().substring(model.getName().lastIndexOf('.') + 1);
  }

  @ParameterizedTest
  @MethodSource("topics")
  void thePageShowsEveryConditionOfTheRule(Model topic) {
    Map<Deletion, Set<String>> shown = new LinkedHashMap<>();
    topic.getRules().stream()
        .flatMap(rule -> Deletion.of(rule).stream())
        .forEach(deletion -> shown.put(deletion, new TreeSet<>()));
    show(shown, Setups.files("rules/" + topic(topic), ".md"));

    assertThat(shown.entrySet())
        .filteredOn(entry -> entry.getValue().isEmpty())
        .extracting(Map.Entry::getKey)
        .as("conditions that no setup of the page shows")
        .allMatch(Deletion::lacksNothing);
    assertThat(shown.entrySet())
        .filteredOn(entry -> entry.getKey().joined())
        .filteredOn(entry -> !entry.getValue().contains(PageExample.UNCONCERNED))
        .extracting(entry -> entry.getKey().toString())
        .as("conditions that \"Does not apply\" does not show")
        .containsExactlyInAnyOrderElementsOf(elsewhere(shown.keySet()));
  }

  private static List<String> elsewhere(Set<Deletion> deletions) {
    return deletions.stream().map(Deletion::toString).filter(SHOWN_ELSEWHERE::containsKey).toList();
  }

  /** Notes for each deletion the sections of its page with a setup that shows it. */
  private static void show(Map<Deletion, Set<String>> shown, List<Path> pages) {
    ModelImpl model = new ModelImpl();
    shown.keySet().forEach(deletion -> model.addRule(deletion.rule()));
    RuleBook book = RuleBook.of(List.of(model));
    for (Path page : pages) {
      String check = page.getFileName().toString().replace(".md", "");
      List<Deletion> own =
          shown.keySet().stream().filter(each -> each.check().equals(check)).toList();
      for (PageExample example : PageExample.of(page)) {
        noticed(book, own, example).forEach(deletion -> shown.get(deletion).add(example.section()));
      }
    }
  }

  /** Those of the deletions that make of a setup what its page does not allow. */
  private static List<Deletion> noticed(RuleBook book, List<Deletion> own, PageExample example) {
    Setup setup = Setups.read("page", example.setup()).setup();
    Facts facts = facts(setup, book.find(own.get(0).name()).orElseThrow());
    Matches.Read matches = Matches.of(book, facts);
    List<Deletion> noticed =
        own.stream().filter(each -> !example.allows(outcome(book, each, matches, facts))).toList();
    assertThat(noticed).as("the whole rule, on %s", example).noneMatch(Deletion::lacksNothing);
    return noticed;
  }

  private static Facts facts(Setup setup, Check check) {
    if (!Acceptance.isAbout(check)) {
      return Topics.of(setup, Limits.standard(), Setups.RUNS);
    }
    Judgement judgement = Setups.JUDGE.glance(setup, Limits.standard(), Setups.AS_OF);
    return Acceptance.of(setup, Setups.AS_OF)
        .cases(Setups.JUDGE.book(), judgement.findings(), judgement.notJudged());
  }

  private static PageExample.Outcome outcome(
      RuleBook book, Deletion deletion, Matches.Read matches, Facts facts) {
    Check check = book.find(deletion.name()).orElseThrow();
    try {
      Outcomes outcomes = Outcomes.of(matches, List.of(check), facts);
      Judgement judgement =
          outcomes.judgement(
              outcomes.findings(),
              outcomes.notJudged(),
              Optional.empty(),
              List.of(),
              RuleBook.EDITION,
              Setups.AS_OF);
      return PageExample.Outcome.of(judgement, check.name());
    } catch (CheckFault fault) {
      return new PageExample.Outcome("a fault", 0, List.of());
    }
  }
}
