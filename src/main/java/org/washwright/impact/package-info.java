/** What a change of a rulebook does: two editions compared by meaning, and tasks answered by both. */
package org.washwright.impact;
