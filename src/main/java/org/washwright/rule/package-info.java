/** The rule tree of an edition and what can be said of it without running it: levels, hashes, readable text. */
package org.washwright.rule;
