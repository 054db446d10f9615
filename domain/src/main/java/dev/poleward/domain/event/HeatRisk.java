package dev.poleward.domain.event;

/** How much a dog suffers from heat: flat face, coat, weight, illness. */
public enum HeatRisk {
  NONE,
  RAISED,
  HIGH
}
