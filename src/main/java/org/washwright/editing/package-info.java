/** Writing the files of a draft in a browser; one package for each way of writing. */
package org.washwright.editing;
