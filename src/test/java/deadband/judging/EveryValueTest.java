package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNoException;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import deadband.days.DayRuns;
import deadband.document.Document;
import deadband.document.Literal;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.document.Problem;
import deadband.document.Problem.Kind;
import deadband.limits.Limits;
import deadband.reading.SetupReading;
import deadband.setup.Change;
import deadband.setup.Field;
import deadband.setup.FieldKind;
import deadband.setup.Setup;
import deadband.setup.Shape;
import deadband.setup.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every value of the good homes, set to the ends of its range, to zero and to the middle, and every
 * word to each of its choices: whatever a file may hold is judged, never a fault of the program.
 */
class EveryValueTest {

  /** One home in so many is also judged with remedies, or with its days run. */
  private static final int WITH_REMEDIES = 23;

  private static final int WITH_DAYS = 61;

  private final Judge plain = new Judge(RuleBook.builtIn(), DayRuns.none());
  private final Judge days = new Judge(RuleBook.builtIn(), DayRuns.remembered());

  @Test
  void neverEndsInAFault() {
    TreeMap<String, String> faults = new TreeMap<>();
    int turn = 0;
    for (Path home : Setups.good()) {
      SetupReading.Read read = Setups.read(home.toString(), Setups.text(home));
      for (Change change : changes(read)) {
        turn++;
        try {
          judge(change, read.setup(), turn);
        } catch (RuntimeException | StackOverflowError fault) {
          faults.putIfAbsent(place(fault), home + " " + change + " " + fault);
        }
      }
    }
    assertThat(turn).isGreaterThan(1000);
    assertThat(faults).isEmpty();
  }

  private void judge(Change change, Setup home, int turn) {
    Setup setup = change.applyTo(home);
    // what heats water beyond boiling shows in the days
    boolean heat = List.of(Unit.CELSIUS, Unit.KELVIN).contains(Unit.of(change.pointer().last()));
    if (heat || turn % WITH_DAYS == 0) {
      days.glance(setup, Limits.standard(), Setups.AS_OF);
    } else if (turn % WITH_REMEDIES == 0) {
      plain.judge(setup, Limits.standard(), Setups.AS_OF);
    } else {
      plain.glance(setup, Limits.standard(), Setups.AS_OF);
    }
  }

  @Test
  void twoValuesAtOnceNeverEndInAFaultEither() {
    Random random = new Random(Long.getLong("deadband.seed", 20261127));
    for (Path home : Setups.good()) {
      SetupReading.Read read = Setups.read(home.toString(), Setups.text(home));
      List<Change> changes = changes(read);
      for (int turn = 0; turn < 40; turn++) {
        Change one = changes.get(random.nextInt(changes.size()));
        Change other = changes.get(random.nextInt(changes.size()));
        Setup setup = other.applyTo(one.applyTo(read.setup()));
        Judge judge = turn % 8 == 0 ? days : plain;

        assertThatNoException()
            .as(home + " " + one + " " + other)
            .isThrownBy(() -> judge.glance(setup, Limits.standard(), Setups.AS_OF));
      }
    }
  }

  /** What can physically not be in its place is refused with place, finding and range. */
  @Test
  void beyondItsRangeEveryNumberIsRefusedWithItsPlace() {
    Path home = Path.of("sample-configs/good/mill-cottage.json");
    Document document = Setups.read(home.toString(), Setups.text(home)).document();
    int refused = 0;
    for (Pointer at : Setups.leaves(document)) {
      boolean section = at.last().equals(Shape.FITTED);
      if (!section && kind(at) instanceof FieldKind.Num number && number.unit() != Unit.NONE) {
        for (double beyond : new double[] {number.least() - 1, number.most() + 1, 1e9, -1e9}) {
          refuses(document, at, beyond);
          refused++;
        }
      }
    }
    assertThat(refused).isGreaterThan(100);
  }

  private static void refuses(Document document, Pointer at, double beyond) {
    SetupReading reading = SetupReading.ofText("home", document.with(at, Literal.of(beyond)));
    assertThat(reading).as(at + " " + beyond).isInstanceOf(SetupReading.Unreadable.class);
    Problem problem = ((SetupReading.Unreadable) reading).problems().get(0);
    assertThat(problem.pointer()).isEqualTo(at);
    assertThat(problem.place()).isPresent();
    assertThat(problem.right()).contains(" from ", " to ");
  }

