package deadband.cli;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A headless Chromium, driven by the W3C WebDriver protocol; closed with all it started. */
final class Browser implements AutoCloseable {

  private static final List<String> DRIVERS =
      List.of("/usr/bin/chromedriver", "/usr/local/bin/chromedriver");
  private static final List<String> BROWSERS =
      List.of("/usr/bin/chromium", "/usr/local/bin/chromium");
  private static final Pattern SESSION = Pattern.compile("\"sessionId\":\"([^\"]+)\"");

  private final HttpClient http = HttpClient.newHttpClient();
  private final Process driver;
  private final String address;
  private String session = "";

  private Browser(Process driver, int port) {
    this.driver = driver;
    this.address = "http://127.0.0.1:" + port + "/session";
  }

  private static Optional<String> installed(List<String> places) {
    return places.stream().filter(place -> Files.isExecutable(Path.of(place))).findFirst();
  }

  /** {@code -Ddeadband.browser=none} has the tests run as where there is none. */
  static boolean isInstalled() {
    return !System.getProperty("deadband.browser", "").equals("none")
        && installed(DRIVERS).isPresent()
        && installed(BROWSERS).isPresent();
  }

  /** Opens a browser with a profile of its own. */
  static Browser open(Path profile) throws Exception {
    int port;
    try (ServerSocket free = new ServerSocket(0)) {
      port = free.getLocalPort();
    }
    Process driver =
        new ProcessBuilder(installed(DRIVERS).orElseThrow(), "--port=" + port)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    Browser browser = new Browser(driver, port);
    try {
      browser.begin(profile);
      return browser;
    } catch (Exception | Error e) {
      browser.close();
      throw e;
    }
  }

  private void begin(Path profile) throws Exception {
    String begin =
        """
        {"capabilities":{"alwaysMatch":{"browserName":"chrome","goog:loggingPrefs":{"browser":"ALL"},
        "goog:chromeOptions":{"binary":"%s","args":["--headless","--no-sandbox","--disable-gpu",
        "--disable-quic","--no-first-run","--disable-background-networking",
        "--disable-component-update","--disable-sync","--user-data-dir=%s"]}}}}
        """
            .formatted(installed(BROWSERS).orElseThrow(), profile);
    for (int tries = 0; ; tries++) {
      try {
        Matcher id = SESSION.matcher(post("", begin));
        if (!id.find()) {
          throw new IllegalStateException("the browser did not start");
        }
        session = "/" + id.group(1);
        return;
      } catch (IOException notYet) {
        if (tries > 50) {
          throw notYet;
        }
        Thread.sleep(200);
      }
    }
  }

  private String post(String path, String body) throws IOException, InterruptedException {
    return send(
        HttpRequest.newBuilder(URI.create(address + path)).POST(BodyPublishers.ofString(body)));
  }

  private String send(HttpRequest.Builder request) throws IOException, InterruptedException {
    return http.send(request.timeout(Duration.ofMinutes(2)).build(), BodyHandlers.ofString())
        .body();
  }

  /** The size of the page's window, as small as a telephone's. */
  void size(int width, int height) throws Exception {
    command(
        "Emulation.setDeviceMetricsOverride",
        "{\"width\":%d,\"height\":%d,\"deviceScaleFactor\":1,\"mobile\":false}"
            .formatted(width, height));
  }

  /** Whether pages are shown to somebody who prefers them dark. */
  void dark(boolean dark) throws Exception {
    command(
        "Emulation.setEmulatedMedia",
        "{\"features\":[{\"name\":\"prefers-color-scheme\",\"value\":\"%s\"}]}"
            .formatted(dark ? "dark" : "light"));
  }

  private void command(String name, String parameters) throws Exception {
    post(
        session + "/goog/cdp/execute",
        "{\"cmd\":\"%s\",\"params\":%s}".formatted(name, parameters));
  }

  /** The page printed to PDF on A4. */
  byte[] print() throws Exception {
    String answer =
        post(
            session + "/print",
            "{\"page\":{\"width\":21.0,\"height\":29.7},\"margin\":{\"top\":1.4,\"bottom\":1.6,"
                + "\"left\":1.4,\"right\":1.4}}");
    return Base64.getDecoder()
        .decode(answer.replaceFirst("^.*\"value\":\"", "").replaceFirst("\".*$", ""));
  }

  void show(Path page) throws Exception {
    post(session + "/url", "{\"url\":\"" + page.toUri() + "\"}");
  }

  /** What a script gives, as the JSON of the answer. */
  String run(String script) throws Exception {
    return answer("/execute/sync", script);
  }

  /** The same of a script that calls its last argument when done. */
  String await(String script) throws Exception {
    return answer("/execute/async", script);
  }

  private String answer(String path, String script) throws Exception {
    return post(session + path, "{\"args\":[],\"script\":\"" + escaped(script) + "\"}");
  }

  private static String escaped(String script) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < script.length(); i++) {
      char each = script.charAt(i);
      if (each == '"' || each == '\\') {
        text.append('\\').append(each);
      } else if (each < ' ' || each > '~') {
        text.append("\\u%04x".formatted((int) each));
      } else {
        text.append(each);
      }
    }
    return text.toString();
  }

  /** What the console said since it was last asked, as JSON. */
  String console() throws Exception {
    return post(session + "/se/log", "{\"type\":\"browser\"}");
  }

  @Override
  public void close() {
    try {
      if (!session.isEmpty()) {
        send(HttpRequest.newBuilder(URI.create(address + session)).DELETE());
      }
    } catch (IOException e) {
      // gone already
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      driver.destroy();
    }
  }
}
