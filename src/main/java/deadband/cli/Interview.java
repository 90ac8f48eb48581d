package deadband.cli;

import deadband.document.Document;
import deadband.document.Literal;
import deadband.document.Node;
import deadband.document.Pointer;
import deadband.document.Printable;
import deadband.document.Problem;
import deadband.judging.Consequence;
import deadband.judging.Judgement;
import deadband.judging.OpenQuestion;
import deadband.paste.Answer;
import deadband.reading.EquipmentFolder;
import deadband.reading.SetupReading;
import deadband.report.AnswerForm;
import deadband.report.Layout;
import deadband.report.Report;
import deadband.report.TextReport;
import deadband.setup.Change;
import deadband.setup.Entered;
import deadband.setup.Question;
import deadband.setup.Setup;
import deadband.setup.Shape;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import org.jspecify.annotations.Nullable;

/**
 * Fills in a setup by questions, a topic at a time: next the topic with the question that opens
 * most, until nothing is left that could be a hazard or damage. After each topic it says what is
 * found so far. Each answer is saved at once, so that the file is all there is to go on from.
 *
 * <p>Plain lines in and out: it works over a pipe and on any terminal.
 */
final class Interview {

  private static final String BACK = "back";
  private static final String QUIT = "quit";
  private static final Pointer EQUIPMENT = Pointer.root().child(EquipmentFolder.NAME);

  private final Console console;
  private final Layout layout;
  private final BufferedReader in;
  private final EquipmentChoice sheets;
  private final Function<String, SetupReading> reading;
  private final Function<Setup, Judgement> judging;
  private final Predicate<Document> saving;
  private final Deque<Question> before = new ArrayDeque<>();
  private final Set<Pointer> passed = new HashSet<>();
  private SetupReading.Read setup;

  /** A question that is put again; what was entered stays until something else is. */
  private @Nullable Question reopened;

  /**
   * An interview about one file.
   *
   * @param begun the file so far
   * @param sheets the equipment files it may name
   * @param reading reads such a text
   * @param saving writes the file; whether it could
   */
  Interview(
      Console console,
      SetupReading.Read begun,
      EquipmentChoice sheets,
      Function<String, SetupReading> reading,
      Function<Setup, Judgement> judging,
      Predicate<Document> saving) {
    this.console = console;
    this.layout = console.layout(Console.Colour.AUTO);
    this.in = new BufferedReader(new InputStreamReader(console.in(), StandardCharsets.UTF_8));
    this.setup = begun;
    this.sheets = sheets;
    this.reading = reading;
    this.judging = judging;
    this.saving = saving;
  }

  /** Thrown where the file cannot be written; that is said already. */
  private static final class NotSaved extends RuntimeException {
    private static final long serialVersionUID = 1;
  }

  /** Goes on until everything grave is answered, or the answers end; the exit status. */
  int run() {
    say(
        "Type a value, with its unit where it is another one. Enter alone: leave it as it is; ?: not"
            + " known. \"back\": the question before. \"quit\": stop here; each answer is saved.");
    try {
      save(setup);
      boolean named = !setup.setup().equipment().optional().orElse(List.of()).isEmpty();
      if (!named && !sheets.files().isEmpty() && !equipped()) {
        return later();
      }
      String section = "";
      while (true) {
        Judgement judgement = judging.apply(setup.setup());
        List<Question> topic = topic(judgement, section);
        if (topic.isEmpty() || !section.equals(section(topic.get(0)))) {
          console.out().print("\n" + TextReport.brief(report(judgement), layout));
          head(topic);
        }
        if (topic.isEmpty()) {
          return end(judgement);
        }
        if (!answered(topic)) {
          return later();
        }
        section = section(topic.get(0));
      }
    } catch (NotSaved e) {
      return Exit.UNWRITABLE;
    }
  }

