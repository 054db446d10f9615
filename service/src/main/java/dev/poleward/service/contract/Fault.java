package dev.poleward.service.contract;

/**
 * One thing that is wrong with a body.
 *
 * @param pointer JSON Pointer (RFC 6901) to the member at fault: to the unknown member itself, to
 *     where a missing one belongs; empty for the body as a whole
 * @param detail what is expected there, a sentence that goes on from the member's name
 */
public record Fault(String pointer, String detail) {}
