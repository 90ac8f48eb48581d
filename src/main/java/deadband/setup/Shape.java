package deadband.setup;

import deadband.document.Pointer;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The described shape of one section of the setup file, taken from its record.
 *
 * <p>The records are the truth: a component's name is the name in the file, the end of the name is
 * its unit, {@link Described} says what it means. Whatever reads, checks, publishes or edits a
 * setup walks {@code Shape.of(Setup.class)}, so that no field is named twice.
 */
public final class Shape {

  /** The field by which a section about equipment says that the thing is not there. */
  public static final String FITTED = "fitted";

  private static final ClassValue<Shape> SHAPES =
      new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> type) {
          return new Shape(type.asSubclass(Record.class));
        }
      };

  private final Class<? extends Record> type;
  private final Constructor<? extends Record> constructor;
  private final RecordComponent[] components;
  private final Method[] accessors;
  private final Map<String, Field> fields = new LinkedHashMap<>();
  private final List<Field> inOrder;

  /** Of those, the ones that hold a plain section. */
  private final List<Field> sections;

  private Shape(Class<? extends Record> type) {
    this.type = type;
    this.components = type.getRecordComponents();
    this.accessors = accessors(components);
    this.constructor = canonical(type, components);
    for (int i = 1; i < components.length; i++) {
      Field field = describe(components[i], i);
      fields.put(field.name(), field);
    }
    this.inOrder = List.copyOf(fields.values());
    this.sections = inOrder.stream().filter(field -> !field.optional()).toList();
  }

  /** The shape of a section's record. */
  public static Shape of(Class<? extends Record> type) {
    return SHAPES.get(type);
  }

  public Class<? extends Record> type() {
    return type;
  }

  /** Whether the section may say {@code "fitted": false}. */
  public boolean isEquipment() {
    return type.isAnnotationPresent(Equipment.class);
  }

  /** The fields in the order of the record. */
  public List<Field> fields() {
    return inOrder;
  }

  public Optional<Field> field(String name) {
    return Optional.ofNullable(fields.get(name));
  }

  /**
   * What the value at a place means, in the words of the trade; empty where no field stands there.
   */
  public static String means(Class<? extends Record> root, Pointer pointer) {
    FieldKind kind = new FieldKind.Section(root);
    String means = "";
    for (String token : pointer.tokens()) {
      if (kind instanceof FieldKind.Many many) {
        kind = many.of();
      } else if (kind instanceof FieldKind.Section section
          && section.shape().field(token).isPresent()) {
        Field field = section.shape().field(token).get();
        means = field.means();
        kind = field.kind();
      } else {
        return "";
      }
    }
    return means;
  }

  /** Every value entered in a section and all within it, by where it belongs in the section. */
  public static Map<Pointer, Object> entered(Record section) {
    return new TreeMap<>(enteredInOrder(section));
  }

  /** The same in the order of the records. */
  public static Map<Pointer, Object> enteredInOrder(Record section) {
    Map<Pointer, Object> all = new LinkedHashMap<>();
    collect(section, Pointer.root(), all);
    return all;
  }

  /** Every value entered in a section, but in those within it that another has as they are. */
  public static Map<Pointer, Object> enteredBeside(Record section, Record other) {
    Map<Pointer, Object> all = new LinkedHashMap<>();
    collectBeside(section, other, Pointer.root(), all);
    return all;
  }

  @SuppressWarnings("ReferenceEquality") // what was laid over nothing is the same object
  private static void collectBeside(
      Record section, Record other, Pointer at, Map<Pointer, Object> all) {
    if (section == other) {
      return;
    }
    Shape shape = of(section.getClass());
    collectFitted(shape.part(section), at, all);
    for (Field field : shape.fields()) {
      Object held = shape.get(section, field);
      Object beside = shape.get(other, field);
      if (!(held instanceof Entered<?> entered)) {
        collectBeside((Record) held, (Record) beside, at.child(field.name()), all);
      } else if (held != beside) {
        collect(entered.value(), at.child(field.name()), all);
      }
    }
  }

  private static void collectFitted(Part part, Pointer at, Map<Pointer, Object> all) {
    Boolean fitted = part.fitted();
    if (fitted != null) {
      all.put(at.child(FITTED), fitted);
    }
  }

  private static void collect(Record section, Pointer at, Map<Pointer, Object> all) {
    Shape shape = of(section.getClass());
    collectFitted(shape.part(section), at, all);
    for (Field field : shape.fields()) {
      Object held = shape.get(section, field);
      Object value = held instanceof Entered<?> entered ? entered.value() : held;
      collect(value, at.child(field.name()), all);
    }
  }

  private static void collect(@Nullable Object value, Pointer at, Map<Pointer, Object> all) {
    if (value instanceof Record section && !isValue(section)) {
      collect(section, at, all);
    } else if (value instanceof List<?> items
        && !items.isEmpty()
        && items.get(0) instanceof Record first
        && !isValue(first)) {
      for (int index = 0; index < items.size(); index++) {
        collect(items.get(index), at.child(index), all);
      }
    } else if (value != null) {
      all.put(at, value);
    }
  }

  /** Whether a record is one value and no section. */
  private static boolean isValue(Record value) {
    return value instanceof ClockWindow
        || value instanceof CountryCode
        || value instanceof DataSheet;
  }

  /** Every name the section knows, {@code fitted} included where it may stand. */
  public List<String> names() {
    List<String> names = new ArrayList<>(fields.keySet());
    if (isEquipment()) {
      names.add(0, FITTED);
    }
    return names;
  }

  /** The section of which nothing is entered. */
  public Record allOpen(Pointer pointer) {
    return with(new Part(pointer, false, null), Map.of());
  }

  /**
   * A section with these values.
   *
   * @param values by name: what each field holds; a plain section as its record
   */
  public Record with(Part part, Map<String, Object> values) {
    Object[] arguments = new Object[components.length];
    arguments[0] = part;
    for (Field field : fields.values()) {
      arguments[field.position()] =
          held(field, part.pointer().child(field.name()), values.get(field.name()));
    }
    return make(arguments);
  }

  private static Object held(Field field, Pointer at, @Nullable Object value) {
    if (field.optional()) {
      return Entered.of(at, value, field.assumed());
    }
    return value != null ? value : ((FieldKind.Section) field.kind()).shape().allOpen(at);
  }

  /** A section and every plain section within it, lists and what they hold left out. */
  public static List<Part> partsOf(Record section) {
    List<Part> parts = new ArrayList<>();
    addParts(section, parts);
    return parts;
  }

  private static void addParts(Record section, List<Part> parts) {
    Shape shape = of(section.getClass());
    parts.add(shape.part(section));
    for (Field field : shape.sections) {
      addParts((Record) shape.get(section, field), parts);
    }
  }

  /** The part of a section. */
  public static Part partOf(Record section) {
    return of(section.getClass()).part(section);
  }

  /** The part of a section of this shape. */
  Part part(Record section) {
    return (Part) component(section, 0);
  }

  /** What a section of this shape holds in one of its fields, as its component has it. */
  public Object get(Record section, Field field) {
    return component(section, field.position());
  }

  private Object component(Record section, int position) {
    try {
      return accessors[position].invoke(section);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("cannot read " + type.getSimpleName(), e);
    }
  }

  /** The same section with one component and its part replaced. */
  Record replacing(Record section, Part part, Field field, Object component) {
    Object[] arguments = new Object[components.length];
    arguments[0] = part;
    for (Field other : fields.values()) {
      arguments[other.position()] = get(section, other);
    }
    arguments[field.position()] = component;
    return make(arguments);
  }

  /**
   * One section laid over another of this shape: each value it tells, in place of the other's.
   * Values keep the place they stand at; a list is taken whole. A thing that only one of them has
   * is taken from that one.
   */
  Record over(Record upper, Record lower) {
    Part says = part(upper);
    if (!says.entered() && says.fitted() == null) {
      return lower;
    }
    if (says.entered() && Boolean.FALSE.equals(part(lower).fitted())) {
      return upper;
    }
    Object[] arguments = new Object[components.length];
    arguments[0] = says.over(part(lower));
    for (Field field : fields.values()) {
      arguments[field.position()] = over(get(upper, field), get(lower, field));
    }
    return make(arguments);
  }

  private static Object over(Object upper, Object lower) {
    if (upper instanceof Entered<?> entered) {
      return entered.isEntered() ? entered : lower;
    }
    Record section = (Record) upper;
    return of(section.getClass()).over(section, (Record) lower);
  }

  /** The ways to read the components; accessible, so that it is not checked at each reading. */
  private static Method[] accessors(RecordComponent[] components) {
    Method[] accessors = new Method[components.length];
    for (int i = 0; i < accessors.length; i++) {
      accessors[i] = components[i].getAccessor();
      accessors[i].setAccessible(true);
    }
    return accessors;
  }

  private Record make(Object[] arguments) {
    try {
      return constructor.newInstance(arguments);
    } catch (InvocationTargetException | InstantiationException | IllegalAccessException e) {
      throw new IllegalStateException("cannot make " + type.getSimpleName(), e);
    }
  }

  private static Constructor<? extends Record> canonical(
      Class<? extends Record> type, RecordComponent[] components) {
    Class<?>[] types = new Class<?>[components.length];
    for (int i = 0; i < types.length; i++) {
      types[i] = components[i].getType();
    }
    try {
      return type.getDeclaredConstructor(types);
    } catch (NoSuchMethodException e) {
      throw new IllegalStateException("not a section: " + type, e);
    }
  }

  private static Field describe(RecordComponent component, int position) {
    Described described = component.getAnnotation(Described.class);
    if (described == null) {
      throw new IllegalStateException("not described: " + component);
    }
    Asked asked = component.getAnnotation(Asked.class);
    if (asked == null) {
      throw new IllegalStateException("no question: " + component);
    }
    boolean optional = component.getType() == Entered.class;
    Type held = optional ? argument(component.getGenericType()) : component.getType();
    FieldKind kind = kind(held, component.getName(), described);
    return new Field(
        component.getName(),
        described.value(),
        kind,
        position,
        optional,
        assumed(kind, described),
        asked,
        asked.where() == Asked.Where.DATA_PLATE || component.isAnnotationPresent(OfType.class));
  }

  private static Type argument(Type type) {
    return ((ParameterizedType) type).getActualTypeArguments()[0];
  }

  private static FieldKind kind(Type held, String name, Described described) {
    if (held instanceof ParameterizedType) {
      return new FieldKind.Many(kind(argument(held), name, described));
    }
    Class<?> type = (Class<?>) held;
    if (type == Double.class) {
      return number(name, described);
    }
    if (type == Boolean.class) {
      return new FieldKind.Flag();
    }
    if (type.isEnum()) {
      return new FieldKind.Word(List.of((Choice[]) type.getEnumConstants()));
    }
    return text(type).orElseGet(() -> new FieldKind.Section(type.asSubclass(Record.class)));
  }

  private static FieldKind number(String name, Described described) {
    Unit unit = Unit.of(name);
    return new FieldKind.Num(
        unit,
        Double.isNaN(described.least()) ? unit.least() : described.least(),
        Double.isNaN(described.most()) ? unit.most() : described.most(),
        described.whole());
  }

  private static Optional<FieldKind> text(Class<?> type) {
    if (type == String.class) {
      return Optional.of(new FieldKind.Text("a text", "", "Mill Cottage", Optional::of));
    }
    if (type == LocalDate.class) {
      return Optional.of(
          new FieldKind.Text(
              "a date from 2000 to 2100",
              "(20\\d{2}|2100)-\\d{2}-\\d{2}",
              "2026-05-31",
              Shape::date));
    }
    if (type == ClockWindow.class) {
      return Optional.of(
          new FieldKind.Text(
              "a daily window", ClockWindow.PATTERN, "22:00-06:00", ClockWindow::parse));
    }
    if (type == CountryCode.class) {
      return Optional.of(
          new FieldKind.Text(
              "a country by ISO 3166-1 alpha-2", CountryCode.PATTERN, "GB", CountryCode::parse));
    }
    if (type == Pointer.class) {
      return Optional.of(
          new FieldKind.Text(
              "a JSON Pointer", "(/.*)?", "/immersion/thermostat_C", Shape::pointer));
    }
    if (type == DataSheet.class) {
      return Optional.of(
          new FieldKind.Text(
              "the path of a .json file inside the equipment folder",
              DataSheet.PATTERN,
              "heat-pumps/ground-12kW.json",
              DataSheet::named));
    }
    return Optional.empty();
  }

  /** A date on which an installation of this kind can be looked at; empty for any other text. */
  public static Optional<LocalDate> date(String text) {
    try {
      return Optional.of(LocalDate.parse(text))
          .filter(date -> date.getYear() >= 2000 && date.getYear() <= 2100);
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private static Optional<Pointer> pointer(String text) {
    try {
      return Optional.of(Pointer.parse(text));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static @Nullable Default<?> assumed(FieldKind kind, Described described) {
    String written = described.assumed();
    if (written.isEmpty()) {
      return null;
    }
    if (kind instanceof FieldKind.Word word) {
      return new Default<>(word.of(written).orElseThrow(), described.because());
    }
    return new Default<>(Double.valueOf(written), described.because());
  }
}
