/**
 * What is to come, and what was: how long a dog will need at this rhythm or another, where a dog
 * that nobody knows might start, whether goals are in reach, what was set as homework, what trials
 * say of the training, and the year in review.
 *
 * <p>{@link dev.poleward.domain.outlook.FittedLearner} is the learner model fitted to a dog's
 * record. Nothing in here looks at a clock or draws without a seed, and nothing throws for want of
 * reps: that it cannot be told is an answer.
 *
 * <p>Knows {@code judgement}, {@code learner}, {@code programme}, {@code mastery}, {@code record},
 * {@code layout} and {@code event}.
 */
@NullMarked
package dev.poleward.domain.outlook;

import org.jspecify.annotations.NullMarked;
