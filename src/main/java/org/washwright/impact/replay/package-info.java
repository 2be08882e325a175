/** Tasks answered by two editions: which answers change, how, and by which rule of the change. */
package org.washwright.impact.replay;
