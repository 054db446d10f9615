package dev.poleward.service;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Gives tests a {@link RunningService}, or a {@link Club} that no other test knows. All tests of a
 * JVM share one service, which starts for the first of them and stops after the last.
 */
public final class SharedService implements ParameterResolver {

  private record Shared(Path folder, RunningService service) implements AutoCloseable {

    static Shared start() {
      try {
        Path folder = Files.createTempDirectory("poleward-tests");
        return new Shared(folder, RunningService.on(folder.resolve("data")));
      } catch (IOException e) {
        throw new UncheckedIOException("there is no room for a test", e);
      }
    }

    @Override
    public void close() throws IOException {
      service.close();
      FolderRemoval.remove(folder);
    }
  }

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext test) {
    Class<?> type = parameter.getParameter().getType();
    return type == RunningService.class || type == Club.class;
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext test) {
    RunningService service =
        test.getRoot()
            .getStore(Namespace.create(SharedService.class))
            .getOrComputeIfAbsent(Shared.class, _ -> Shared.start(), Shared.class)
            .service();
    return parameter.getParameter().getType() == Club.class ? service.newClub() : service;
  }
}
