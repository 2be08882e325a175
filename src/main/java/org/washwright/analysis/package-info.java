/** Looks for faults between rules, each with a proof or with a task that shows it, and proposes cases for every rule. */
package org.washwright.analysis;
