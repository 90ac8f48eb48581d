package deadband.paste;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * One or more words of a line, brought to the terms of the vocabulary.
 *
 * @param terms empty for a word that says nothing
 * @param known whether the vocabulary knows the word
 * @param danger whether a number after it is not the setting in force
 */
record Term(Set<String> terms, String text, int first, int last, boolean known, boolean danger) {

  boolean isFiller() {
    return known && terms.isEmpty();
  }

  /** All that some words say together. */
  static Set<String> all(List<Term> words) {
    Set<String> all = new LinkedHashSet<>();
    words.forEach(word -> all.addAll(word.terms()));
    return all;
  }

  static boolean isKnown(List<Term> words) {
    return words.stream().allMatch(Term::known);
  }

  /** Whether any of them says something. */
  static boolean says(List<Term> words) {
    return words.stream().anyMatch(word -> word.known() && !word.terms().isEmpty());
  }

  /** From the first word that says something on. */
  static List<Term> label(List<Term> words) {
    int first = 0;
    while (first < words.size() && (!words.get(first).known() || words.get(first).isFiller())) {
      first++;
    }
    return words.subList(first, words.size());
  }

  static List<Term> joined(List<Term> one, List<Term> other) {
    List<Term> joined = new ArrayList<>(one);
    joined.addAll(other);
    return joined;
  }
}
