package dev.poleward.domain.care;

/**
 * Something to mind.
 *
 * @param id stable, for clients
 * @param text a sentence or two
 * @param source where it comes from, or that it is common practice
 */
public record CareNote(String id, Severity severity, String text, String source) {}
