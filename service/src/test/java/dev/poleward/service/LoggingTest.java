package dev.poleward.service;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slf4j.LoggerFactory;

/** Without a binding the broker is silent, and so is its failing disk. */
class LoggingTest {

  @ParameterizedTest
  @ValueSource(strings = {"kafka.server.KafkaRaftServer", "org.apache.kafka.raft.RaftManager"})
  void theBrokerWarnsAndDoesNotChat(String name) {
    var logger = LoggerFactory.getLogger(name);

    assertThat(logger.isWarnEnabled()).isTrue();
    assertThat(logger.isInfoEnabled()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"dev.poleward.service.Poleward", "dev.poleward.service.journal.Journal"})
  void ourOwnNewsIsHeard(String name) {
    assertThat(LoggerFactory.getLogger(name).isInfoEnabled()).isTrue();
  }
}
