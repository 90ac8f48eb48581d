package deadband.report;

import deadband.facts.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The sentence of a rule page with the numbers of one finding in it. Clauses are parted by
 * semicolons; one that names a quantity which the finding does not have is left out.
 */
final class NumberSentence {

  private static final Pattern QUANTITY = Pattern.compile("\\{([^}]+)}");

  private static final Pattern ONE_OF_MANY =
      Pattern.compile(
          "(?<![\\d.,-])1 (relay )?(closure|start|call|day|run|time|phase|window|outlet)s\\b");

  private NumberSentence() {}

  static String of(String template, List<Measure> measures) {
    Map<String, Measure> byName =
        measures.stream()
            .collect(Collectors.toMap(Measure::quantity, measure -> measure, (one, other) -> one));
    List<String> clauses = new ArrayList<>();
    for (String clause : template.split("; ", -1)) {
      filled(clause, byName).ifPresent(clauses::add);
    }
    return String.join("; ", clauses);
  }

  /** One closure, not one closures. */
  private static String singular(String clause) {
    return ONE_OF_MANY.matcher(clause).replaceAll("1 $1$2");
  }

  private static Optional<String> filled(String clause, Map<String, Measure> byName) {
    Matcher quantity = QUANTITY.matcher(clause);
    StringBuilder filled = new StringBuilder();
    while (quantity.find()) {
      Measure measure = byName.get(quantity.group(1));
      if (measure == null) {
        return Optional.empty();
      }
      quantity.appendReplacement(filled, Matcher.quoteReplacement(Words.withUnit(measure)));
    }
    return Optional.of(singular(quantity.appendTail(filled).toString()));
  }
}
