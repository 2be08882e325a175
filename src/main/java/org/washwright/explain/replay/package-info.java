/** How an answer came about, step by step, out of the answer alone. */
package org.washwright.explain.replay;
