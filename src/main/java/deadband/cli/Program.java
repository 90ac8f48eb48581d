package deadband.cli;

import deadband.document.NearestName;
import deadband.document.ProblemText;
import deadband.judging.HouseRuleFailure;
import deadband.judging.RuleBook;
import deadband.setup.Shape;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program and its commands. */
@Command(
    name = "deadband",
    description =
        "Checks the proposed settings of a home where a solar-surplus controller and a heat pump"
            + " share one hot water tank, before anyone signs them off.",
    mixinStandardHelpOptions = true,
    footerHeading = "%nExit status, the highest of several files:%n",
    footer = {
      "  0   ready for sign-off, or not as bad as --fail-on says",
      "  1   a verdict at or above --fail-on",
      "  2   wrong use of the command",
      "  3   some input could not be read",
      "  4   nothing was checked, or could be run",
      "  5   a file, or standard output, could not be written",
      "  70  a fault of the program or of a house rule"
    })
final class Program implements Callable<Integer> {

  /** How to begin, for whoever has typed the name alone. */
  private static final String BEGINNING =
      """
      Checks the settings of a home where a surplus controller and a heat pump share one tank.
        deadband new home.json       fills in a setup file by questions
        deadband check home.json     checks it; also an email or a form with settings in it
        deadband propose home.json   proposes settings that bring it to sign-off
        deadband --help              lists all commands; README.md says more
      """;

  private static final String VERSION = "--version";
  private static final String COMPLETION = "completion";

  /** In the order in which they are listed. */
  private static final List<String> COMMANDS =
      List.of(
          "new",
          "check",
          "propose",
          "compare",
          "sheet",
          "simulate",
          "diagnose",
          "explain",
          "checks",
          "schema",
          COMPLETION);

  private final Console console;

  private Program(Console console) {
    this.console = console;
  }

  static Program of(Console console) {
    return new Program(console);
  }

  /** Runs one command line and gives the exit status. */
  int run(String... arguments) {
    int exit = executed(arguments);
    if (console.flush()) {
      return exit;
    }
    console.tell("standard output could not be written in full");
    console.flush();
    return Math.max(exit, Exit.UNWRITABLE);
  }

  private int executed(String... arguments) {
    loadAhead(arguments);
    try {
      return commandLine(arguments).execute(arguments);
    } catch (StackOverflowError | AssertionError fault) {
      return fault(fault);
    }
  }

  /**
   * Begins on a thread of its own what the command will need, while its line and files are read.
   */
  private static void loadAhead(String... arguments) {
    switch (arguments.length == 0 ? "" : arguments[0]) {
      case "check", "propose", "compare" -> begin(RuleBook::builtIn);
      case "checks", "explain" -> begin(RuleBook::builtInChecks);
      default -> {}
    }
  }

  private static void begin(Runnable loading) {
    Thread thread = new Thread(loading, "rule book");
    thread.setDaemon(true);
    // the command meets the same fault, and says so
    thread.setUncaughtExceptionHandler((at, fault) -> {});
    thread.start();
  }

  private CommandLine commandLine(String... arguments) {
    CommandLine line = new CommandLine(this);
    needed(arguments).forEach(name -> line.addSubcommand(name, command(name)));
    line.setOut(writer(console.out()))
        .setErr(writer(console.err()))
        .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
        .setParameterExceptionHandler(this::wrongUse)
        .setExecutionExceptionHandler(this::fault)
        .registerConverter(LocalDate.class, Program::date);
    line.getCommandSpec().versionProvider(() -> new String[] {"deadband " + Version.number()});
    for (CommandLine each : line.getSubcommands().values()) {
      each.setColorScheme(line.getColorScheme());
      each.getCommandSpec().args().forEach(choice -> takeByWord(each, choice.type()));
    }
    return line;
  }

  /** The commands that this line may be about: each takes as long to describe as a run to start. */
  private static List<String> needed(String... arguments) {
    String first = arguments.length == 0 ? VERSION : arguments[0];
    if (first.equals(VERSION)) {
      return List.of();
    }
    return COMMANDS.contains(first) && !first.equals(COMPLETION) ? List.of(first) : COMMANDS;
  }

