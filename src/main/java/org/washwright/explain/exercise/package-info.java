/** Exercises: a task whose answer is predicted and then compared, reason by reason. */
package org.washwright.explain.exercise;
