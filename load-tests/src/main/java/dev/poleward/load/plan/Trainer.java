package dev.poleward.load.plan;

/** Somebody who trains a dog. */
public interface Trainer {

  /** One session of at most so many reps. */
  void train(Trainee dog, int repsMax);
}
