package dev.poleward.domain.event;

/**
 * An event was a mistake. Final: a withdrawal cannot itself be withdrawn, and it holds whether it
 * arrives before or after what it withdraws.
 *
 * @param event id of the event that does not count
 * @param reason why, in the sender's words
 */
public record EventWithdrawn(String event, String reason) implements TrainingEvent {}
