package dev.poleward.domain.judgement;

/**
 * A rep as the fading of rewards sees it.
 *
 * @param step of the reward ladder that it was rewarded by, from 0: the richest
 */
public record RewardedRep(int step, boolean clean) {}
