package deadband.report;

import deadband.limits.Limits;
import deadband.remedy.Proposal;
import deadband.setup.Change;
import deadband.setup.Setup;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;

/**
 * All that the record of one job holds: what was judged, the settings proposed for it, and by what
 * it was judged.
 *
 * @param proposal what brings it nearest to sign-off; its judgement is that of the report
 * @param limits those in force
 * @param tool version of this program
 */
public record JobRecord(Report report, Proposal proposal, Limits limits, String tool) {

  Setup setup() {
    return report.setup();
  }

  /** The setup with the settings proposed. */
  Setup proposed() {
    return Change.all(proposal.changes(), setup());
  }

  /** The name of the job, else of the file. */
  String title() {
    return report.reference().orElse(fileName());
  }

  /** The file's name without its folders. */
  public String fileName() {
    return fileName(report.file());
  }

  /** The name of a file without its folders. */
  public static String fileName(String path) {
    return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
  }

  /** SHA-256 of the file as it was read: it is UTF-8, byte for byte. */
  String sha256() {
    return HexFormat.of().formatHex(digest(report.document().text()));
  }

  /** SHA-256 as a Content-Security-Policy names it. */
  static String policyHash(String text) {
    return "sha256-" + Base64.getEncoder().encodeToString(digest(text));
  }

  private static byte[] digest(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
