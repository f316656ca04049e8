/**
 * What the pages of the bay show and keep: a planned job's car tried out, stock and fitted side by side. Knows no request and no
 * markup of pages.
 */
@NullMarked
package org.loomproof.pages.bay;

import org.jspecify.annotations.NullMarked;
