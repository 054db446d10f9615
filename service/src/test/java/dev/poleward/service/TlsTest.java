package dev.poleward.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.poleward.service.http.HttpSettings;
import dev.poleward.service.http.HttpSettings.Encryption;
import dev.poleward.service.journal.CannotStart;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Over TLS, with a certificate that was made a moment ago. */
class TlsTest {

  private static final String PASSWORD = "for this test";

  @TempDir private Path folder;

  /** A key and a certificate for loopback, as an operator would make them. */
  private Path keyStore() throws IOException, InterruptedException {
    Path file = folder.resolve("club.p12");
    Process keytool =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
                "-genkeypair",
                "-alias",
                "club",
                "-keyalg",
                "EC",
                "-groupname",
                "secp256r1",
                "-dname",
                "CN=saltmarsh.example",
                "-ext",
                "san=ip:127.0.0.1",
                "-validity",
                "7",
                "-storetype",
                "PKCS12",
                "-keystore",
                file.toString(),
                "-storepass",
                PASSWORD)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("keytool.log").toFile())
            .start();
    assertThat(keytool.waitFor()).as(Files.readString(folder.resolve("keytool.log"))).isZero();
    return file;
  }

  private static SSLContext trusting(Path keyStore) throws IOException, GeneralSecurityException {
    KeyStore store = KeyStore.getInstance("PKCS12");
    try (InputStream in = Files.newInputStream(keyStore)) {
      store.load(in, PASSWORD.toCharArray());
    }
    KeyStore certificates = KeyStore.getInstance("PKCS12");
    certificates.load(null, null);
    certificates.setCertificateEntry("club", store.getCertificate("club"));
    TrustManagerFactory trust =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    trust.init(certificates);
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(null, trust.getTrustManagers(), null);
    return context;
  }

  private RunningService serving(Path keyStore, String password) {
    return RunningService.with(
        folder.resolve("data"),
        new HttpSettings("0.0.0.0", 0, new Encryption.Here(keyStore, password)));
  }

  @Test
  void whoTrustsTheCertificateIsAnsweredAndNobodyElse()
      throws IOException, InterruptedException, GeneralSecurityException {
    Path keyStore = keyStore();
    try (RunningService service = serving(keyStore, PASSWORD)) {
      String below = "127.0.0.1:" + service.port() + "/v1/clubs/saltmarsh";
      HttpRequest request =
          HttpRequest.newBuilder(URI.create("https://" + below))
              .header("Authorization", "Bearer " + service.hostKey())
              .build();

      try (HttpClient trusting = HttpClient.newBuilder().sslContext(trusting(keyStore)).build();
          HttpClient stranger = HttpClient.newHttpClient()) {
        var answer = trusting.send(request, BodyHandlers.ofString());
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.sslSession()).isPresent();
        assertThat(answer.body()).contains("urn:poleward:problem:not-found");

        assertThatThrownBy(() -> stranger.send(request, BodyHandlers.ofString()))
            .isInstanceOf(SSLHandshakeException.class);
        HttpRequest plain = HttpRequest.newBuilder(URI.create("http://" + below)).build();
        assertThatThrownBy(() -> stranger.send(plain, BodyHandlers.ofString()))
            .isInstanceOf(IOException.class);
      }
    }
  }

  @Test
  void aWrongPasswordIsToldInWords() throws IOException, InterruptedException {
    Path keyStore = keyStore();

    assertThatThrownBy(() -> serving(keyStore, "another").close())
        .isInstanceOf(CannotStart.class)
        .hasMessageContaining("club.p12")
        .hasMessageNotContaining("another");
  }
}
