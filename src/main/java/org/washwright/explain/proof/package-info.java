/** The proof check: an answer is derived anew from its own request and held against what it states, place by place. */
package org.washwright.explain.proof;
