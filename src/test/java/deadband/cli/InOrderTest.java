package deadband.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Many things worked on side by side come out one by one, in the order in which they came in. */
class InOrderTest {

  /** A sixteenth of the bytes that are held at most. */
  private static final int LARGE = 1024 * 1024;

  private static final int CORES = Runtime.getRuntime().availableProcessors();

  private final List<Integer> taken = new ArrayList<>();
  private final List<Integer> sideBySide = Collections.synchronizedList(new ArrayList<>());

  private List<Integer> doubled(List<Integer> things) {
    sideBySide.add(things.size());
    return things.stream().map(thing -> 2 * thing).toList();
  }

  private void work(int things, int size) {
    try (InOrder<Integer, Integer> inOrder = new InOrder<>(this::doubled, taken::add)) {
      for (int thing = 0; thing < things; thing++) {
        assertThat(inOrder.add(thing, size)).isTrue();
      }
      assertThat(inOrder.finish()).isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 7, 1000})
  void eachComesOutOnceInItsOrder(int things) {
    work(things, 1);

    assertThat(taken).isEqualTo(IntStream.range(0, things).mapToObj(i -> 2 * i).toList());
  }

  @Test
  void fewAreWorkedOnTogetherAtFirstAndEightLater() {
    work(8 * CORES, 1);
    assertThat(sideBySide).containsOnly(1);

    work(80 * CORES, 1);
    assertThat(sideBySide).contains(8).allMatch(together -> together <= 8);
  }

  @Test
  void largeOnesGoByThemselves() {
    work(20 * CORES, LARGE);
    assertThat(sideBySide).containsOnly(1);

    work(20 * CORES, LARGE - 1);
    assertThat(sideBySide).contains(2);
  }

  @Test
  void noMoreIsHandedOnThanIsTaken() {
    try (InOrder<Integer, Integer> inOrder =
        new InOrder<>(this::doubled, each -> taken.add(each) && each < 20)) {
      int thing = 0;
      while (inOrder.add(thing, 1)) {
        thing++;
      }
    }

    assertThat(taken).last().isEqualTo(20);
  }
}
