package dev.poleward.domain.pace;

import dev.poleward.domain.event.TimingEvent.TimingRecorded;
import dev.poleward.domain.record.Fact;
import dev.poleward.domain.timing.DeviceClock;
import java.util.List;

/**
 * The timings of a dog.
 *
 * @param reps its timed reps, ascending by (time, id)
 * @param further timings of reps that another timing is taken for
 * @param unpaired timings of the dog's that belong to no rep, ascending by (time, id)
 * @param unclaimed timings of its sessions that name no dog and belong to no rep of any dog
 * @param devices those that timed it or something in its sessions, ascending by id
 */
public record PairedTimings(
    List<TimedRep> reps,
    int further,
    List<Fact<TimingRecorded>> unpaired,
    int unclaimed,
    List<DeviceSeen> devices) {

  /** Of a dog of which no device saw anything. */
  static final PairedTimings NONE = new PairedTimings(List.of(), 0, List.of(), 0, List.of());

  /**
   * A device.
   *
   * @param timings of the dog that it took, paired or not
   * @param restarts how often its clock began anew among all its timings
   * @param clock the last of its clocks
   */
  public record DeviceSeen(String device, int timings, int restarts, DeviceClock clock) {}
}
