/**
 * What is handed out on paper: sheaves of pages, as HTML and as PDF. Knows answers of the domain
 * and pictures, and not where they come from.
 */
@NullMarked
package dev.poleward.service.page;

import org.jspecify.annotations.NullMarked;
