/** Runs the rules of an edition on the facts of a task: facts with origins, three-valued logic, firings, and a plain interpreter. */
package org.washwright.engine;
