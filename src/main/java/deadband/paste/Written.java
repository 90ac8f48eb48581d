package deadband.paste;

import deadband.document.Literal;
import deadband.document.Pointer;
import deadband.paste.Token.Amount;
import deadband.paste.Token.Kind;
import deadband.paste.Vocabulary.Entry;
import deadband.setup.Field;
import deadband.setup.FieldKind;
import deadband.setup.Setup;
import deadband.setup.Shape;
import deadband.setup.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What people write for one value: a number with its unit, yes or no, that it is not known. The one
 * grammar of such values, for a pasted text and for the corrections of a setup file.
 */
public final class Written {

  /** How far outside its usual range a number must be to be doubted in a setup file. */
  private static final double FAR = 10;

  private static final Set<Unit> SIZES =
      EnumSet.of(Unit.MILLIMETRE, Unit.METRE, Unit.SQUARE_METRE, Unit.LITRE);

  private static final Set<String> COUNTRIES =
      Locale.getISOCountries(Locale.IsoCountryCode.PART1_ALPHA2);

  private Written() {}

  /** A number as it is written. */
  public sealed interface Figure {

    /** One number, in the unit asked for. */
    record One(double value) implements Figure {}

    /** A comma that may stand before decimals or between thousands. */
    record Either(double decimal, double thousands) implements Figure {}

    /** From one number to another. */
    record Range(double from, double to) implements Figure {}
  }

  /** The number that a text is and nothing more, its unit converted; empty where it is none. */
  public static Optional<Figure> number(String text, Unit unit) {
    String clean = CleanText.of(text).text();
    List<Token> tokens = Scanner.of(clean, 0, clean.length());
    Amount amount =
        tokens.size() == 1 && tokens.get(0).is(Kind.AMOUNT) ? tokens.get(0).amount() : null;
    if (amount == null || amount.second() != null) {
      return Optional.empty();
    }
    List<Double> values = new ArrayList<>();
    for (BigDecimal reading : amount.readings()) {
      Optional<BigDecimal> value =
          amount.unit() == null
              ? Optional.of(reading)
              : amount.unit().to(unit).map(way -> way.of(reading));
      value
          .map(BigDecimal::doubleValue)
          .map(v -> unit == Unit.NONE ? v : unit.round(v))
          .ifPresent(values::add);
    }
    return values.size() < amount.readings().size()
        ? Optional.empty()
        : Optional.of(number(clean, amount, values));
  }

  private static Figure number(String text, Amount amount, List<Double> values) {
    if (amount.range()) {
      return new Figure.Range(values.get(0), values.get(1));
    }
    boolean comma = values.size() > 1 && text.indexOf(',') >= 0;
    return comma ? new Figure.Either(values.get(0), values.get(1)) : new Figure.One(values.get(0));
  }

  /** The yes or no that a text says. */
  public static Optional<Boolean> yesOrNo(String text) {
    String plain = Vocabulary.plain(text);
    if (Resolver.YES.contains(plain)) {
      return Optional.of(true);
    }
    return Resolver.NO.contains(plain) ? Optional.of(false) : Optional.empty();
  }

  /** Whether a text says that the value is not known. */
  public static boolean isUnknown(String text) {
    return Resolver.UNKNOWN.contains(Vocabulary.plain(text)) || text.strip().matches("[?-]+|n/?a");
  }

  /** The code of a country, also of one that is written otherwise: UK, Deutschland. */
  public static Optional<String> country(String text) {
    if (COUNTRIES.contains(text)) {
      return Optional.of(text);
    }
    return Vocabulary.all()
        .entry(Pointer.parse("/site/country"))
        .map(entry -> entry.words().get(Vocabulary.plain(text)))
        .map(Object::toString);
  }

  /**
   * The value, as JSON, that a word of the trade means at a place; empty for yes, no and others.
   */
  public static Optional<String> word(Pointer pointer, String text) {
    if (yesOrNo(text).isPresent()) {
      return Optional.empty();
    }
    return Vocabulary.all()
        .entry(pointer)
        .map(entry -> entry.words().get(Vocabulary.plain(text)))
        .map(
            value ->
                value instanceof Double number
                    ? Resolver.plain(number)
                    : Literal.of(Resolver.shown(value)).json());
  }

  /**
   * Whether a size is so far from what is usual that it is probably in another unit. Settings are
   * left to the checks.
   */
  public static boolean isFar(Pointer pointer, double value) {
    if (!SIZES.contains(Unit.of(pointer.last()))) {
      return false;
    }
    UsualRanges.Range usual = UsualRanges.of(pointer);
    boolean small = usual.least() > 0 && Math.abs(value) < usual.least() / FAR;
    return value != 0 && (small || Math.abs(value) > usual.most() * FAR);
  }

  /** The usual range of a value, in words. */
  public static String usual(Pointer pointer) {
    UsualRanges.Range usual = UsualRanges.of(pointer);
    return Resolver.plain(usual.least()) + " to " + Resolver.plain(usual.most());
  }

  /** The kind of value at a place of a setup file; empty where it has none. */
  public static Optional<FieldKind> kind(Pointer pointer) {
    return Places.at(pointer).map(Places.Found::kind);
  }

  /** The places of a setup file that have a name which stands under another section. */
  public static List<Pointer> places(String name, Pointer section) {
    List<Pointer> same = new ArrayList<>();
    named(name, Pointer.root(), Shape.of(Setup.class), same);
    return same.isEmpty() ? meant(name, section) : same;
  }

  private static void named(String name, Pointer at, Shape shape, List<Pointer> found) {
    for (Field field : shape.fields()) {
      boolean again = field.kind() instanceof FieldKind.Section kind && kind.type() == Setup.class;
      if (field.name().equals(name)) {
        found.add(at.child(name));
      } else if (field.kind() instanceof FieldKind.Section section && !again) {
        named(name, at.child(field.name()), section.shape(), found);
      }
    }
  }

  /** tankLimit_C is made of words that name a value: the limit of the diverter. */
  private static List<Pointer> meant(String name, Pointer section) {
    Unit unit = Unit.of(name);
    Set<String> terms = Vocabulary.all().terms(Vocabulary.ownName(name));
    List<Pointer> sections = section.isRoot() ? List.of() : List.of(section);
    return Vocabulary.all().meanings(terms, sections).stream()
        .map(Vocabulary.Meaning::entry)
        .filter(entry -> entry.unit() == unit)
        .map(Entry::pointer)
        .toList();
  }
}
