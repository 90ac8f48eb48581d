package deadband.setup;

import deadband.document.Pointer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Who read which value of a setup: what was derived from it is the same for another setup in which
 * nothing that was read has changed. Readers are numbered from 0 to 63; a set of them is a mask of
 * bits. Values are noted where they are read through {@link Entered} and {@link Part}, on the
 * thread that derives. Two values may share a slot: who read either is then taken to have read
 * both, which costs a derivation and changes nothing of what it comes to.
 */
public final class Reads {

  private static final ThreadLocal<@Nullable Reader> HERE = new ThreadLocal<>();

  /** Some times as many as a setup has values; a power of two. */
  private static final int SLOTS = 2048;

  private final long[] readers = new long[SLOTS];

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

    private void note(Pointer pointer) {
      reads.readers[slot(pointer)] |= bit;
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

  static void note(Pointer pointer) {
    Reader reader = HERE.get();
    if (reader != null) {
      reader.note(pointer);
    }
  }

  private static int slot(Pointer pointer) {
    int hash = pointer.hashCode();
    return (hash ^ hash >>> 12 ^ hash >>> 24) & SLOTS - 1;
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
    Part part = shape.part(read);
    long touched = part.isLike(shape.part(other)) ? 0 : of(part.pointer());
    for (Field field : shape.fields()) {
      Object was = shape.get(read, field);
      Object is = shape.get(other, field);
      if (!(was instanceof Entered<?> entered)) {
        touched |= touched((Record) was, (Record) is);
      } else if (was != is && !entered.isLike((Entered<?>) is)) {
        touched |= of(entered.pointer());
      }
    }
    return touched;
  }

  private long of(Pointer pointer) {
    return readers[slot(pointer)];
  }
}