  private Object command(String name) {
    return switch (name) {
      case "new" -> new NewCommand(console);
      case "check" -> new CheckCommand(console);
      case "propose" -> new ProposeCommand(console);
      case "compare" -> new CompareCommand(console);
      case "sheet" -> new SheetCommand(console);
      case "simulate" -> new SimulateCommand(console);
      case "diagnose" -> new DiagnoseCommand(console);
      case "explain" -> new ExplainCommand(console);
      case "checks" -> new ChecksCommand(console);
      case "schema" -> new SchemaCommand(console);
      case COMPLETION -> new CompletionCommand(console);
      default -> throw new IllegalArgumentException("no such command: " + name);
    };
  }

  /** Takes a choice by its word: the constant's name in small letters, with hyphens. */
  private static <E> void takeByWord(CommandLine line, Class<E> choice) {
    if (choice.isEnum()) {
      line.registerConverter(choice, word -> chosen(word, choice.getEnumConstants()));
    }
  }

  private static <E> E chosen(String word, E[] choices) {
    List<String> words = Arrays.stream(choices).map(choice -> word((Enum<?>) choice)).toList();
    int index = words.indexOf(word);
    if (index < 0) {
      throw new TypeConversionException(word + " is not one of: " + String.join(", ", words));
    }
    return choices[index];
  }

  private static LocalDate date(String text) {
    return Shape.date(text)
        .orElseThrow(
            () ->
                new TypeConversionException(
                    text + " is not a date; right: 2026-05-31 (2000 to 2100)"));
  }

  /** The word for a choice: its name in small letters, with hyphens. */
  static String word(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
  }

  /** Without a command nothing is checked, which is no success. */
  @Override
  public Integer call() {
    console.out().print(BEGINNING);
    return Exit.NOTHING_CHECKED;
  }

  private int wrongUse(ParameterException wrong, String[] arguments) {
    console.tell(sentence(wrong));
    nearest(wrong).ifPresent(name -> console.tell("nearest: " + name));
    help(wrong.getCommandLine());
    return Exit.USAGE;
  }

  private static String sentence(ParameterException wrong) {
    if (wrong instanceof UnmatchedArgumentException unmatched) {
      String kind = unmatched.isUnknownOption() ? "option" : "word";
      return "unknown " + kind + ": " + String.join(" ", unmatched.getUnmatched());
    }
    return Objects.requireNonNullElse(wrong.getMessage(), "the command is not understood");
  }

  private static Optional<String> nearest(ParameterException wrong) {
    if (!(wrong instanceof UnmatchedArgumentException unmatched)) {
      return Optional.empty();
    }
    CommandSpec command = wrong.getCommandLine().getCommandSpec();
    List<String> known = new ArrayList<>(command.subcommands().keySet());
    known.addAll(command.optionsMap().keySet());
    return NearestName.of(unmatched.getUnmatched().get(0).toLowerCase(Locale.ROOT), known);
  }

  private int fault(Exception fault, CommandLine line, ParseResult parsed) {
    if (fault instanceof Refusal refusal) {
      return refused(refusal, line);
    }
    if (fault instanceof InvalidPathException wrong) {
      console.tell("no file can have this name: " + wrong.getInput());
      return Exit.USAGE;
    }
    return fault(fault);
  }

  private int refused(Refusal refusal, CommandLine line) {
    if (!refusal.problems().isEmpty()) {
      int width = console.layout(Console.Colour.NEVER).width();
      console.err().print(ProblemText.of(refusal.problems(), width));
    } else {
      console.tell(refusal.says());
    }
    if (refusal.exit() == Exit.USAGE) {
      help(line);
    }
    return refusal.exit();
  }

  private void help(CommandLine line) {
    console.tell("help: " + line.getCommandSpec().qualifiedName() + " --help");
  }

  private int fault(Throwable fault) {
    console.tell(
        fault instanceof HouseRuleFailure
            ? "a house rule failed while it was run: " + fault.getMessage()
            : "deadband could not finish: " + Fault.of(fault));
    return Exit.FAULT;
  }
}
