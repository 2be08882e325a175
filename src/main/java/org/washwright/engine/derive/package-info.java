/** Computed facts: one class per formula, each with inputs, formula and source. */
package org.washwright.engine.derive;
