/** Washwright: from a parts-cleaning task to defensible cleaning processes, with every reason shown. */
package org.washwright;
