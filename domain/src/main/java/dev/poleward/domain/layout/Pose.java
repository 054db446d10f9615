package dev.poleward.domain.layout;

/**
 * Where a dog is and which way it runs.
 *
 * @param spot its place
 * @param heading its way
 */
public record Pose(Spot spot, Heading heading) {}
