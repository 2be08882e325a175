/** Editions as folders and bundles of text: reading, checking, hashing. */
package org.washwright.exchange;
