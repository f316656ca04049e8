/** What the shop keeps of a job: the car as it was fitted. It holds hidden places and never goes to a customer. */
@NullMarked
package org.loomproof.papers.record;

import org.jspecify.annotations.NullMarked;
