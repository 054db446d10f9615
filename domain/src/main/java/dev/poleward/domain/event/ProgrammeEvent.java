package dev.poleward.domain.event;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What is to be learned, and by whom. */
public sealed interface ProgrammeEvent extends TrainingEvent {

  /**
   * A version of a programme. Programme and version together name one document.
   *
   * @param version from 1; 1 when the document names none
   * @param document the whole document as sent, {@code programme} included
   */
  record ProgrammePublished(String programme, int version, Map<String, Object> document)
      implements ProgrammeEvent {}

  record ProgrammeAssigned(String dog, String programme, @Nullable String startStage)
      implements ProgrammeEvent {}

  /**
   * A plan was handed out.
   *
   * @param document the whole plan as issued
   */
  record PlanIssued(String plan, String dog, Map<String, Object> document)
      implements ProgrammeEvent {}
}
