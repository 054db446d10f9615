package dev.poleward.domain.judgement;

import java.time.Instant;

/** A return, and when it was. */
public record TimedReturn(Instant time, Return what) {}
