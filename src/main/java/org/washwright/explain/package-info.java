/** Explains answers: why, why not, what would change them, what to find out, how they came about, and whether they hold. */
package org.washwright.explain;
