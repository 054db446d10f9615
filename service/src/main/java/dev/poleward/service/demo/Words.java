package dev.poleward.service.demo;

import java.util.Locale;

/** Names of the domain as the contract writes them. */
final class Words {

  private Words() {}

  /** {@code REAR_CROSS} as {@code rear-cross}. */
  static String of(Enum<?> name) {
    return name.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
