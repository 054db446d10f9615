package dev.poleward.domain.programme;

/** A drill in a stage; two stages may ask for the same drill. */
public record DrillOfStage(String stage, Drill drill) {}
