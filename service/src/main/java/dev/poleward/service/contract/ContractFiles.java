package dev.poleward.service.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The files of the contract, as they lie on the classpath. */
record ContractFiles(String openapi, String asyncapi) {

  static ContractFiles load() {
    return new ContractFiles(text("/contracts/openapi.yaml"), text("/contracts/asyncapi.yaml"));
  }

  private static String text(String path) {
    try (InputStream in = ContractFiles.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("not on the classpath: " + path);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot be read: " + path, e);
    }
  }

  /** The HTTP surface as a tree. */
  JsonNode openapiTree() {
    try {
      return new YAMLMapper().readTree(openapi);
    } catch (IOException e) {
      throw new UncheckedIOException("openapi.yaml is no YAML", e);
    }
  }
}
