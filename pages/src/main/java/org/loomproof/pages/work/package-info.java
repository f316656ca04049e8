/**
 * What was done and measured at a job, as it was noted where it was done: on a device that may have had no network. Entries are only
 * ever added, each under a name that the device drew, so that sending one twice writes it once and two devices never write over
 * each other. Knows the book, and of cars no more than the names that a plan gives its steps and circuits.
 */
@NullMarked
package org.loomproof.pages.work;

import org.jspecify.annotations.NullMarked;
