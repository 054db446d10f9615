package dev.poleward.service.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectClass;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;

/** A suite that lets a port pass that does nothing proves nothing about the others. */
class ConformanceSuitesTest {

  @Test
  void aJournalThatDoesNothingPassesNoTest() {
    assertThat(passedBy(DoNothing.JournalSuite.class)).isEmpty();
  }

  @Test
  void aTopicThatDoesNothingPassesNoTest() {
    assertThat(passedBy(DoNothing.PersonKeySuite.class)).isEmpty();
  }

  private static List<String> passedBy(Class<?> suite) {
    var passed = new ArrayList<String>();
    var failed = new ArrayList<String>();
    var request =
        LauncherDiscoveryRequestBuilder.request()
            .selectors(selectClass(suite))
            .configurationParameter("junit.jupiter.execution.parallel.enabled", "false")
            .build();
    LauncherFactory.create()
        .execute(
            request,
            new TestExecutionListener() {
              @Override
              public void executionFinished(TestIdentifier test, TestExecutionResult result) {
                if (test.isTest()) {
                  boolean ok = result.getStatus() == TestExecutionResult.Status.SUCCESSFUL;
                  (ok ? passed : failed).add(test.getDisplayName());
                }
              }
            });
    assertThat(failed).hasSizeGreaterThanOrEqualTo(3);
    return passed;
  }
}
