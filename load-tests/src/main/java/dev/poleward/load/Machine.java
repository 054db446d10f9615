package dev.poleward.load;

/** Says what the figures of the other programs were measured on. */
public final class Machine {

  private Machine() {}

  public static void main(String[] args) {
    System.out.println(describe());
  }

  /** One line to print above every table of figures. */
  static String describe() {
    var runtime = Runtime.getRuntime();
    return "%d cores, %d MB heap at most, %s %s, %s %s on %s"
        .formatted(
            runtime.availableProcessors(),
            runtime.maxMemory() >> 20,
            System.getProperty("java.vm.name"),
            System.getProperty("java.vm.version"),
            System.getProperty("os.name"),
            System.getProperty("os.version"),
            System.getProperty("os.arch"));
  }
}
