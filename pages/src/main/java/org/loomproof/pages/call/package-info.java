/** The first call: a few questions about a vehicle and wishes, and what can be said before anybody has seen it. Knows no page. */
@NullMarked
package org.loomproof.pages.call;

import org.jspecify.annotations.NullMarked;
