package dev.poleward.domain.event;

import org.jspecify.annotations.Nullable;

/**
 * A reward in a rep.
 *
 * @param count how many, 0 to 50; one when absent
 */
public record Reward(
    RewardKind kind, RewardPlace at, @Nullable Integer count, @Nullable RewardDelivery delivery) {}
