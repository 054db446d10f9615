package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NumericNode;
import com.fasterxml.jackson.databind.node.ValueNode;
import java.math.BigInteger;

/** Makes trees whose numbers are finite as doubles, as RFC 8785 needs them. */
final class FiniteNumbers extends JsonNodeFactory {

  private static final long serialVersionUID = 1L;

  /** There is a number that no double holds. */
  static final class Infinite extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private Infinite() {
      super("a number beyond all doubles", null, false, false);
    }
  }

  @Override
  public NumericNode numberNode(double value) {
    if (!Double.isFinite(value)) {
      throw new Infinite();
    }
    return super.numberNode(value);
  }

  @Override
  public ValueNode numberNode(BigInteger value) {
    if (!Double.isFinite(value.doubleValue())) {
      throw new Infinite();
    }
    return super.numberNode(value);
  }
}
