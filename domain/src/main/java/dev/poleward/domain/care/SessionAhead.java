package dev.poleward.domain.care;

/**
 * A session that is to be, as far as care has a word to say about it.
 *
 * @param poles the most that stand; 0 where that is not settled
 * @param isTurned whether an entry is from a side
 * @param mayCrowd whether the handler may crowd the dog in it, or a trainer may think so
 */
public record SessionAhead(int poles, boolean isTurned, boolean mayCrowd) {}
