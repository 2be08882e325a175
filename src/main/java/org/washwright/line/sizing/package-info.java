/** Sizes a composed line: every figure with its formula, what it was computed from and where the formula comes from. */
package org.washwright.line.sizing;
