package deadband.cli;

import deadband.reading.EquipmentFolder;
import deadband.reading.SetupReading;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where the equipment files lie that setups name. */
final class EquipmentOption {

  @Option(
      names = "--equipment",
      paramLabel = "DIR",
      description =
          "folder of the equipment files that setups name (default: the nearest folder called"
              + " equipment beside the setup file or above it)")
  private @Nullable Path folder;

  private final Map<Path, EquipmentFolder> folders = new ConcurrentHashMap<>();

  /**
   * A setup with its data sheets.
   *
   * @param file it was read from; null for a stream, beside which no folder lies
   */
  SetupReading withSheets(SetupReading reading, @Nullable Path file) {
    if (!(reading instanceof SetupReading.Read read) || !EquipmentFolder.isNamedBy(read)) {
      return reading;
    }
    return EquipmentFolder.withSheets(read, of(file));
  }

  /** The folder for a setup of that file; null where there is none. */
  @Nullable EquipmentFolder of(@Nullable Path file) {
    Path known = folder != null || file == null ? folder : EquipmentFolder.nearest(file);
    return known == null ? null : folders.computeIfAbsent(known, EquipmentFolder::at);
  }

  /** Whether a folder holds equipment files and no setups. */
  boolean isFolder(Path path) {
    Path name = path.getFileName();
    return (name != null && name.toString().equals(EquipmentFolder.NAME))
        || (folder != null
            && folder.toAbsolutePath().normalize().equals(path.toAbsolutePath().normalize()));
  }
}
