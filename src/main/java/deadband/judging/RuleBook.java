package deadband.judging;

import deadband.facts.Case;
import deadband.facts.Condition;
import deadband.facts.Fact;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.drools.base.base.ClassObjectType;
import org.drools.base.definitions.rule.impl.RuleImpl;
import org.drools.base.rule.Pattern;
import org.drools.core.impl.RuleBaseFactory;
import org.drools.kiesession.rulebase.InternalKnowledgeBase;
import org.drools.kiesession.rulebase.KnowledgeBaseFactory;
import org.drools.model.Model;
import org.drools.modelcompiler.KiePackagesBuilder;
import org.jspecify.annotations.Nullable;
import org.kie.api.KieBaseConfiguration;
import org.kie.api.conf.KieBaseMutabilityOption;
import org.kie.api.definition.KiePackage;
import org.kie.api.definition.rule.Rule;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.KieSessionsPool;
import org.kie.api.runtime.rule.AgendaFilter;

/**
 * The checks, and the rules that make them.
 *
 * <p>The rules are compiled when the project is built; here the generated model is loaded directly,
 * which costs a tenth of compiling them. One book serves any number of judgements, on any number of
 * threads: each judgement gets a working memory of its own.
 */
public final class RuleBook {

  /** Edition of the built-in rules: the day on which a rule, a limit or a page last changed. */
  public static final String EDITION = "2026-11-27";

  /** More firings than any set of homes and rules needs; a rule that feeds itself reaches it. */
  private static final int MOST_FIRINGS = 100_000;

  private static final String RULES = RuleBook.class.getPackageName() + ".rules.";
  private static final String MODELS = "META-INF/kie/deadband/deadband/drools-model";

  private final List<Check> checks;
  private final Map<String, Check> byName = new LinkedHashMap<>();
  private final KieSessionsPool sessions;

  /** House rules run apart, so that none can end a session or take a fact from the others. */
  private final @Nullable KieSessionsPool house;

  private RuleBook(InternalKnowledgeBase base, @Nullable InternalKnowledgeBase house) {
    List<Check> declared = new ArrayList<>(checks(base));
    declared.addAll(house == null ? List.of() : checks(house));
    declared.sort(Comparator.comparing(Check::name));
    this.checks = List.copyOf(declared);
    this.checks.forEach(this::enter);
    this.sessions = base.newKieSessionsPool(1);
    this.house = house == null ? null : house.newKieSessionsPool(1);
  }

  private static List<Check> checks(InternalKnowledgeBase base) {
    return checks(base.getKiePackages());
  }

  private static List<Check> checks(Collection<? extends KiePackage> packages) {
    return packages.stream()
        .flatMap(topic -> topic.getRules().stream())
        .map(RuleBook::check)
        .sorted(Comparator.comparing(Check::name))
        .toList();
  }

  /** The rule book that is built in, made where it is first asked for. */
  public static RuleBook builtIn() {
    return BuiltIn.BOOK;
  }

  private static final class BuiltIn {
    static final RuleBook BOOK = with(List.of());
  }

  /** The checks that are built in, to be listed: none of their rules is made ready to run. */
  public static List<Check> builtInChecks() {
    return BuiltInChecks.LIST;
  }

  private static final class BuiltInChecks {
    static final List<Check> LIST =
        CheckIndex.entries().isEmpty()
            ? checks(packages(models()))
            : CheckIndex.entries().values().stream().map(CheckIndex.Entry::check).toList();
  }

  /** The built-in rule book and the compiled rules of a house. */
  static RuleBook with(Collection<? extends KiePackage> house) {
    return new RuleBook(
        base(models()), house.isEmpty() ? null : base(house, KieBaseMutabilityOption.ALLOWED));
  }

  /** The rules of these models alone. */
  static RuleBook of(List<Model> models) {
    return new RuleBook(base(models), null);
  }

  private static InternalKnowledgeBase base(List<Model> models) {
    return base(packages(models), KieBaseMutabilityOption.DISABLED);
  }

  private static Collection<? extends KiePackage> packages(List<Model> models) {
    KiePackagesBuilder builder =
        new KiePackagesBuilder(RuleBaseFactory.newKnowledgeBaseConfiguration());
    models.forEach(builder::addModel);
    return builder.build().getKiePackages();
  }

  /**
   * A base of these rules. One that never changes keeps no store for each of the many types of
   * facts; the facts of its sessions cannot be asked for, which only a house rule may do.
   */
  private static InternalKnowledgeBase base(
      Collection<? extends KiePackage> packages, KieBaseMutabilityOption mutability) {
    KieBaseConfiguration configuration = RuleBaseFactory.newKnowledgeBaseConfiguration();
    configuration.setOption(mutability);
    // without a name, one is drawn from a secure source, which takes longer than to make the base
    InternalKnowledgeBase base = KnowledgeBaseFactory.newKnowledgeBase("rules", configuration);
    base.addPackages(packages);
    return base;
  }

  /** Whether a package is kept for the rules that are built in. */
  static boolean isReserved(String packageName) {
    return (packageName + ".").startsWith("deadband.");
  }

  /** The edition, and whether a house added rules of its own. */
  public String edition() {
    return house == null ? EDITION : EDITION + " with house rules";
  }

