/** How far tasks exercise rules: which rules fired, and which conditions were ever seen true, false and undecided. */
package org.washwright.coverage;
