/** Units at the edges, SI inside. Conversions are exact and rounded once; a temperature is no temperature difference. */
package org.washwright.quantity;
