package dev.poleward.service.page;

import java.util.List;

/**
 * What belongs together on paper: it begins on a page of its own.
 *
 * @param title its heading
 * @param blocks from top to bottom
 */
public record Leaf(String title, List<Block> blocks) {

  /** Keeps the blocks from changing. */
  public Leaf {
    blocks = List.copyOf(blocks);
  }
}