  /** Whether a house added rules of its own. */
  boolean hasHouse() {
    return house != null;
  }

  /** Every check by name. */
  public List<Check> checks() {
    return checks;
  }

  private void enter(Check check) {
    byName.put(check.name(), check);
    check.formerNames().forEach(former -> byName.put(former, check));
  }

  /** The check that has this name, or had it before. */
  public Optional<Check> find(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /** What the rules match in these facts, as they are read at the time. */
  List<Match> matches(Collection<? extends Fact> facts) {
    List<Match> matched = fired(sessions, facts, rule -> {});
    if (house != null) {
      matched.addAll(ofHouse(house, facts));
    }
    return matched;
  }

  /** A house rule finds in its own name only; whatever it throws is its own failure. */
  private List<Match> ofHouse(KieSessionsPool house, Collection<? extends Fact> facts) {
    AtomicReference<String> firing = new AtomicReference<>("");
    try {
      List<Match> matched = fired(house, facts, firing::set);
      matched.removeIf(match -> find(match.check()).filter(Check::isHouse).isEmpty());
      return matched;
    } catch (RuntimeException | Error failure) {
      throw new HouseRuleFailure(firing.get(), failure);
    }
  }

  /**
   * What one set of rules matches.
   *
   * @param firing is given the name of each rule before it fires
   */
  private static List<Match> fired(
      KieSessionsPool sessions, Collection<? extends Fact> facts, Consumer<String> firing) {
    KieSession session = sessions.newKieSession();
    AgendaFilter filter =
        match -> {
          firing.accept(match.getRule().getName());
          return true;
        };
    List<Match> matched = new ArrayList<>();
    session.registerChannel(Found.CHANNEL, match -> matched.add((Match) match));
    try {
      facts.forEach(session::insert);
      int fired = 0;
      // a rule that halts the session ends its own turn, not that of the rest
      for (int more = -1; more != 0 && fired < MOST_FIRINGS; fired += more) {
        more = session.fireAllRules(filter, MOST_FIRINGS);
      }
      if (fired >= MOST_FIRINGS) {
        throw new IllegalStateException("the rules fire without end");
      }
      return matched;
    } finally {
      session.unregisterChannel(Found.CHANNEL);
      session.dispose();
    }
  }

  private static Check check(Rule rule) {
    Map<String, Object> declared = rule.getMetaData();
    boolean house = !rule.getPackageName().startsWith(RULES);
    Consequence consequence = consequence(rule);
    boolean asked = text(declared, "onAssumption").equals(Consequence.QUERY.word());
    return new Check(
        rule.getName(),
        names(text(declared, "formerly")),
        house ? "house" : rule.getPackageName().substring(RULES.length()),
        consequence,
        Boolean.parseBoolean(text(declared, "essential")),
        asked || consequence == Consequence.HAZARD,
        names(text(declared, "causedBy")),
        caseType(rule).orElseThrow(),
        types(rule, Condition.class).toList(),
        house
            ? RulePage.ofHouse(rule.getName(), text(declared, "title"), text(declared, "why"))
            : null);
  }

  private static Consequence consequence(Rule rule) {
    String word = text(rule.getMetaData(), "consequence");
    try {
      return Consequence.of(word);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(
          "rule \"%s\" of %s: @consequence(\"%s\") is none of %s"
              .formatted(
                  rule.getName(), rule.getPackageName(), word, List.of(Consequence.values())),
          e);
    }
  }

  static String text(Map<String, Object> declared, String key) {
    return declared.getOrDefault(key, "").toString();
  }

  private static List<String> names(String listed) {
    return listed.isEmpty() ? List.of() : List.of(listed.split(", *", -1));
  }

  /** A rule reports one case; the pattern of one says which. Empty where there is none. */
  static Optional<Class<? extends Case>> caseType(Rule rule) {
    return types(rule, Case.class).findFirst();
  }

  private static <T> Stream<Class<? extends T>> types(Rule rule, Class<T> kind) {
    return ((RuleImpl) rule)
        .getLhs().getChildren().stream()
            .filter(Pattern.class::isInstance)
            .map(pattern -> ((Pattern) pattern).getObjectType())
            .filter(ClassObjectType.class::isInstance)
            .map(type -> ((ClassObjectType) type).getClassType())
            .filter(kind::isAssignableFrom)
            .map(type -> type.asSubclass(kind));
  }

  /** The generated models of the built-in rules, a topic each. */
  static List<Model> models() {
    return modelNames().parallelStream().map(RuleBook::model).toList();
  }

  private static Model model(String name) {
    try {
      return Class.forName(name).asSubclass(Model.class).getDeclaredConstructor().newInstance();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("the built-in rules are incomplete: " + name, e);
    }
  }

  private static List<String> modelNames() {
    try (InputStream listed = RuleBook.class.getClassLoader().getResourceAsStream(MODELS)) {
      if (listed == null) {
        throw new IllegalStateException("the built-in rules are missing: " + MODELS);
      }
      return new BufferedReader(new InputStreamReader(listed, StandardCharsets.UTF_8))
          .lines()
          .filter(line -> !line.startsWith("Drools-Model-Version:"))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException("the built-in rules cannot be read", e);
    }
  }
}
