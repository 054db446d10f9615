package dev.poleward.domain.report;

import java.time.Instant;
import java.time.LocalDate;

/** One session of the class as it was for one dog that was a member then, or was there. */
public record AttendedSession(
    String session, Instant opened, LocalDate day, Attendance attendance) {}
