package deadband.cli;

import deadband.document.Literal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The equipment files that a setup may name, to be chosen from by their numbers.
 *
 * @param files as a setup names them
 */
record EquipmentChoice(List<String> files) {

  /** The files with their numbers, and how to answer; a line each. */
  List<String> lines() {
    List<String> lines = new ArrayList<>(List.of("Equipment files:"));
    for (int i = 0; i < files.size(); i++) {
      lines.add("  %2d  %s".formatted(i + 1, files.get(i)));
    }
    lines.add("  Which of these are fitted here? (data plate)");
    lines.add("    numbers, such as 1 3; Enter alone: none of them");
    return lines;
  }

  /** What would have been right. */
  String right() {
    return "numbers from 1 to " + files.size() + ", such as 1 3";
  }

  /** The list of the files of these numbers, each once; empty where a number has no file. */
  Optional<Literal> of(String typed) {
    Set<String> chosen = new LinkedHashSet<>();
    for (String number : typed.split("[\\s,;+]+", 0)) {
      if (!number.matches("[1-9]\\d{0,3}") || Integer.parseInt(number) > files.size()) {
        return Optional.empty();
      }
      chosen.add(files.get(Integer.parseInt(number) - 1));
    }
    return Optional.of(Literal.list(chosen.stream().map(Literal::of).toList()));
  }
}
