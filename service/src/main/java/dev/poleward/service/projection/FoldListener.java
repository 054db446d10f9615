package dev.poleward.service.projection;

/** Hears what the fold does. Called on the folding threads; must return soon. */
public interface FoldListener {

  /** So many more records are applied. */
  void applied(int records);

  /** A record was passed over: no event of ours. */
  void passedOver();

  /** A forgetting was applied. */
  void forgotten(String club, String person);

  /** A share of the partitions is no longer applied. */
  void failed(Throwable why);
}
