/** Writing files as text, with help while writing. */
package org.washwright.editing.text;
