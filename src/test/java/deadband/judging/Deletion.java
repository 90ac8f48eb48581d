package deadband.judging;

import deadband.facts.Case;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.drools.model.Condition;
import org.drools.model.Constraint;
import org.drools.model.Pattern;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.model.constraints.MultipleConstraints;
import org.drools.model.constraints.SingleConstraint1;
import org.drools.model.impl.RuleImpl;
import org.drools.model.patterns.CompositePatterns;
import org.drools.model.patterns.PatternImpl;
import org.mvel2.MVEL;

/**
 * A rule less one of its conditions, made from the generated model, so that nothing is compiled.
 *
 * @param check the rule
 * @param condition what it lacks, as the rule has it; empty for a copy that lacks nothing
 * @param joined whether that is a condition joined with the case, not one on the case's values
 * @param rule what is left, under a name of its own
 */
record Deletion(String check, String condition, boolean joined, Rule rule) {

  private static final String OR = " || ";

  /** What a pattern may lack, and what is left of it then. */
  private record Part(String lacking, List<Condition> left) {}

  /** A copy of the rule, and the rule less each of its conditions. */
  static List<Deletion> of(Rule rule) {
    List<Condition> patterns = ((Condition) rule.getView()).getSubConditions();
    List<Deletion> deletions = new ArrayList<>();
    for (Condition pattern : patterns) {
      if (pattern instanceof Pattern<?> whole) {
        parts(whole).forEach(part -> deletions.add(deletion(rule, whole, part, deletions.size())));
      }
    }
    return deletions;
  }

  private static Deletion deletion(Rule rule, Pattern<?> whole, Part part, int number) {
    List<Condition> left = new ArrayList<>(((Condition) rule.getView()).getSubConditions());
    int at = left.indexOf(whole);
    left.remove(at);
    left.addAll(at, part.left());
    CompositePatterns view =
        new CompositePatterns(Condition.Type.AND, left, rule.getConsequences());
    String name = rule.getName() + " less " + number;
    return new Deletion(
        rule.getName(),
        part.lacking(),
        part.left().isEmpty(),
        new RuleImpl(rule.getPackage(), name, rule.getUnit(), view, Map.of(), rule.getMetaData()));
  }

  @Override
  public String toString() {
    return check + ": " + condition;
  }

  /** The name under which what is left finds. */
  String name() {
    return rule.getName();
  }

  boolean lacksNothing() {
    return condition.isEmpty();
  }

  private static <T> List<Part> parts(Pattern<T> pattern) {
    Variable<T> subject = pattern.getPatternVariable();
    List<String> conditions =
        constraints(pattern.getConstraint())
            .map(constraint -> constraint.predicateInformation().getStringConstraint())
            .toList();
    if (!Case.class.isAssignableFrom(subject.getType())) {
      String answer = String.join(", ", conditions);
      return List.of(new Part(subject.getType().getSimpleName() + "( " + answer + " )", List.of()));
    }
    List<Part> parts = new ArrayList<>();
    parts.add(new Part("", with(subject, conditions)));
    for (int i = 0; i < conditions.size(); i++) {
      parts.add(new Part(conditions.get(i), with(subject, without(i, conditions))));
      List<String> alternatives = List.of(conditions.get(i).split(" \\|\\| ", -1));
      for (int j = 0; alternatives.size() > 1 && j < alternatives.size(); j++) {
        List<String> fewer = new ArrayList<>(conditions);
        fewer.set(i, String.join(OR, without(j, alternatives)));
        parts.add(new Part(alternatives.get(j), with(subject, fewer)));
      }
    }
    return parts;
  }

  private static Stream<Constraint> constraints(Constraint constraint) {
    return constraint instanceof MultipleConstraints several
        ? several.getChildren().stream()
        : Stream.of(constraint).filter(SingleConstraint1.class::isInstance);
  }

  private static List<String> without(int i, List<String> all) {
    List<String> others = new ArrayList<>(all);
    others.remove(i);
    return others;
  }

  private static <T> List<Condition> with(Variable<T> subject, List<String> conditions) {
    PatternImpl<T> pattern = new PatternImpl<>(subject);
    conditions.forEach(condition -> pattern.addConstraint(evaluated(subject, condition)));
    return List.of(pattern);
  }

  private static <T> Constraint evaluated(Variable<T> subject, String condition) {
    Serializable compiled = MVEL.compileExpression(condition);
    return new SingleConstraint1<>(
        subject.getType().getSimpleName() + " " + condition,
        subject,
        fact -> (Boolean) MVEL.executeExpression(compiled, fact));
  }
}
