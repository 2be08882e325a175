/** Turns findings and figures of lines into points, and says how firm their order is. */
package org.washwright.line.grading;
