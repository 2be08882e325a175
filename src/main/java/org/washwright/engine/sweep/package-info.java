/** Runs the rules of an edition over many tasks: the rule tree made into an index once, so that a task pays for what it touches. */
package org.washwright.engine.sweep;
