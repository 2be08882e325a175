/** What would change an answer: the smallest sets of changes that bring a process in or make another one first. */
package org.washwright.explain.change;
