package dev.poleward.domain.judgement;

/**
 * Where a sequential test leads a dog of a given share of clean reps.
 *
 * @param moveOn how likely to moving on, 0 to 1; the rest is held
 * @param reps how many it takes on average
 */
public record CourseOfTest(double moveOn, double reps) {}
