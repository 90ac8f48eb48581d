package deadband.setup;

import java.util.IdentityHashMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Who read which value of a setup: what was derived from it is the same for another setup in which
 * nothing that was read has changed. Readers are numbered from 0 to 63; a set of them is a mask of
 * bits. Values are noted where they are read through {@link Entered} and {@link Part}, on the
 * thread that derives.
 */
public final class Reads {

  private static final ThreadLocal<@Nullable Reader> HERE = new ThreadLocal<>();

  private final IdentityHashMap<Object, long[]> readers = new IdentityHashMap<>(1024);

  public Reads() {}

  /** One reader at work; goes on where it left off when it is asked for more. */
  public static final class Reader {

    private final Reads reads;
    private final long bit;

    private Reader(Reads reads, int number) {
      this.reads = reads;
      this.bit = 1L << number;
    }

    /** Makes something of what it reads. */
    public <T> T reading(Supplier<T> making) {
      Reader outer = HERE.get();
      HERE.set(this);
      try {
        return making.get();
      } finally {
        HERE.set(outer);
      }
    }

    private void note(Object value) {
      reads.readers.computeIfAbsent(value, key -> new long[1])[0] |= bit;
    }
  }

  /** The reader of a number. */
  public Reader by(int number) {
    return new Reader(this, number);
  }

  /** The reader at work on this thread; null where nothing is noted. */
  public static @Nullable Reader here() {
    return HERE.get();
  }

  static void note(Object value) {
    Reader reader = HERE.get();
    if (reader != null) {
      reader.note(value);
    }
  }

  /** The readers that may derive something else from another setup than from the one they read. */
  public long touched(Setup read, Setup other) {
    return touched((Record) read, other);
  }

  @SuppressWarnings("ReferenceEquality") // a change leaves the sections beside it as they are
  private long touched(Record read, Record other) {
    if (read == other) {
      return 0;
    }
    Shape shape = Shape.of(read.getClass());
    long touched = shape.part(read).isLike(shape.part(other)) ? 0 : of(shape.part(read));
    for (Field field : shape.fields()) {
      Object was = shape.get(read, field);
      Object is = shape.get(other, field);
      if (!(was instanceof Entered<?> entered)) {
        touched |= touched((Record) was, (Record) is);
      } else if (was != is && !entered.isLike((Entered<?>) is)) {
        touched |= of(was);
      }
    }
    return touched;
  }

  private long of(Object value) {
    long[] mask = readers.get(value);
    return mask == null ? 0 : mask[0];
  }
}
