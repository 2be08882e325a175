/** Why: the part of the graph of reasons under anything that an answer says. */
package org.washwright.explain.why;
