/** What all pages share: the frame, the style, the words for what a brief holds, the drawn insulation colours. */
@NullMarked
package org.loomproof.papers.page;

import org.jspecify.annotations.NullMarked;
