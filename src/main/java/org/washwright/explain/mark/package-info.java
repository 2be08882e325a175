/** What readers object to: a statement of an answer, the rules behind it, and what is wrong with it. */
package org.washwright.explain.mark;
