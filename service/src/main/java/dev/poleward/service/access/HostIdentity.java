package dev.poleward.service.access;

/** The holder of the host key: every club, and everything in it. */
public record HostIdentity() implements Authentication.Identity {}
