/** What physics says of a process and what it meets: one class per formula, each with inputs, formula and source. */
package org.washwright.engine.contact;
