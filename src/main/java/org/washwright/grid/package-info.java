/** Which processes stand for which kinds of work: a table over groups of terms. */
package org.washwright.grid;
