/**
 * What is handed out: the report of a class with a page for each of its dogs, and the club at a
 * glance. Puts together what the other packages say, and judges nothing by itself but who was
 * there, where dogs are stuck and what stood how long. May know every other package of the domain
 * but the learner; none knows it.
 */
@NullMarked
package dev.poleward.domain.report;

import org.jspecify.annotations.NullMarked;
