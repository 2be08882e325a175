/** Feature: editions compared, what a change does to past answers, and whether that was meant. */
package org.washwright.judging;
