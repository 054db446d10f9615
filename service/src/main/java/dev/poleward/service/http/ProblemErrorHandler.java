package dev.poleward.service.http;

import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Gives what the HTTP layer itself refuses, before any route sees it, as problem documents too. */
final class ProblemErrorHandler extends ErrorHandler {

  @Override
  public boolean handle(Request request, Response response, Callback callback) {
    int status = response.getStatus() < 400 ? 500 : response.getStatus();
    Problem problem =
        Problem.of(
            status < 500 ? ProblemKind.INVALID : ProblemKind.INTERNAL,
            "The request could not be read as HTTP, or not within the limits of the service.");
    response.setStatus(status);
    response.getHeaders().put(new HttpField(HttpHeader.CONTENT_TYPE, Answer.PROBLEM_JSON));
    byte[] body = Answer.bytes(problem.document(null).put("status", status));
    response.write(true, ByteBuffer.wrap(body), callback);
    return true;
  }
}
