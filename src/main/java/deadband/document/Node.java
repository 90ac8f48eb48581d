package deadband.document;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One value of a setup file that knows where it stands.
 *
 * <p>The words are for people who fit heating: a JSON object is a <i>section</i>, an array a
 * <i>list</i>, {@code null} is <i>nothing entered</i>.
 */
public sealed interface Node {

  /** Where the value stands, brackets and quotes included. */
  Span span();

  /** What the value is, in the words used in messages: "a section", "a number". */
  String kind();

  /**
   * Whether another value means the same: places, layout and the order of members do not count,
   * numbers count by value.
   */
  boolean same(Node other);

  /**
   * A JSON object.
   *
   * @param members in the order of the file; a name that stands twice is here twice
   */
  record Section(Span span, List<Member> members) implements Node {

    public Section {
      members = List.copyOf(members);
    }

    /** The first member of that name. */
    public Optional<Member> member(String name) {
      for (Member member : members) {
        if (member.name().equals(name)) {
          return Optional.of(member);
        }
      }
      return Optional.empty();
    }

    /** The value of the first member of that name. */
    public Optional<Node> get(String name) {
      return member(name).map(Member::value);
    }

    public boolean has(String name) {
      return member(name).isPresent();
    }

    @Override
    public String kind() {
      return "a section";
    }

    @Override
    public boolean same(Node other) {
      return other instanceof Section that && sameMembers(byName(), that.byName());
    }

    private static boolean sameMembers(Map<String, Node> ours, Map<String, Node> theirs) {
      if (!ours.keySet().equals(theirs.keySet())) {
        return false;
      }
      for (Map.Entry<String, Node> entry : ours.entrySet()) {
        Node their = theirs.get(entry.getKey());
        if (their == null || !entry.getValue().same(their)) {
          return false;
        }
      }
      return true;
    }

    private Map<String, Node> byName() {
      Map<String, Node> byName = new HashMap<>();
      for (Member member : members) {
        byName.putIfAbsent(member.name(), member.value());
      }
      return byName;
    }
  }

  /** A JSON array. */
  record Sequence(Span span, List<Node> items) implements Node {

    public Sequence {
      items = List.copyOf(items);
    }

    @Override
    public String kind() {
      return "a list";
    }

    @Override
    public boolean same(Node other) {
      if (!(other instanceof Sequence that) || that.items.size() != items.size()) {
        return false;
      }
      for (int i = 0; i < items.size(); i++) {
        if (!items.get(i).same(that.items.get(i))) {
          return false;
        }
      }
      return true;
    }
  }

  /**
   * A JSON string.
   *
   * @param value the text as meant, escapes undone
   */
  record Text(Span span, String value) implements Node {

    @Override
    public String kind() {
      return "a text";
    }

    @Override
    public boolean same(Node other) {
      return other instanceof Text that && that.value.equals(value);
    }
  }

  /**
   * A number.
   *
   * @param literal as it stands in the file, so that 3.0 stays 3.0 when it is shown
   * @param value the nearest double; infinite or not a number only where reading reported it
   */
  record Numeral(Span span, String literal, double value) implements Node {

    /**
     * The number exactly as written.
     *
     * @throws ArithmeticException where the value is not finite
     */
    public BigDecimal decimal() {
      if (!Double.isFinite(value)) {
        throw new ArithmeticException(literal + " is not a finite number");
      }
      // a value of zero may come from an exponent that no BigDecimal holds
      return value == 0 ? BigDecimal.ZERO : new BigDecimal(literal);
    }

    @Override
    public String kind() {
      return "a number";
    }

    @Override
    public boolean same(Node other) {
      return other instanceof Numeral that && sameNumber(that);
    }

    private boolean sameNumber(Numeral that) {
      if (!Double.isFinite(value) || !Double.isFinite(that.value)) {
        return Double.compare(value, that.value) == 0;
      }
      return decimal().compareTo(that.decimal()) == 0;
    }
  }

  /** {@code true} or {@code false}. */
  record Truth(Span span, boolean value) implements Node {

    @Override
    public String kind() {
      return "true or false";
    }

    @Override
    public boolean same(Node other) {
      return other instanceof Truth that && that.value == value;
    }
  }

  /** {@code null}: said to be not entered. */
  record Nothing(Span span) implements Node {

    @Override
    public String kind() {
      return "null";
    }

    @Override
    public boolean same(Node other) {
      return other instanceof Nothing;
    }
  }
}
