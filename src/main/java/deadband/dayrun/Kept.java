package deadband.dayrun;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * The things last asked for, by what they are made of. For any number of threads; a thing is made
 * outside the lock, so that threads with other keys go on, and two may make the same once.
 */
public final class Kept<K, V> {

  private final Map<K, V> last;

  /** Keeps so many and forgets the one not asked for longest. */
  public Kept(int most) {
    last =
        new LinkedHashMap<>(16, 0.75f, true) {
          private static final long serialVersionUID = 1;

          @Override
          protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > most;
          }
        };
  }

  /** The thing of a key, made where it is not kept. */
  public V of(K key, Function<? super K, ? extends V> make) {
    synchronized (last) {
      V known = last.get(key);
      if (known != null) {
        return known;
      }
    }
    V made = make.apply(key);
    synchronized (last) {
      last.put(key, made);
    }
    return made;
  }
}
