package dev.poleward.service.access;

import java.math.BigInteger;

/** Random text of letters and digits, all of one length for one number of bytes. */
final class LettersAndDigits {

  private static final String ALPHABET =
      "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz";
  private static final BigInteger BASE = BigInteger.valueOf(ALPHABET.length());

  private LettersAndDigits() {}

  /** As many random bytes as asked for, written in letters and digits. */
  static String random(Randomness randomness, int bytes) {
    byte[] drawn = new byte[bytes];
    randomness.fill(drawn);
    return written(drawn);
  }

  /** The bytes as a number in base 62, with leading zeros. */
  static String written(byte[] bytes) {
    int length = (int) Math.ceil(bytes.length * Byte.SIZE * Math.log(2) / Math.log(62));
    char[] text = new char[length];
    BigInteger rest = new BigInteger(1, bytes);
    for (int at = length - 1; at >= 0; at--) {
      BigInteger[] parts = rest.divideAndRemainder(BASE);
      text[at] = ALPHABET.charAt(parts[1].intValue());
      rest = parts[0];
    }
    return new String(text);
  }
}
