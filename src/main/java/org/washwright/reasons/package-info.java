/** Pages and REST over explanations: comparing answers, trying other values, keeping variants. */
package org.washwright.reasons;
