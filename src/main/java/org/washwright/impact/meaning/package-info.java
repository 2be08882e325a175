/** Two editions compared by what they mean: what was added, taken out, changed, reworded or only moved. */
package org.washwright.impact.meaning;
