package dev.poleward.domain.programme;

/**
 * One thing that is wrong with a programme's document.
 *
 * @param pointer JSON Pointer (RFC 6901) from the document to the member at fault, or to where a
 *     missing one belongs; empty for the document as a whole
 * @param detail what is expected there, a sentence that goes on from the member's name
 */
public record DocumentFault(String pointer, String detail) {}
