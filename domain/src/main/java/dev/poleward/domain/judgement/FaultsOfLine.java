package dev.poleward.domain.judgement;

/**
 * Where along a line of poles faults were made.
 *
 * @param poles how many stood
 * @param reps with so many, faulty or not
 * @param withoutPole faults of which nobody said the pole, or one that did not stand
 * @param spread over the poles, from the first, against an even one
 */
public record FaultsOfLine(int poles, int reps, int withoutPole, EvenSpread spread) {}
