/** Rulebooks and their editions: drafts, review, release, and what makes a released edition ready to answer. */
package org.washwright.rulebook;
