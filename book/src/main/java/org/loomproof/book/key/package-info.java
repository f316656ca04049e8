/**
 * From a passphrase to the seal on a single value: stretching, keys that wrap keys, sealed bytes, and blind search words.
 *
 * <p>It knows ciphers and nothing of what is kept.
 */
@NullMarked
package org.loomproof.book.key;

import org.jspecify.annotations.NullMarked;
