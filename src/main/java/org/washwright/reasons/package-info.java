/** Why an answer is as it is: pages and REST over the explanations of the core. */
package org.washwright.reasons;
