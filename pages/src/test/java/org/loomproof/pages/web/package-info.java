@NullMarked
package org.loomproof.pages.web;

import org.jspecify.annotations.NullMarked;
