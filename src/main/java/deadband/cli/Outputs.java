package deadband.cli;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The files that a command was asked to write, and the one way in which any command writes them.
 *
 * <ul>
 *   <li>A file that is there is replaced only with {@code --overwrite}, and keeps its owner, group
 *       and mode; a file that is also read is never replaced.
 *   <li>A link is refused, whatever it points to, and so are folders, devices and pipes.
 *   <li>The text is written beside the place and moved there, so that no half-written file is ever
 *       seen, and a failure leaves what was there.
 * </ul>
 *
 * @param overwrite whether a file that is there may be replaced
 * @param inputs the files that the command reads
 */
record Outputs(Console console, boolean overwrite, List<Path> inputs) {

  /** Writes the text of one file. */
  @FunctionalInterface
  interface Writing {
    void to(Appendable out) throws IOException;
  }

  /** Why one of these may not be written, in a sentence; empty where all of them may. */
  Optional<String> refusal(List<Path> paths) {
    List<Path> taken = new ArrayList<>();
    for (Path path : paths) {
      if (taken.stream().anyMatch(other -> isSame(path, other))) {
        return Optional.of(path + " is named for two outputs");
      }
      Optional<String> refusal = refusal(path);
      if (refusal.isPresent()) {
        return refusal;
      }
      taken.add(path);
    }
    return Optional.empty();
  }

  private Optional<String> refusal(Path path) {
    if (inputs.stream().anyMatch(input -> isSame(path, input))) {
      return Optional.of(path + " is an input and is never replaced; name another file");
    }
    return Optional.ofNullable(attributes(path)).map(there -> refusal(path, there));
  }

  private @Nullable String refusal(Path path, BasicFileAttributes there) {
    if (there.isSymbolicLink()) {
      return path + " is a link; name the file itself";
    }
    if (there.isDirectory()) {
      return path + " is a folder; name a file in it";
    }
    if (!there.isRegularFile()) {
      return path + " is a device or a pipe; name a file";
    }
    if (!overwrite) {
      return path + " already exists; use --overwrite to replace it";
    }
    return Files.isWritable(path) ? null : path + " is write-protected";
  }

  private static @Nullable BasicFileAttributes attributes(Path path) {
    try {
      return Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    } catch (IOException e) {
      // nothing there, or nothing that can be looked at: writing will tell
      return null;
    }
  }

  private static boolean isSame(Path one, Path other) {
    try {
      return Files.isSameFile(one, other);
    } catch (IOException e) {
      return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
    }
  }

  /** Writes one file, if one is named; says on standard error why it could not. */
  boolean write(@Nullable Path path, Writing writing) {
    if (path == null) {
      return true;
    }
    try {
      Optional<String> refusal = refusal(path);
      if (refusal.isPresent()) {
        console.tell(refusal.get());
        return false;
      }
      replace(path, writing);
      return true;
    } catch (IOException e) {
      console.tell(path + " cannot be written: " + reason(e));
      return false;
    }
  }

  private void replace(Path path, Writing writing) throws IOException {
    Path half = path.resolveSibling(".deadband-" + UUID.randomUUID() + ".part");
    PosixFileAttributes kept = posix(path);
    try {
      Files.createFile(half, mode(kept));
      try (Writer out = Files.newBufferedWriter(half, StandardCharsets.UTF_8)) {
        writing.to(out);
      }
      if (kept != null) {
        give(half, kept);
      }
      move(half, path);
    } finally {
      Files.deleteIfExists(half);
    }
  }

  private void move(Path half, Path path) throws IOException {
    if (overwrite) {
      Files.move(half, path, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    } else {
      Files.move(half, path);
    }
  }

  /** Owner, group and mode of the file to be replaced; null where there are none. */
  private static @Nullable PosixFileAttributes posix(Path path) throws IOException {
    PosixFileAttributeView view =
        Files.getFileAttributeView(path, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    return view == null || attributes(path) == null ? null : view.readAttributes();
  }

  /** A file that replaces another is never open to more people, not even while it is written. */
  private static FileAttribute<?>[] mode(@Nullable PosixFileAttributes kept) {
    return kept == null
        ? new FileAttribute<?>[0]
        : new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(kept.permissions())};
  }

  private static void give(Path half, PosixFileAttributes kept) throws IOException {
    PosixFileAttributeView view =
        Files.getFileAttributeView(half, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    PosixFileAttributes own = view.readAttributes();
    if (!own.owner().equals(kept.owner())) {
      view.setOwner(kept.owner());
    }
    if (!own.group().equals(kept.group())) {
      view.setGroup(kept.group());
    }
    view.setPermissions(kept.permissions());
  }

  private static String reason(IOException e) {
    if (e instanceof NoSuchFileException) {
      return "there is no such folder";
    }
    if (e instanceof AccessDeniedException) {
      return "no permission";
    }
    if (e instanceof FileAlreadyExistsException) {
      return "it already exists; use --overwrite to replace it";
    }
    String reason = e instanceof FileSystemException system ? system.getReason() : e.getMessage();
    return reason == null ? e.getClass().getSimpleName() : reason;
  }
}
