package dev.poleward.service;

/** The program: reads the first word of the command line and does what it says. */
public final class Poleward {

  private static final String USAGE =
      """
      usage: poleward <command>

        help    print this text
      """;

  private Poleward() {}

  public static void main(String[] args) {
    if (args.length == 1 && args[0].equals("help")) {
      System.out.print(USAGE);
      return;
    }
    System.err.print(USAGE);
    System.exit(2);
  }
}
