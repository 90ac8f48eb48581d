package deadband.judging;

import static java.nio.charset.StandardCharsets.UTF_8;

import deadband.document.NearestName;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.document.Source;
import deadband.document.Span;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;
import org.drools.base.base.EnabledBoolean;
import org.drools.base.definitions.rule.impl.RuleImpl;
import org.jspecify.annotations.Nullable;
import org.kie.api.definition.KiePackage;
import org.kie.api.definition.rule.Rule;
import org.kie.api.io.Resource;
import org.kie.api.io.ResourceType;
import org.kie.internal.builder.KnowledgeBuilder;
import org.kie.internal.builder.KnowledgeBuilderError;
import org.kie.internal.builder.KnowledgeBuilderFactory;
import org.kie.internal.io.ResourceFactory;

/** Compiles house rules and sees that each is one. */
final class HouseCompiler {

  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

  /** The agenda group of a rule that names none. */
  private static final String MAIN = "MAIN";

  private static final String CONSEQUENCES =
      String.join(", ", Arrays.stream(Consequence.values()).map(Consequence::word).toList());

  private final Map<String, Source> sources = new HashMap<>();
  private final List<Problem> problems = new ArrayList<>();
  private final RuleBook builtIn = RuleBook.builtIn();

  private HouseCompiler(List<Source> sources) {
    sources.forEach(source -> this.sources.put(source.name(), source));
  }