  @ParameterizedTest
  @CsvSource({
    "diverter.limit_C, 101",
    "diverter.hysteresis_K, 100",
    "gridSensor.rated_A, 0",
    "blending.hotSupplyMax_C, 0",
    "blending.hotSupplyMax_C, 120",
    "tank.volume_L, 1",
    "heatPump.everyday.stop_C, -10",
    "heatPump.everyday.stop_C, 110",
    "immersion.circuit.breaker_A, 0",
    "immersion.cutOut_C, 0",
  })
  void valuesThatNoHomeHas(String place, double value) {
    Path home = Path.of("sample-configs/good/mill-cottage.json");
    Document document = Setups.read(home.toString(), Setups.text(home)).document();
    refuses(document, Pointer.ofDotted(place), value);
  }

  @ParameterizedTest
  @ValueSource(strings = {"2101-01-01", "1999-12-31", "9999-12-31", "2026-02-30", "in May"})
  void datesThatNobodySigns(String date) {
    String text =
        "{ \"accepted\": [ { \"check\": \"no-cloud-delay\", \"on\": \"" + date + "\" } ] }";
    SetupReading.Unreadable reading = (SetupReading.Unreadable) SetupReading.ofText("home", text);

    assertThat(reading.problems()).extracting(Problem::kind).containsExactly(Kind.NOT_A_DATE);
    assertThat(reading.problems().get(0).right()).contains("a date from 2000 to 2100");
  }

  /** Files that once ended in a fault, where the folder of measured data is there. */
  @Test
  void whatOnceCrashedIsReportedOrRefused() throws IOException {
    Path folder = Path.of(System.getProperty("deadband.data", "none"), "field", "crash");
    assumeTrue(Files.isDirectory(folder), "skipped: no field/crash in the deadband.data folder");
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        if (SetupReading.ofFile(file) instanceof SetupReading.Read read) {
          assertThatNoException()
              .as(file.toString())
              .isThrownBy(() -> days.judge(read.setup(), Limits.standard(), Setups.AS_OF));
        }
      }
    }
  }

  /** Faults that come from one place are one. */
  private static String place(Throwable fault) {
    Throwable inmost = fault;
    while (inmost.getCause() != null) {
      inmost = inmost.getCause();
    }
    return Stream.of(inmost.getStackTrace())
        .filter(frame -> frame.getClassName().startsWith("deadband."))
        .filter(frame -> !frame.getClassName().startsWith("deadband.trade."))
        .findFirst()
        .map(StackTraceElement::toString)
        .orElse("elsewhere");
  }

  private static List<Change> changes(SetupReading.Read read) {
    List<Change> changes = new ArrayList<>();
    for (Pointer at : Setups.leaves(read.document())) {
      if (!at.last().equals(Shape.FITTED) && !at.startsWith(Pointer.ofDotted("asFound.settings"))) {
        Object now = Change.entered(read.setup(), at);
        values(read.document(), at).stream()
            .filter(value -> !value.equals(now))
            .forEach(value -> changes.add(new Change(at, now, value)));
      }
    }
    return changes;
  }

  private static List<?> values(Document document, Pointer at) {
    Node node = document.find(at).orElseThrow();
    FieldKind kind = kind(at);
    if (kind instanceof FieldKind.Num number) {
      return DoubleStream.of(number.least(), number.most(), 0)
          .filter(number::admits)
          .distinct()
          .boxed()
          .toList();
    }
    if (kind instanceof FieldKind.Word word) {
      return word.choices();
    }
    return node instanceof Node.Truth ? List.of(true, false) : List.of();
  }

  /** What a place of a setup holds. */
  static FieldKind kind(Pointer at) {
    FieldKind kind = new FieldKind.Section(Setup.class);
    for (String token : at.tokens()) {
      if (kind instanceof FieldKind.Section section) {
        kind = section.shape().field(token).map(Field::kind).orElseThrow();
      } else {
        kind = ((FieldKind.Many) kind).of();
      }
    }
    return kind;
  }
}
