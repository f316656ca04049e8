/** Requests and answers: the one list of routes, what every request must pass, and a class for each group of pages. */
@NullMarked
package org.loomproof.pages.web;

import org.jspecify.annotations.NullMarked;
