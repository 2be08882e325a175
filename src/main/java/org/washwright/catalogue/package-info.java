/** The terms of an edition: soils, substrates, processes, stages and all other words of the trade, with their properties. */
package org.washwright.catalogue;
