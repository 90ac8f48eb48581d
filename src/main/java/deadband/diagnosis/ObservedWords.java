package deadband.diagnosis;

import deadband.setup.Observed;
import deadband.setup.Observed.Weather;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What was observed, as a person says it: {@code 8 starts an hour, runs 4 min, off 6 min, sunny,
 * since Tuesday}.
 *
 * @param observation what it says of the running
 * @param weather in which it was seen
 * @param since when, as written; empty where nothing is said
 * @param notUnderstood parts that say nothing that is known here
 */
public record ObservedWords(
    Observation observation, Optional<Weather> weather, String since, List<String> notUnderstood) {

  /** Error of a number that a person has counted or timed, as a share. */
  private static final double SAID = 0.2;

  private static final String NUMBER = "(\\d+(?:[.,]\\d+)?)";

  private static final Pattern STARTS =
      Pattern.compile(
          NUMBER + "\\s*(?:times|starts|cycles|x)?\\s*(?:an|per|/|every|in an)\\s*(?:hour|h)\\b");

  private static final Pattern RUN =
      Pattern.compile(
          "(?:runs?|on|running)(?: for)?(?: about)?\\s*"
              + NUMBER
              + "\\s*(s|sec|min|minutes?|h)\\b");

  private static final Pattern PAUSE =
      Pattern.compile(
          "(?:pauses?|off|rests?|waits)(?: for)?(?: about)?\\s*"
              + NUMBER
              + "\\s*(s|sec|min|minutes?|h)\\b");

  private static final Pattern SINCE = Pattern.compile("\\bsince\\s+(.+)");

  /** What a phrase says, put into an observation. */
  private record Phrase(Pattern words, Consumer<Observation> says) {}

  /** The part of a day between 8 and 18 h. */
  private static final double DAY_SHARE = 10 / 24.0;

  /** Error of a share that a person puts into words. */
  private static final double ROUGHLY = 0.25;

  private static final List<Phrase> PHRASES =
      List.of(
          share("(no|without|hardly any) import", Feature.DEFICIT, 0),
          share("import|bought|buys|(drawing )?from the grid", Feature.DEFICIT, 0.6),
          phrase(
              "(tank|probe|sensor|cylinder) .*(stays|does not|doesn't|never|no)|no (tank )?rise"
                  + "|not (warm|rise|heat)|goes to the floor|floor gets (hot|warm)",
              seen -> seen.with(Feature.RISE, 0, ROUGHLY)),
          share("battery .*(empt|discharg|feeds|suppl)|from the battery", Feature.BATTERY, 0.9),
          share(
              "reset|restart(s|ed)|display (goes |is )?(off|dark)|loses (its )?(clock|time|power)"
                  + "|counter (is )?lost|supply (is )?cut|no standby",
              Feature.STANDBY_LOST,
              1),
          phrase(
              "(when|as) (a )?clouds? (pass|come)|stops (at|with) (each|every) cloud",
              seen -> seen.with(Feature.BRIEF_CLOUD, 0.9, ROUGHLY)),
          share("(car|vehicle|charger) (starts|begins|charges)", Feature.VEHICLE, 0.8),
          phrase(
              "(goes|runs|keeps) on (after|when|though|while).*(cloud|surplus)"
                  + "|does not stop (when|after|at)|reading does not (fall|change|drop)",
              seen -> seen.with(Feature.HELD, 0.9, ROUGHLY)));

  private static final Map<Weather, Pattern> WEATHER =
      Map.of(
          Weather.SUNNY, Pattern.compile("\\b(sunny|clear|clear sky)\\b"),
          Weather.BROKEN_CLOUD, Pattern.compile("\\b(broken cloud|cloudy|clouds)\\b"),
          Weather.DULL, Pattern.compile("\\b(dull|overcast|rain)\\b"),
          Weather.NIGHT, Pattern.compile("\\b(night|at night|after dark|before dawn)\\b"),
          Weather.ALWAYS, Pattern.compile("\\b(always|day and night|all the time|any weather)\\b"));

  private static Phrase phrase(String words, Consumer<Observation> says) {
    return new Phrase(Pattern.compile(words), says);
  }

  private static Phrase share(String words, Feature feature, double value) {
    return phrase(words, seen -> seen.with(feature, value, ROUGHLY));
  }

  /** What a text says. */
  public static ObservedWords of(String text) {
    Observation seen = new Observation();
    Optional<Weather> weather = Optional.empty();
    String since = "";
    List<String> rest = new ArrayList<>();
    for (String part : text.split("[,;]|\\. |\\.$|\n|\\band\\b", 0)) {
      String plain = part.strip().toLowerCase(Locale.ROOT);
      if (plain.isEmpty()) {
        continue;
      }
      Matcher from = SINCE.matcher(part);
      since = from.find() ? from.group(1).strip() : since;
      boolean timed = numbers(plain, seen);
      Optional<Phrase> phrase =
          PHRASES.stream().filter(p -> p.words.matcher(plain).find()).findFirst();
      phrase.ifPresent(p -> p.says.accept(seen));
      Optional<Weather> said = weather(plain);
      weather = said.or(orElse(weather));
      if (!timed && phrase.isEmpty() && said.isEmpty() && !plain.contains("since")) {
        rest.add(part.strip());
      }
    }
    return new ObservedWords(byWeather(seen, weather), weather, since, List.copyOf(rest));
  }

  private static Supplier<Optional<Weather>> orElse(Optional<Weather> before) {
    return () -> before;
  }

  private static boolean numbers(String plain, Observation seen) {
    Matcher starts = STARTS.matcher(plain);
    Matcher run = RUN.matcher(plain);
    Matcher pause = PAUSE.matcher(plain);
    boolean any = false;
    if (starts.find()) {
      seen.with(Feature.STARTS, number(starts.group(1)), SAID);
      any = true;
    }
    if (run.find()) {
      seen.with(Feature.RUN, minutes(run), SAID);
      any = true;
    }
    if (pause.find()) {
      seen.with(Feature.PAUSE, minutes(pause), SAID);
      any = true;
    }
    return any;
  }

  private static double number(String text) {
    return Double.parseDouble(text.replace(',', '.'));
  }

  private static double minutes(Matcher time) {
    double factor = time.group(2).startsWith("s") ? 1 / 60.0 : time.group(2).equals("h") ? 60 : 1;
    return number(time.group(1)) * factor;
  }

  private static Optional<Weather> weather(String plain) {
    for (Weather weather : Weather.values()) {
      Pattern words = WEATHER.get(weather);
      if (words != null && words.matcher(plain).find()) {
        return Optional.of(weather);
      }
    }
    return Optional.empty();
  }

  /** What the file says under {@code observed}. */
  public static ObservedWords of(Observed observed) {
    Observation seen = new Observation();
    observed
        .startsPerHour()
        .optional()
        .ifPresent(starts -> seen.with(Feature.STARTS, starts, SAID));
    observed.typicalRun_min().optional().ifPresent(run -> seen.with(Feature.RUN, run, SAID));
    observed
        .typicalPause_min()
        .optional()
        .ifPresent(pause -> seen.with(Feature.PAUSE, pause, SAID));
    Optional<Weather> weather = observed.weather().optional();
    return new ObservedWords(
        seen.isEmpty() ? seen : byWeather(seen, weather), weather, "", List.of());
  }

  private static Observation byWeather(Observation seen, Optional<Weather> weather) {
    weather.ifPresent(
        seenIn -> {
          switch (seenIn) {
            case SUNNY -> seen.with(Feature.BY_DAY, 1, 0.1).with(Feature.BRIEF_CLOUD, 0, 0.1);
            case BROKEN_CLOUD -> seen.with(Feature.BY_DAY, 1, 0.1);
            case NIGHT -> seen.with(Feature.BY_DAY, 0, 0.1);
            case ALWAYS -> seen.with(Feature.BY_DAY, DAY_SHARE, 0.1);
            case DULL -> {}
          }
        });
    return seen;
  }

  /** This, and what another says where this says nothing. */
  public ObservedWords completedBy(ObservedWords other) {
    List<String> rest = new ArrayList<>(notUnderstood);
    rest.addAll(other.notUnderstood);
    return new ObservedWords(
        observation.completedBy(other.observation),
        weather.or(() -> other.weather),
        since.isEmpty() ? other.since : since,
        List.copyOf(rest));
  }
}
