package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.service.http.ClubReads.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The club and what it has registered. Safe for use by many threads. */
final class RegistryRoutes {

  private static final Set<String> VIEW = Set.of("asOf", "knownAt");
  private static final Set<String> LIST = Set.of("asOf", "knownAt", "limit", "cursor");

  private final ClubReads reads;
  private final RegistryShapes shapes;

  RegistryRoutes(ClubReads reads, RegistryShapes shapes) {
    this.reads = reads;
    this.shapes = shapes;
  }

  /** Finds one thing of a kind in a registry and shows it. */
  private interface Shown {
    Optional<ObjectNode> find(Reader reader, Registry registry, String id);
  }

  private static Registry registry(Reader reader, View view) {
    return new Registry(new Placement(reader.reading().facts(), view), view);
  }

  Answer club(Call call) {
    return reads.read(
        call,
        (_, reader) ->
            single(
                call,
                reader,
                "club",
                (who, registry, _) ->
                    registry.club().map(club -> shapes.club(club, who.reading().position()))));
  }

  Answer dogs(Call call) {
    return list(call, "dogs", EntityKind.DOG, this::dog);
  }

  Answer dog(Call call) {
    return single(call, "dog", this::dog);
  }

  private Optional<ObjectNode> dog(Reader reader, Registry registry, String id) {
    return reader.maySee(registry.identity(), id)
        ? registry.dog(id).map(shapes::dog)
        : Optional.empty();
  }

  Answer handlers(Call call) {
    return reads.ofWholeClub(
        call, (_, reader) -> list(call, reader, "handlers", EntityKind.HANDLER, this::handler));
  }

  Answer handler(Call call) {
    return reads.ofWholeClub(call, (_, reader) -> single(call, reader, "handler", this::handler));
  }

  private Optional<ObjectNode> handler(Reader reader, Registry registry, String id) {
    return registry.handler(id).map(handler -> shapes.handler(reader.personal(), handler));
  }

  Answer grounds(Call call) {
    return list(call, "grounds", EntityKind.GROUND, this::ground);
  }

  Answer ground(Call call) {
    return single(call, "ground", this::ground);
  }

  private Optional<ObjectNode> ground(Reader reader, Registry registry, String id) {
    return registry.ground(id).map(shapes::ground);
  }

  Answer classes(Call call) {
    return list(
        call,
        "classes",
        EntityKind.CLASS,
        (_, registry, id) -> registry.group(id).map(shapes::group));
  }

  Answer group(Call call) {
    return single(
        call,
        "class",
        (reader, registry, id) ->
            registry
                .group(id)
                .map(
                    group ->
                        shapes.groupWithMembers(
                            group, dog -> reader.maySee(registry.identity(), dog))));
  }

  Answer programmes(Call call) {
    return list(call, "programmes", EntityKind.PROGRAMME, this::programme);
  }

  Answer programme(Call call) {
    return single(call, "programme", this::programme);
  }

  private Optional<ObjectNode> programme(Reader reader, Registry registry, String id) {
    return registry.programme(id).map(shapes::programme);
  }

  Answer devices(Call call) {
    return list(call, "devices", EntityKind.DEVICE, this::device);
  }

  Answer device(Call call) {
    return single(call, "device", this::device);
  }

  private Optional<ObjectNode> device(Reader reader, Registry registry, String id) {
    return registry
        .device(id)
        .map(device -> shapes.device(device, dog -> reader.maySee(registry.identity(), dog)));
  }

  private Answer single(Call call, String name, Shown shown) {
    return reads.read(call, (_, reader) -> single(call, reader, name, shown));
  }

  private static Answer single(Call call, Reader reader, String name, Shown shown) {
    Parameters parameters = new Parameters(call, VIEW);
    View view = parameters.view();
    Optional<Problem> problem = parameters.problem();
    if (problem.isPresent()) {
      return call.refused(problem.get());
    }
    return shown
        .find(reader, registry(reader, view), call.inPath(name))
        .map(shape -> Answer.json(200, shape))
        .orElseGet(() -> call.refused(ProblemKind.NOT_FOUND, "There is no such " + name + "."));
  }

  private Answer list(Call call, String plural, EntityKind kind, Shown shown) {
    return reads.read(call, (_, reader) -> list(call, reader, plural, kind, shown));
  }

  private static Answer list(
      Call call, Reader reader, String plural, EntityKind kind, Shown shown) {
    Parameters parameters = new Parameters(call, LIST);
    View view = parameters.view();
    int limit = parameters.limit();
    String after = Cursors.id(parameters);
    Optional<Problem> problem = parameters.problem();
    if (problem.isPresent()) {
      return call.refused(problem.get());
    }
    Page<ObjectNode> page = page(reader, registry(reader, view), kind, shown, after, limit);
    ArrayNode items = JsonNodeFactory.instance.arrayNode();
    page.items().forEach(items::add);
    ObjectNode body = JsonNodeFactory.instance.objectNode();
    body.set(plural, items);
    return page.linked(call, Answer.json(200, body));
  }

  /** Looks at ids in portions until a page is full: some may not be there in this view. */
  private static Page<ObjectNode> page(
      Reader reader, Registry registry, EntityKind kind, Shown shown, String after, int limit) {
    List<ObjectNode> items = new ArrayList<>();
    String last = after;
    while (true) {
      List<String> ids = reader.reading().facts().announced(kind, last, limit);
      for (String id : ids) {
        if (items.size() == limit) {
          return new Page<>(items, last);
        }
        shown.find(reader, registry, id).ifPresent(items::add);
        last = id;
      }
      if (ids.size() < limit) {
        return new Page<>(items, null);
      }
    }
  }
}
