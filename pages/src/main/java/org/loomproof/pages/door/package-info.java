/**
 * Who may come in: people and their roles, sessions, how often one may try, where a request may come from, and what may be handed in.
 *
 * <p>It knows no page.
 */
@NullMarked
package org.loomproof.pages.door;

import org.jspecify.annotations.NullMarked;
