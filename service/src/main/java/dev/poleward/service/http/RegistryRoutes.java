package dev.poleward.service.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.poleward.domain.event.ClassEvent.ClassJoined;
import dev.poleward.domain.programme.DefaultProgramme;
import dev.poleward.domain.record.ClassRecord;
import dev.poleward.domain.record.EntityKind;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.record.Placement;
import dev.poleward.domain.record.Registry;
import dev.poleward.domain.record.View;
import dev.poleward.service.http.Asked.ById;
import dev.poleward.service.http.ClubReads.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** The club and what it has registered. Safe for use by many threads. */
final class RegistryRoutes {

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

  Answer members(Call call) {
    return reads.read(call, (_, reader) -> Asked.byId(call, asked -> members(call, reader, asked)));
  }

  private Answer members(Call call, Reader reader, ById asked) {
    Registry registry = registry(reader, asked.view());
    return registry
        .group(call.inPath("class"))
        .map(
            group ->
                Page.of(visible(reader, registry, group), Map.Entry::getKey, asked)
                    .listed(
                        call,
                        "members",
                        member -> shapes.member(member.getKey(), member.getValue())))
        .orElseGet(() -> call.refused(ProblemKind.NOT_FOUND, "There is no such class."));
  }

  private static List<Map.Entry<String, Fact<ClassJoined>>> visible(
      Reader reader, Registry registry, ClassRecord group) {
    return group.members().entrySet().stream()
        .filter(member -> reader.maySee(registry.identity(), member.getKey()))
        .toList();
  }

  Answer programmes(Call call) {
    return reads.read(
        call,
        (_, reader) ->
            Asked.byId(
                call,
                asked ->
                    page(
                            reader,
                            (after, limit) -> programmes(reader, after, limit),
                            this::programme,
                            asked)
                        .listed(call, "programmes", item -> item)));
  }

  /** Those of the club and, in its place among them, the one that ships. */
  private static List<String> programmes(Reader reader, String after, int limit) {
    TreeSet<String> ids =
        new TreeSet<>(reader.reading().facts().announced(EntityKind.PROGRAMME, after, limit));
    if (DefaultProgramme.ID.compareTo(after) > 0) {
      ids.add(DefaultProgramme.ID);
    }
    return ids.stream().limit(limit).toList();
  }

  Answer programme(Call call) {
    return single(call, "programme", this::programme);
  }

  private Optional<ObjectNode> programme(Reader reader, Registry registry, String id) {
    return id.equals(DefaultProgramme.ID)
        ? Optional.of(shapes.defaultProgramme())
        : registry.programme(id).map(shapes::programme);
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
    return Asked.inView(
        call,
        view ->
            shown
                .find(reader, registry(reader, view), call.inPath(name))
                .map(shape -> Answer.json(200, shape))
                .orElseGet(
                    () -> call.refused(ProblemKind.NOT_FOUND, "There is no such " + name + ".")));
  }

  private Answer list(Call call, String plural, EntityKind kind, Shown shown) {
    return reads.read(call, (_, reader) -> list(call, reader, plural, kind, shown));
  }

  private static Answer list(
      Call call, Reader reader, String plural, EntityKind kind, Shown shown) {
    return Asked.byId(
        call,
        asked ->
            page(
                    reader,
                    (after, limit) -> reader.reading().facts().announced(kind, after, limit),
                    shown,
                    asked)
                .listed(call, plural, item -> item));
  }

  /** Ids behind another, ascending, so many at most. */
  private interface Ids {
    List<String> after(String id, int limit);
  }

  /** Looks at ids in portions until a page is full: some may not be there in this view. */
  private static Page<ObjectNode> page(Reader reader, Ids known, Shown shown, ById asked) {
    Registry registry = registry(reader, asked.view());
    int limit = asked.limit();
    List<ObjectNode> items = new ArrayList<>();
    String last = asked.after();
    while (true) {
      List<String> ids = known.after(last, limit);
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
