package dev.poleward.service.journal;

/**
 * Settings of the broker inside this process.
 *
 * @param kafkaPort port on the loopback address for Kafka clients of this machine; 0 for any free
 *     one
 * @param keyTiming how fast a destroyed key's last copy goes
 */
public record EmbeddedSettings(int kafkaPort, PersonKeyTiming keyTiming) {

  /** Any free port, keys gone within 3 minutes. */
  public static final EmbeddedSettings DEFAULT = new EmbeddedSettings(0, PersonKeyTiming.DEFAULT);

  /**
   * Checks the range.
   *
   * @throws IllegalArgumentException when the port is none
   */
  public EmbeddedSettings {
    if (kafkaPort < 0 || kafkaPort > 65_535) {
      throw new IllegalArgumentException("%d is not a port".formatted(kafkaPort));
    }
  }
}
