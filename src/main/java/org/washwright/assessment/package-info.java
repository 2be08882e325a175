/** The frozen answer to one cleaning task against one edition, and its explanation as data. */
package org.washwright.assessment;
