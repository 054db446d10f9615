package dev.poleward.service.projection;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;

/** Remembers what a fold has said. Safe for use by many threads. */
final class HeardFolds implements FoldListener {

  final AtomicInteger applied = new AtomicInteger();
  final AtomicInteger passedOver = new AtomicInteger();
  final List<String> forgotten = new CopyOnWriteArrayList<>();
  final List<Throwable> failures = new CopyOnWriteArrayList<>();

  @Override
  public void applied(int records) {
    applied.addAndGet(records);
  }

  @Override
  public void passedOver() {
    passedOver.incrementAndGet();
  }

  @Override
  public void forgotten(String club, String person) {
    forgotten.add(club + "/" + person);
  }

  @Override
  public void failed(Throwable why) {
    failures.add(why);
  }
}
