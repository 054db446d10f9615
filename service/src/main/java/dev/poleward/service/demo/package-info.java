/**
 * The invented club that shows the service at work. Speaks to it through the public API alone, as
 * any app would.
 */
@NullMarked
package dev.poleward.service.demo;

import org.jspecify.annotations.NullMarked;