  /** Has the equipment files chosen that the firm keeps; false where the answers end. */
  private boolean equipped() {
    say("");
    sheets.lines().forEach(this::say);
    while (true) {
      String line = line();
      if (line == null || line.equalsIgnoreCase(QUIT)) {
        return false;
      }
      if (line.isEmpty() || line.equals("?")) {
        return true;
      }
      Literal chosen = sheets.of(line).orElse(null);
      Problem problem = chosen == null ? null : taken(setup.document().with(EQUIPMENT, chosen));
      if (chosen != null && problem == null) {
        return true;
      }
      String right = "right: " + sheets.right();
      say("    " + (problem == null ? right : problem.says() + "; right: " + problem.right()));
    }
  }

  private Report report(Judgement judgement) {
    return new Report(setup.document(), setup.setup(), judgement);
  }

  private int end(Judgement judgement) {
    boolean open = !judgement.questions().isEmpty();
    say(
        open
            ? "What is left open is not known, or decides queries, waste and records alone."
            : "Nothing is left open.");
    say("next: deadband check " + name());
    return Exit.READY;
  }

  private int later() {
    say("");
    say("Saved. To go on: deadband new --continue " + name());
    return Exit.READY;
  }

  private String name() {
    return ShellWord.of(setup.name()).orElse("FILE");
  }

  /**
   * The open questions of one section: of that begun, where it has any more, else of the one with
   * the most urgent question.
   */
  private List<Question> topic(Judgement judgement, String begun) {
    List<Question> open =
        judgement.questions().stream()
            .filter(Interview::isGrave)
            .map(OpenQuestion::question)
            .filter(question -> !passed.contains(question.pointer()))
            .toList();
    boolean more = open.stream().anyMatch(each -> section(each).equals(begun));
    String next = more || open.isEmpty() ? begun : section(open.get(0));
    return open.stream().filter(each -> section(each).equals(next)).toList();
  }

  private void head(List<Question> topic) {
    if (!topic.isEmpty()) {
      say("");
      Pointer section = Pointer.root().child(section(topic.get(0)));
      say(Question.about(section).orElseThrow().field().means() + ":");
    }
  }

  private static boolean isGrave(OpenQuestion question) {
    return question.opens().stream()
        .anyMatch(check -> check.consequence().compareTo(Consequence.DAMAGE) <= 0);
  }

  private static String section(Question question) {
    return question.pointer().tokens().get(0);
  }

  /** Goes through the questions of one topic; false where the answers end. */
  private boolean answered(List<Question> topic) {
    Deque<Question> ahead = new ArrayDeque<>(topic);
    while (!ahead.isEmpty()) {
      Question question = ahead.pop();
      if (isSettled(question) && !question.equals(reopened)) {
        continue;
      }
      String typed = typed(question);
      if (typed == null || typed.equalsIgnoreCase(QUIT)) {
        return false;
      }
      if (typed.equalsIgnoreCase(BACK)) {
        ahead.push(question);
        back(ahead);
      } else {
        reopened = null;
        passed.add(question.pointer());
        before.push(question);
      }
    }
    return true;
  }

  /** Opens the question before this one again. */
  private void back(Deque<Question> ahead) {
    if (before.isEmpty()) {
      say("This is the first question.");
      return;
    }
    reopened = before.pop();
    ahead.push(reopened);
  }

  /** Whether it is answered, or its thing turned out not to be there. */
  private boolean isSettled(Question question) {
    boolean absent =
        Shape.partsOf(setup.setup()).stream()
            .filter(part -> part.isFitted().says(false))
            .anyMatch(part -> question.pointer().startsWith(part.pointer()));
    return absent
        || (question.isOfPresence()
            ? part(question).isEntered()
            : Change.entered(setup.setup(), question.pointer()) != null);
  }

  private Entered<Boolean> part(Question question) {
    return Shape.partsOf(setup.setup()).stream()
        .filter(part -> part.pointer().equals(question.pointer()))
        .findFirst()
        .orElseThrow()
        .isFitted();
  }

