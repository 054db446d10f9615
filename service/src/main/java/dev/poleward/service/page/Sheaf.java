package dev.poleward.service.page;

import java.time.LocalDate;
import java.util.List;

/**
 * What is handed out in one piece.
 *
 * @param title what it is, for the window and the file
 * @param day what it speaks of, the club's day
 * @param leaves at least one
 */
public record Sheaf(String title, LocalDate day, List<Leaf> leaves) {

  /** Keeps the leaves from changing. */
  public Sheaf {
    leaves = List.copyOf(leaves);
  }
}
