/** Changing one entry of a YAML text while every other byte stays as it is. */
package org.washwright.document.edit;
