/** Process lines: composing stages, closing windows, grading. */
package org.washwright.line;
