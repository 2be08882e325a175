/** A plant and a set of cleaning tasks: which of them it can serve, what blocks the others, and how its week is filled. */
package org.washwright.plant;
