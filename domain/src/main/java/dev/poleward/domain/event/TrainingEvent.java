package dev.poleward.domain.event;

/** Anything that can stand in a club's journal. */
public sealed interface TrainingEvent
    permits ClubEvent,
        RegistryEvent,
        DogEvent,
        ClassEvent,
        ProgrammeEvent,
        DeviceEvent,
        SessionEvent,
        RepEvent,
        TimingEvent,
        AimEvent,
        EventWithdrawn {}
