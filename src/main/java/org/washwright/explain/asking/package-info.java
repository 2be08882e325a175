/** What to find out next: how the answer depends on each thing that is not known. */
package org.washwright.explain.asking;
