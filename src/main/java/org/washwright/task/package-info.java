/** The cleaning task: what can be said of it, and what is known, in a range, unknown or not applicable. */
package org.washwright.task;