  /** Compiles on a thread of its own, since a file may be made to keep the compiler busy. */
  static HouseRules compiled(Source folder, List<Source> sources, Duration limit) {
    FutureTask<HouseRules> compiling =
        new FutureTask<>(() -> new HouseCompiler(sources).compile(sources));
    Thread thread = new Thread(compiling, "house rules");
    thread.setDaemon(true);
    thread.start();
    try {
      return compiling.get(limit.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException e) {
      return failed(folder, Kind.RULES_TOO_SLOW, "no end after " + limit.toSeconds() + " s");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return failed(folder, Kind.RULES_TOO_SLOW, "interrupted");
    } catch (ExecutionException e) {
      return failed(folder, Kind.NOT_A_RULE, "the compiler failed: " + e.getCause());
    }
  }

  private static HouseRules failed(Source folder, Kind kind, String found) {
    return new HouseRules.Unreadable(
        List.of(Problem.of(folder, kind, found, "rules that compile within a minute")));
  }

  private HouseRules compile(List<Source> ordered) {
    KnowledgeBuilder builder = KnowledgeBuilderFactory.newKnowledgeBuilder();
    for (Source source : ordered) {
      Resource resource = ResourceFactory.newByteArrayResource(source.text().getBytes(UTF_8));
      resource.setSourcePath(source.name());
      builder.add(resource, ResourceType.DRL);
    }
    if (builder.hasErrors()) {
      broken(builder.getErrors());
      return refused();
    }
    Collection<KiePackage> packages = builder.getKnowledgePackages();
    int rules = rules(packages);
    return problems.isEmpty() ? new HouseRules.Read(RuleBook.with(packages), rules) : refused();
  }

  private HouseRules refused() {
    problems.sort(
        (one, other) -> {
          int byFile = one.source().name().compareTo(other.source().name());
          return byFile != 0 ? byFile : Problem.inOrder().compare(one, other);
        });
    return new HouseRules.Unreadable(problems);
  }

  // What the compiler says -----------------------------------------------------------------------

  private void broken(Collection<KnowledgeBuilderError> errors) {
    CompilerWords words = new CompilerWords(builtIn.checks());
    Map<Source, KnowledgeBuilderError> worst = new LinkedHashMap<>();
    for (KnowledgeBuilderError error : errors) {
      worst.merge(source(error.getResource()), error, HouseCompiler::first);
    }
    worst.forEach(
        (source, error) -> {
          int[] lines = error.getLines();
          int line = lines.length > 0 ? lines[0] : 0;
          problems.add(words.problem(source, error.getMessage(), line));
        });
  }

  /** Of what the compiler says about one file, what the rest follows from. */
  private static KnowledgeBuilderError first(
      KnowledgeBuilderError one, KnowledgeBuilderError other) {
    int byGravity = Integer.compare(follows(one), follows(other));
    int byLine = Integer.compare(line(one), line(other));
    return byGravity < 0 || (byGravity == 0 && byLine <= 0) ? one : other;
  }

  private static int line(KnowledgeBuilderError error) {
    return error.getLines().length > 0 ? error.getLines()[0] : Integer.MAX_VALUE;
  }

  /** A parser that gave up and a consequence that does not compile follow from what is before. */
  private static int follows(KnowledgeBuilderError error) {
    if (error.getMessage().startsWith("Parser returned")) {
      return 2;
    }
    return error.getMessage().startsWith("Rule Compilation error") ? 1 : 0;
  }

  private Source source(@Nullable Resource resource) {
    String path = resource == null ? null : resource.getSourcePath();
    Source known = path == null ? null : sources.get(path);
    return known == null ? Source.named(path == null ? "house rules" : path) : known;
  }

  // What a house rule must be --------------------------------------------------------------------

  private int rules(Collection<KiePackage> packages) {
    int rules = 0;
    Set<String> names = new HashSet<>();
    for (KiePackage each : packages) {
      for (Rule rule : each.getRules()) {
        rule(rule, names);
        rules++;
      }
    }
    return rules;
  }

  private void rule(Rule rule, Set<String> names) {
    if (RuleBook.isReserved(rule.getPackageName())) {
      unfit(rule, "package " + rule.getPackageName(), "a package of your own: package house;");
    }
    name(rule, names);
    consequence(rule);
    for (String key : List.of("title", "why")) {
      if (RuleBook.text(rule.getMetaData(), key).isBlank()) {
        unfit(rule, "no @" + key, "@" + key + "(\"one plain sentence\")");
      }
    }
    if (mayBeHeldBack((RuleImpl) rule)) {
      unfit(
          rule,
          "an attribute that may keep it from firing",
          "a rule without groups, dates, timer, enabled and lock-on-active");
    }
    if (RuleBook.caseType(rule).isEmpty()) {
      unfit(rule, "a first pattern that is no case", "one case to report");
    }
  }

  /** A check that did not run would read as clear. */
  private static boolean mayBeHeldBack(RuleImpl rule) {
    return !rule.getAgendaGroup().equals(MAIN)
        || rule.getActivationGroup() != null
        || rule.getRuleFlowGroup() != null
        || rule.getDateEffective() != null
        || rule.getDateExpires() != null
        || rule.getTimer() != null
        || rule.getEnabled() != EnabledBoolean.ENABLED_TRUE
        || rule.isLockOnActive();
  }

  private void name(Rule rule, Set<String> names) {
    if (!NAME.matcher(rule.getName()).matches()) {
      unfit(rule, rule.getName(), "a name of small letters, digits and hyphens");
    } else if (builtIn.find(rule.getName()).isPresent()) {
      unfit(rule, rule.getName() + ", a built-in check", "a name of its own");
    } else if (!names.add(rule.getName())) {
      unfit(rule, rule.getName() + " a second time", "a name of its own");
    }
  }

  private void consequence(Rule rule) {
    String word = RuleBook.text(rule.getMetaData(), "consequence");
    List<String> words = Arrays.stream(Consequence.values()).map(Consequence::word).toList();
    if (!words.contains(word)) {
      String found = word.isEmpty() ? "no @consequence" : "@consequence(\"" + word + "\")";
      problems.add(
          problem(rule, found, "@consequence with one of: " + CONSEQUENCES)
              .near(word.isEmpty() ? null : NearestName.of(word, words).orElse(null)));
    }
  }

  private void unfit(Rule rule, String found, String right) {
    problems.add(problem(rule, found, right));
  }

  private Problem problem(Rule rule, String found, String right) {
    Source source = source(((RuleImpl) rule).getResource());
    Problem problem = Problem.of(source, Kind.RULE_UNFIT, found, right);
    int at = source.text().indexOf("\"" + rule.getName() + "\"");
    return at < 0 ? problem : problem.at(new Span(at, at + rule.getName().length() + 2));
  }
}
