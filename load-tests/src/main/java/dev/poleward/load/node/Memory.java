package dev.poleward.load.node;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Memory of a process, as Linux counts it.
 *
 * @param residentMebibytes what it holds now, VmRSS
 * @param mostMebibytes the most that it ever held, VmHWM
 */
public record Memory(long residentMebibytes, long mostMebibytes) {

  static Memory of(long pid) {
    long resident = -1;
    long most = -1;
    try {
      for (String line : Files.readAllLines(Path.of("/proc/" + pid + "/status"))) {
        if (line.startsWith("VmRSS:")) {
          resident = mebibytes(line);
        } else if (line.startsWith("VmHWM:")) {
          most = mebibytes(line);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the memory of " + pid + " is not to be seen", e);
    }
    return new Memory(resident, most);
  }

  private static long mebibytes(String line) {
    return Long.parseLong(line.replaceAll("\\D", "")) >> 10;
  }

  @Override
  public String toString() {
    return residentMebibytes + " (" + mostMebibytes + ")";
  }
}
