package dev.poleward.service.contract;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.ExecutionContext;
import com.networknt.schema.Schema;
import com.networknt.schema.path.NodePath;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;

/** Judges trees by one schema. Immutable; safe for use by many threads. */
final class SchemaJudge {

  /** Enough for the faults of one answer, even where several speak of one member. */
  private static final int ERRORS_MAX = 4 * Findings.FAULTS_MAX;

  private final Schema schema;
  private final JsonNode rules;

  /**
   * Judges by {@code schema}.
   *
   * @param rules the same, to be read
   */
  SchemaJudge(Schema schema, JsonNode rules) {
    this.schema = schema;
    this.rules = rules;
  }

  /** Whether the tree keeps to the schema. */
  boolean accepts(JsonNode tree) {
    return errors(tree).isEmpty();
  }

  /**
   * Judges a tree.
   *
   * @param pointer where the tree lies in the body
   */
  void judge(JsonNode tree, String pointer, Findings findings) {
    for (Error error : errors(tree)) {
      note(error, pointer, findings);
    }
  }

  private List<Error> errors(JsonNode tree) {
    ExecutionContext context = schema.createExecutionContext();
    BoundedErrors errors = new BoundedErrors();
    context.setErrors(errors);
    try {
      schema.validate(context, tree);
    } catch (Enough _) {
      // The rest would not be told.
    }
    return errors;
  }

  private void note(Error error, String pointer, Findings findings) {
    String at = pointer + written(error.getInstanceLocation());
    JsonNode rule =
        rules.at(JsonPointer.compile(written(error.getSchemaLocation().getFragment())).head());
    Sentence sentence = Sentence.of(error, rule);
    findings.add(
        sentence.ofMember() ? Pointers.member(at, error.getProperty()) : at,
        sentence.text(),
        sentence.weight());
  }

  private static String written(NodePath path) {
    String pointer = "";
    for (int i = 0; i < path.getNameCount(); i++) {
      pointer = Pointers.member(pointer, path.getName(i));
    }
    return pointer;
  }

  /** Stops a validator that has found enough. */
  private static final class Enough extends RuntimeException {

    private static final long serialVersionUID = 1L;
    private static final Enough THROWN = new Enough();

    private Enough() {
      super("more faults than are told", null, false, false);
    }
  }

  /** A body can have as many faults as bytes; nobody reads them, and they need not be kept. */
  private static final class BoundedErrors extends AbstractList<Error> {

    private final List<Error> errors = new ArrayList<>(0);

    @Override
    public void add(int index, Error error) {
      if (errors.size() >= ERRORS_MAX) {
        throw Enough.THROWN;
      }
      errors.add(index, error);
    }

    @Override
    public Error get(int index) {
      return errors.get(index);
    }

    @Override
    public int size() {
      return errors.size();
    }
  }
}
