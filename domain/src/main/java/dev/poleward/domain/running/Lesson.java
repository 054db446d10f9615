package dev.poleward.domain.running;

import java.util.Arrays;

/**
 * Turns that are all to be run, by numbers: pole sets, setups and dogs are counted in the order of
 * the question. Nobody changes the arrays.
 */
final class Lesson {

  /** Where there is no setup, or no dog. */
  static final int NONE = -1;

  final Distances distances;
  final Pace pace;
  final int seconds;

  /** For how long a pole set may be busy, without anybody waiting: at most as long as there is. */
  final int busyMax;

  final int instructors;

  /** By setup and dog. */
  final int[][] turns;

  /** By setup: how many turns it has. */
  final int[] turnsOver;

  /** By pole set: which of the setups stands there at the beginning. */
  final int[] stands;

  /** By pole set: who ran there last. */
  final int[] lastDog;

  /** By pole set: when that one was done, 0 or before. */
  final int[] lastEnd;

  /** By dog: from when on it may run. */
  final int[] rested;

  /** By dog: how many turns it had before. */
  final int[] had;

  /** By the dog before and the one after: whether the second may not follow the first. */
  final boolean[][] apart;

  Lesson(
      Distances distances,
      Pace pace,
      int seconds,
      int busyMax,
      int instructors,
      int[][] turns,
      int[] stands,
      int[] lastDog,
      int[] lastEnd,
      int[] rested,
      int[] had,
      boolean[][] apart) {
    this.distances = distances;
    this.pace = pace;
    this.seconds = seconds;
    this.busyMax = busyMax;
    this.instructors = instructors;
    this.turns = turns;
    this.turnsOver = Arrays.stream(turns).mapToInt(row -> Arrays.stream(row).sum()).toArray();
    this.stands = stands;
    this.lastDog = lastDog;
    this.lastEnd = lastEnd;
    this.rested = rested;
    this.had = had;
    this.apart = apart;
  }

  int setups() {
    return turns.length;
  }

  int poleSets() {
    return stands.length;
  }

  int dogs() {
    return rested.length;
  }

  int turnsInAll() {
    return Arrays.stream(turnsOver).sum();
  }

  /** How long a pole set is busy with some setups, without anybody waiting. */
  int busy(int poleSet, long setups) {
    int changes = Long.bitCount(setups) - (standsAmong(poleSet, setups) ? 1 : 0);
    int busy = changes * pace.change();
    for (long left = setups; left != 0; left &= left - 1) {
      busy += turnsOver[Long.numberOfTrailingZeros(left)] * pace.turn();
    }
    return busy;
  }

  /** How long all pole sets together are busy at least. */
  int leastBusy() {
    int changes = Math.max(0, setups() - poleSets());
    return turnsInAll() * pace.turn() + changes * pace.change();
  }

  /** Whether what stands on a pole set is wanted there. */
  boolean standsAmong(int poleSet, long setups) {
    return stands[poleSet] != NONE && (setups >> stands[poleSet] & 1) != 0;
  }
}
