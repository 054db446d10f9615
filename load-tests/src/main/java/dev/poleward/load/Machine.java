package dev.poleward.load;

import dev.poleward.load.figures.ThisMachine;

/** Says what the figures of the other programs are measured on. */
public final class Machine {

  private Machine() {}

  public static void main(String[] args) {
    System.out.println(ThisMachine.describe());
  }
}
