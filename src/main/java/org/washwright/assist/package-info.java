/** Help while rules are written: what may stand at a place, what a word means, what a rule says. The text may be broken. */
package org.washwright.assist;
