package dev.poleward.service.access;

/**
 * Somebody of a club whose personal members are sealed under keys of their own.
 *
 * @param club the club
 * @param id as {@link PersonalMembers} names people
 */
record Person(String club, String id) {}
