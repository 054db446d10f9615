package dev.poleward.service.http;

import dev.poleward.service.http.HttpSettings.Encryption;
import io.javalin.config.JettyConfig;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/** Opens the port, plain or with TLS. */
final class Listening {

  /** A connection that says nothing for this long is closed. */
  private static final long IDLE_MILLIS_MAX = 60_000;

  /** Connections that wait to be taken. */
  private static final int BACKLOG_MAX = 1_024;

  private static final int HEADER_BYTES_MAX = 16 * 1_024;

  private Listening() {}

  static void configure(JettyConfig jetty, HttpSettings settings) {
    jetty.modifyHttpConfiguration(
        http -> {
          http.setSendServerVersion(false);
          http.setRequestHeaderSize(HEADER_BYTES_MAX);
        });
    jetty.addConnector(
        (server, http) ->
            switch (settings.encryption()) {
              case Encryption.None _, Encryption.Elsewhere _ ->
                  bound(new ServerConnector(server, new HttpConnectionFactory(http)), settings);
              case Encryption.Here here -> bound(encrypted(server, http, here), settings);
            });
  }

  private static ServerConnector encrypted(
      Server server, HttpConfiguration http, Encryption.Here here) {
    SslContextFactory.Server tls = new SslContextFactory.Server();
    tls.setKeyStorePath(here.keyStore().toString());
    tls.setKeyStoreType("PKCS12");
    tls.setKeyStorePassword(here.password());
    HttpConfiguration secure = new HttpConfiguration(http);
    // On a field people reach a laptop by its address, which no certificate names.
    secure.addCustomizer(new SecureRequestCustomizer(false));
    return new ServerConnector(
        server, new SslConnectionFactory(tls, "http/1.1"), new HttpConnectionFactory(secure));
  }

  private static ServerConnector bound(ServerConnector connector, HttpSettings settings) {
    connector.setHost(settings.host());
    connector.setPort(settings.port());
    connector.setIdleTimeout(IDLE_MILLIS_MAX);
    connector.setAcceptQueueSize(BACKLOG_MAX);
    return connector;
  }
}
