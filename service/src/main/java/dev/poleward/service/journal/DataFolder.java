package dev.poleward.service.journal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Properties;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The folder with all that the service keeps on this machine, for one process at a time. For the
 * thread that starts and stops the service.
 */
public final class DataFolder implements AutoCloseable {

  /** Below this much room the service does not even start, in bytes: 64 MiB. */
  public static final long FLOOR_BYTES = 64L << 20;

  private static final String ABOUT = "poleward.properties";
  private static final String LOCK = "lock";
  private static final int FORMAT = 1;

  /** What a disk of its own brings along. */
  private static final Set<String> NOBODYS = Set.of("lost+found", LOCK);

  private final Path path;
  private final FileChannel channel;
  private final FileLock lock;

  private DataFolder(Path path, FileChannel channel, FileLock lock) {
    this.path = path;
    this.channel = channel;
    this.lock = lock;
  }

  /**
   * Opens a folder, and makes it if need be, for this user alone.
   *
   * @throws CannotStart when it is in use, is no folder, cannot be written, holds something else,
   *     is of a newer version, or its disk is nearly full
   */
  public static DataFolder open(Path path) {
    return open(path, FLOOR_BYTES);
  }

  static DataFolder open(Path path, long floorBytes) {
    var absolute = path.toAbsolutePath().normalize();
    try {
      if (Files.exists(absolute) && !Files.isDirectory(absolute)) {
        throw new CannotStart(
            "%s is not a folder. Give the path of a folder, or of one to be made."
                .formatted(absolute));
      }
      Files.createDirectories(absolute, forThisUserAlone(absolute));
      return locked(absolute, floorBytes);
    } catch (AccessDeniedException denied) {
      throw new CannotStart(
          "%s cannot be written by user %s. Give it to that user, or choose another folder."
              .formatted(absolute, System.getProperty("user.name")),
          denied);
    } catch (IOException unusable) {
      throw new CannotStart(
          "%s cannot be used as the data folder: %s".formatted(absolute, unusable.getMessage()),
          unusable);
    }
  }

  private static DataFolder locked(Path path, long floorBytes) throws IOException {
    var channel =
        FileChannel.open(path.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    try {
      var folder = new DataFolder(path, channel, lock(path, channel));
      folder.requireOurs();
      folder.requireRoom(floorBytes);
      return folder;
    } catch (IOException | RuntimeException unusable) {
      channel.close();
      throw unusable;
    }
  }

  private static FileLock lock(Path path, FileChannel channel) throws IOException {
    FileLock lock;
    try {
      lock = channel.tryLock();
    } catch (OverlappingFileLockException ourOwn) {
      lock = null;
    }
    if (lock == null) {
      throw new CannotStart(
          "%s is in use by another Poleward. Stop that one, or give this one a folder of its own."
              .formatted(path));
    }
    return lock;
  }

  private void requireOurs() throws IOException {
    var about = path.resolve(ABOUT);
    if (!Files.exists(about)) {
      requireEmpty();
      write(about);
      return;
    }
    var properties = new Properties();
    try (var reader = Files.newBufferedReader(about, UTF_8)) {
      properties.load(reader);
    }
    var format = number(properties.getProperty("format"));
    if (format == null) {
      throw new CannotStart(
          "%s does not say which format the folder has. Restore it from a backup."
              .formatted(about));
    }
    if (format != FORMAT) {
      throw new CannotStart(
          "%s was written by a newer Poleward: it has format %d, and this one reads %d. Start the newer one."
              .formatted(path, format, FORMAT));
    }
  }

  private void requireEmpty() throws IOException {
    try (var entries = Files.list(path)) {
      var other =
          entries
              .map(entry -> String.valueOf(entry.getFileName()))
              .filter(name -> !NOBODYS.contains(name) && !name.equals(ABOUT + ".new"))
              .findFirst();
      if (other.isPresent()) {
        throw new CannotStart(
            "%s is not empty (%s) and no data folder of Poleward: %s is missing. Give an empty folder."
                .formatted(path, other.get(), ABOUT));
      }
    }
  }

  private void requireRoom(long floorBytes) throws IOException {
    long left = Files.getFileStore(path).getUsableSpace();
    if (left < floorBytes) {
      throw new CannotStart(
          "Only %d MiB are left on the disk of %s, and %d are needed. Make room, or move the folder to a larger disk."
              .formatted(left >> 20, path, floorBytes >> 20));
    }
  }

  private static void write(Path about) throws IOException {
    var whole = about.resolveSibling(ABOUT + ".new");
    Files.writeString(
        whole, "# What this folder is. Not to be edited.\nformat=" + FORMAT + "\n", UTF_8);
    Files.move(whole, about, StandardCopyOption.ATOMIC_MOVE);
  }

  private static @Nullable Integer number(@Nullable String text) {
    try {
      return text == null ? null : Integer.valueOf(text.strip());
    } catch (NumberFormatException none) {
      return null;
    }
  }

  private static FileAttribute<?>[] forThisUserAlone(Path path) {
    return path.getFileSystem().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------"))
        }
        : new FileAttribute<?>[0];
  }

  /** Where the folder is, absolute. */
  public Path path() {
    return path;
  }

  /** The broker's part of it. */
  public Path journal() {
    return part("journal");
  }

  /**
   * A part of it, made if need be.
   *
   * @throws CannotStart when it cannot be made
   */
  public Path part(String name) {
    var part = path.resolve(name);
    try {
      return Files.createDirectories(part, forThisUserAlone(part));
    } catch (IOException unusable) {
      throw new CannotStart(
          "%s cannot be made: %s".formatted(part, unusable.getMessage()), unusable);
    }
  }

  /**
   * The room on its disk.
   *
   * @param reserveBytes what must stay free, 0 or more
   * @throws CannotStart when the disk cannot be asked
   */
  public DiskSpace diskSpace(long reserveBytes) {
    try {
      return new LocalDiskSpace(path, reserveBytes);
    } catch (IOException unknown) {
      throw new CannotStart(
          "The disk of %s cannot be asked how much room is left.".formatted(path), unknown);
    }
  }

  /** Leaves the folder to the next process. */
  @Override
  public void close() {
    try {
      lock.release();
      channel.close();
    } catch (IOException gone) {
      throw new JournalException("The lock of " + path + " could not be released.", gone);
    }
  }
}
