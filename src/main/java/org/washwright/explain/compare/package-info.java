/**
 * Two answers side by side: what was asked differently, what moved because of it and by which rules; and the changes of a task
 * that a what-if is made of.
 */
package org.washwright.explain.compare;
