package dev.poleward.domain.judgement;

import dev.poleward.domain.programme.Handling;

/** A rep as a rung's judgement sees it. Void and helped reps are none. */
public record HandledRep(Handling handling, boolean clean) {}