  /**
   * What was typed in the end: an answer that was taken, or a word that leads on; null at the end.
   */
  private @Nullable String typed(Question question) {
    console
        .out()
        .print(
            layout.wrapped("  ", asks(question) + " (" + question.where().words() + ")")
                + layout.wrapped("    ", AnswerForm.typed(question) + entered(question)));
    String doubted = "";
    while (true) {
      String line = line();
      if (line == null || line.equalsIgnoreCase(QUIT) || line.equalsIgnoreCase(BACK)) {
        return line;
      }
      Answer answer = Answer.of(question, line);
      if (answer instanceof Answer.Unknown) {
        if (!line.isEmpty() && question.equals(reopened)) {
          take(question, Literal.nothing());
        }
        return line;
      }
      Problem problem = answer instanceof Answer.Value value ? take(question, value.json()) : null;
      if (problem != null && problem.kind() == Problem.Kind.NOT_PLAUSIBLE && line.equals(doubted)) {
        problem = confirmed(question, ((Answer.Value) answer).json());
      }
      if (answer instanceof Answer.Value && problem == null) {
        return line;
      }
      doubted = line;
      say("    " + right(answer, problem));
    }
  }

  /** The question; what it is about by its name, where that is an entry of a list. */
  private String asks(Question question) {
    String name =
        question
            .pointer()
            .parent()
            .flatMap(setup.document()::find)
            .filter(Node.Section.class::isInstance)
            .map(entry -> ((Node.Section) entry).members())
            .filter(members -> !members.isEmpty())
            .map(members -> setup.document().source().excerpt(members.get(0).value().span()))
            .orElse("");
    return name.isEmpty()
        ? question.asks()
        : question
            .asks()
            .replaceFirst(
                "\\((entry \\d+)\\)$",
                "($1: " + Matcher.quoteReplacement(name.replace("\"", "")) + ")");
  }

  /** What a question that is put again was answered with. */
  private String entered(Question question) {
    return setup
        .document()
        .find(place(question))
        .filter(node -> question.equals(reopened) && !(node instanceof Node.Nothing))
        .map(node -> "; entered: " + setup.document().source().excerpt(node.span()))
        .orElse("");
  }

  private static Pointer place(Question question) {
    return question.isOfPresence() ? question.pointer().child(Shape.FITTED) : question.pointer();
  }

  private static String right(Answer answer, @Nullable Problem problem) {
    if (answer instanceof Answer.Wrong wrong) {
      return "right: " + wrong.right();
    }
    if (problem == null) {
      return "";
    }
    return problem.kind() == Problem.Kind.NOT_PLAUSIBLE
        ? problem.right().replaceFirst("; if it is right.*", "; if it is right, type it again")
        : problem.says() + "; right: " + problem.right();
  }

  private @Nullable String line() {
    console.out().print("  > ");
    console.out().flush();
    try {
      String line = in.readLine();
      if (line == null || !console.isTerminal()) {
        console.out().println(line == null ? "" : Printable.of(line));
      }
      return line == null ? null : line.strip();
    } catch (IOException e) {
      throw new UncheckedIOException("standard input cannot be read", e);
    }
  }

  /** Takes an answer into the file; what is wrong with it, where something is. */
  private @Nullable Problem take(Question question, Literal json) {
    return taken(setup.document().with(place(question), json));
  }

  private @Nullable Problem confirmed(Question question, Literal json) {
    Document document = setup.document();
    SetupReading read =
        reading.apply(
            document.with(
                Pointer.parse("/confirmed/-"), Literal.of(question.pointer().toString())));
    return read instanceof SetupReading.Read confirmed
        ? taken(confirmed.document().with(question.pointer(), json))
        : null;
  }

  private @Nullable Problem taken(String text) {
    SetupReading read = reading.apply(text);
    if (read instanceof SetupReading.Unreadable wrong) {
      return wrong.problems().get(0);
    }
    setup = (SetupReading.Read) read;
    save(setup);
    return null;
  }

  private void save(SetupReading.Read read) {
    if (!saving.test(read.document())) {
      throw new NotSaved();
    }
  }

  private void say(String line) {
    console.out().print(line.isBlank() ? "\n" : layout.wrapped("", line));
  }
}
