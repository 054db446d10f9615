package dev.poleward.service;

import dev.poleward.service.journal.CannotStart;
import java.util.ArrayDeque;
import java.util.Deque;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Closes what was opened, the last first, whatever happens on the way. Safe for use by many
 * threads.
 */
final class ClosingInOrder implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(ClosingInOrder.class);

  private final Deque<AutoCloseable> open = new ArrayDeque<>();
  private boolean closed;

  /**
   * Takes charge of a resource.
   *
   * @throws CannotStart when all is closed already, and then closes this one too
   */
  synchronized <T extends AutoCloseable> T add(T resource) {
    open.push(resource);
    if (closed) {
      close();
      throw new CannotStart("It was stopped while it started.");
    }
    return resource;
  }

  @Override
  public synchronized void close() {
    closed = true;
    while (!open.isEmpty()) {
      AutoCloseable resource = open.pop();
      try {
        resource.close();
      } catch (Exception e) {
        LOG.error("Could not close {}", resource.getClass().getSimpleName(), e);
      }
    }
  }
}
