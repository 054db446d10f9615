package dev.poleward.service.access;

import dev.poleward.service.journal.CannotStart;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A file with one secret text and nothing else, for its owner's eyes only. Its contents go into no
 * message. For the thread that starts the service; the data folder is ours alone by then.
 *
 * @param what what it holds, for messages
 */
record SecretFile(String what, Path file) {

  private static final Logger LOG = LoggerFactory.getLogger(SecretFile.class);

  private static final int BYTES_MAX = 4096;
  private static final Set<PosixFilePermission> OWNER_ONLY =
      PosixFilePermissions.fromString("rw-------");

  /**
   * What the file holds, without white space around it; empty when there is no file.
   *
   * @throws CannotStart when it cannot be read, is empty, or is no short text
   */
  Optional<String> read() {
    if (Files.notExists(file)) {
      return Optional.empty();
    }
    String text;
    try {
      if (Files.size(file) > BYTES_MAX) {
        throw fault("is longer than any key");
      }
      text = Files.readString(file).strip();
      warnWhenOthersMayRead();
    } catch (CharacterCodingException e) {
      throw fault("is no text", e);
    } catch (IOException e) {
      throw fault("cannot be read: " + e, e);
    }
    if (text.isEmpty()) {
      throw fault("is empty");
    }
    return Optional.of(text);
  }

  private void warnWhenOthersMayRead() throws IOException {
    openTo()
        .ifPresent(
            mode ->
                LOG.warn(
                    "The {} in {} is open to others ({}): make its mode 0600", what, file, mode));
  }

  /** The file's mode as text, when it lets others in. */
  Optional<String> openTo() throws IOException {
    if (!posix()) {
      return Optional.empty();
    }
    Set<PosixFilePermission> found = Files.getPosixFilePermissions(file);
    return OWNER_ONLY.containsAll(found)
        ? Optional.empty()
        : Optional.of(PosixFilePermissions.toString(found));
  }

  /**
   * Writes the file: after a crash it is there as a whole or not at all.
   *
   * @return {@code text}
   * @throws CannotStart when it cannot be written
   */
  String create(String text) {
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null) {
      throw fault("is a folder");
    }
    Path unfinished = folder.resolve(file.getFileName() + ".new");
    try {
      Files.createDirectories(folder);
      Files.deleteIfExists(unfinished);
      write(unfinished, text);
      Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE);
      force(folder);
      return text;
    } catch (IOException e) {
      throw fault("cannot be written: " + e, e);
    }
  }

  private void write(Path path, String text) throws IOException {
    try (FileChannel channel =
        FileChannel.open(
            path, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), ownerOnly())) {
      ByteBuffer bytes = StandardCharsets.UTF_8.encode(text);
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    }
  }

  private FileAttribute<?>[] ownerOnly() {
    return posix()
        ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER_ONLY)}
        : new FileAttribute<?>[0];
  }

  private boolean posix() {
    return file.getFileSystem().supportedFileAttributeViews().contains("posix");
  }

  /** Makes the new name itself last. Only where a folder can be opened like a file. */
  private void force(Path folder) throws IOException {
    if (posix()) {
      try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
        channel.force(true);
      }
    }
  }

  /** A fault of this file. */
  CannotStart fault(String problem) {
    return new CannotStart("The %s in %s %s".formatted(what, file, problem));
  }

  private CannotStart fault(String problem, Throwable cause) {
    return new CannotStart("The %s in %s %s".formatted(what, file, problem), cause);
  }
}
