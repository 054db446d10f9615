package dev.poleward.service.demo;

import dev.poleward.domain.learner.SimulatedDog;
import java.util.SplittableRandom;

/**
 * A dog of the club with all that goes with it through the season.
 *
 * @param dog who it is
 * @param learner what it can do
 * @param course what it is taught next
 * @param luck of this dog alone, so that no dog depends on what others do
 */
record DogInTraining(DemoDog dog, SimulatedDog learner, Course course, SplittableRandom luck) {

  static DogInTraining of(DemoDog dog, long seed) {
    return new DogInTraining(
        dog,
        new SimulatedDog(dog.temper()),
        new Course(dog.way()),
        new SplittableRandom(seed + dog.id().hashCode()));
  }
}
