/**
 * Who may do what, and what is personal: access keys, scopes, people's keys, sealed members.
 *
 * <p>Knows the domain, the ports of {@code service.journal} and {@code service.projection}, and the
 * RFC 8785 form of {@code service.codec}; knows nothing of HTTP.
 */
@NullMarked
package dev.poleward.service.access;

import org.jspecify.annotations.NullMarked;
