/** Decision tables as a grid, by page and for programs. */
package org.washwright.editing.table;
