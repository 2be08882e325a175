/** Exercises for those who learn: set from kept answers, predicted, and compared reason by reason. */
package org.washwright.training;
