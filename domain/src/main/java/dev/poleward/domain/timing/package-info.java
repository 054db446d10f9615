/**
 * Times: what is usual, whether they change, and how surely.
 *
 * <p>Each method stands alone and knows nothing of dogs. Knows {@code mastery} for how sure is
 * sure, and a library of distributions.
 */
@NullMarked
package dev.poleward.domain.timing;

import org.jspecify.annotations.NullMarked;
