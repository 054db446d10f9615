package dev.poleward.domain.running;

/**
 * How long things take, in seconds.
 *
 * @param turn one dog out on the poles, from 1
 * @param change from one setup to another, from 0
 * @param rest between the end of a dog's turn and the beginning of its next, from 0
 */
public record Pace(int turn, int change, int rest) {}
