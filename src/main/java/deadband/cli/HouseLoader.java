package deadband.cli;

import deadband.judging.HouseRules;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.net.MalformedURLException;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Runs the program once more, in this process, with the rule compiler beside it.
 *
 * <p>House rules need a compiler that nothing else needs. Its jars stand in {@code lib/house}, off
 * the class path, and cost nothing until {@code --rules} asks for them. The engine finds its parts
 * by the loader it was loaded with, so that all of it is loaded anew, by one loader.
 */
final class HouseLoader {

  private static final String OPTION = "--rules";

  private HouseLoader() {}

  /** Whether house rules are asked for, the compiler is not there, and its jars are. */
  static boolean wanted(String... arguments) {
    boolean asked =
        Arrays.stream(arguments).anyMatch(a -> a.equals(OPTION) || a.startsWith(OPTION + "="));
    return asked && !HouseRules.canBeCompiled() && library().isPresent();
  }

  /** Runs one command line and gives the exit status. */
  static int run(String... arguments) {
    Path library = library().orElseThrow();
    List<URL> jars = new ArrayList<>(jars(library));
    jars.addAll(jars(library.resolve("house")));
    // never closed: a day may still run on its own thread, and the process ends after this
    URLClassLoader loader =
        new URLClassLoader(jars.toArray(URL[]::new), ClassLoader.getPlatformClassLoader());
    try {
      Thread.currentThread().setContextClassLoader(loader);
      return (int)
          loader
              .loadClass(Main.class.getName())
              .getMethod("run", String[].class)
              .invoke(null, (Object) arguments);
    } catch (InvocationTargetException e) {
      throw new IllegalStateException(e.getCause());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("lib holds another program", e);
    }
  }

  /** The folder of our jar, if the jars of the compiler stand in it. */
  private static Optional<Path> library() {
    CodeSource source = HouseLoader.class.getProtectionDomain().getCodeSource();
    if (source == null || !source.getLocation().getPath().endsWith(".jar")) {
      return Optional.empty();
    }
    try {
      Path library = Path.of(source.getLocation().toURI()).getParent();
      return Optional.ofNullable(library).filter(at -> Files.isDirectory(at.resolve("house")));
    } catch (URISyntaxException e) {
      return Optional.empty();
    }
  }

  private static List<URL> jars(Path folder) {
    List<URL> jars = new ArrayList<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.jar")) {
      for (Path file : files) {
        jars.add(url(file));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return jars;
  }

  private static URL url(Path file) throws MalformedURLException {
    return file.toUri().toURL();
  }
}
