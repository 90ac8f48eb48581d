package deadband.dayrun;

import java.util.List;

/** Minutes of the day that lie inside any of some windows. */
final class Hours {
  private final boolean[] inside = new boolean[Window.MINUTES_PER_DAY];

  private Hours() {}

  /** The minutes inside these windows; none for no window. */
  static Hours within(List<Window> windows) {
    Hours hours = new Hours();
    for (Window window : windows) {
      for (int minute = 0; minute < hours.inside.length; minute++) {
        hours.inside[minute] |= window.holds(minute);
      }
    }
    return hours;
  }

  /** The minutes inside these windows; all where there is none. */
  static Hours anyOr(List<Window> windows) {
    return within(windows.isEmpty() ? List.of(Window.ALWAYS) : windows);
  }

  /** Those of these minutes that are not inside others. */
  Hours without(Hours others) {
    Hours left = new Hours();
    for (int minute = 0; minute < inside.length; minute++) {
      left.inside[minute] = inside[minute] && !others.inside[minute];
    }
    return left;
  }

  boolean hold(int secondOfDay) {
    return inside[secondOfDay / 60];
  }

  /** The longest stretch without a break, past midnight too; the earliest of several. */
  Window longest() {
    if (stretch(0) == inside.length) {
      return Window.ALWAYS;
    }
    int from = 0;
    int longest = 0;
    for (int minute = 0; minute < inside.length; minute++) {
      int length = begins(minute) ? stretch(minute) : 0;
      if (length > longest) {
        from = minute;
        longest = length;
      }
    }
    return new Window(from, longest == 0 ? from : (from + longest) % inside.length);
  }

  private boolean begins(int minute) {
    return inside[minute] && !inside[(minute + inside.length - 1) % inside.length];
  }

  /** Length of the stretch that begins with a minute [min]; 0 where none does. */
  private int stretch(int minute) {
    int length = 0;
    while (length < inside.length && inside[(minute + length) % inside.length]) {
      length++;
    }
    return length;
  }
}
