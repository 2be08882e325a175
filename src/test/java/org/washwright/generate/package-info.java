/** Editions, rules and tasks made up by fixed seeds, and the starter rulebook read once, for tests of the core. */
package org.washwright.generate;
