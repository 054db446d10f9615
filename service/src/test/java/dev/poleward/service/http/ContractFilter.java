package dev.poleward.service.http;

import com.atlassian.oai.validator.OpenApiInteractionValidator;
import com.atlassian.oai.validator.model.Request.Method;
import com.atlassian.oai.validator.model.SimpleResponse;
import com.atlassian.oai.validator.report.ValidationReport;
import io.restassured.filter.Filter;
import io.restassured.filter.FilterContext;
import io.restassured.response.Response;
import io.restassured.specification.FilterableRequestSpecification;
import io.restassured.specification.FilterableResponseSpecification;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** Holds every answer to the contract: declared status, declared form, declared schema. */
public final class ContractFilter implements Filter {

  /** The contract says nothing about these: every GET has a HEAD, and what can be done is told. */
  private static final Set<String> UNDECLARED = Set.of("HEAD", "OPTIONS");

  private static final List<String> NOT_THERE =
      List.of("validation.request.path.missing", "validation.request.operation.notAllowed");

  private static final OpenApiInteractionValidator CONTRACT =
      OpenApiInteractionValidator.createForInlineApiSpecification(openapi()).build();

  private static String openapi() {
    try (InputStream in =
        Objects.requireNonNull(
            ContractFilter.class.getResourceAsStream("/contracts/openapi.yaml"))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public Response filter(
      FilterableRequestSpecification request,
      FilterableResponseSpecification expected,
      FilterContext context) {
    Response response = context.next(request, expected);
    Map<String, List<String>> headers =
        response.headers().asList().stream()
            .collect(
                Collectors.groupingBy(
                    header -> header.getName(),
                    Collectors.mapping(header -> header.getValue(), Collectors.toList())));
    String path = URI.create(request.getURI()).getRawPath();
    check(request.getMethod(), path, response.statusCode(), headers, response.asByteArray());
    return response;
  }

  /** Throws when the contract does not know such an answer. */
  static void check(
      String method, String path, int status, Map<String, List<String>> headers, byte[] body) {
    if (UNDECLARED.contains(method)) {
      return;
    }
    SimpleResponse.Builder answer = SimpleResponse.Builder.status(status);
    headers.forEach(answer::withHeader);
    if (body.length > 0) {
      answer.withBody(body);
    }
    List<ValidationReport.Message> faults =
        CONTRACT
            .validateResponse(path, Method.valueOf(method), answer.build())
            .getMessages()
            .stream()
            .filter(each -> each.getLevel() == ValidationReport.Level.ERROR)
            .filter(each -> !isRefusal(status, each))
            .toList();
    if (!faults.isEmpty()) {
      throw new AssertionError(
          "%s %s: %d %s%n%s"
              .formatted(method, path, status, faults, new String(body, StandardCharsets.UTF_8)));
    }
  }

  /** Paths and methods that are not there can only be refused. */
  private static boolean isRefusal(int status, ValidationReport.Message fault) {
    return (status == 404 || status == 405) && NOT_THERE.contains(fault.getKey());
  }
}
