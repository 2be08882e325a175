/** Cleaning tasks and their assessments: described in a page, a file or by REST, answered by the current edition. */
package org.washwright.casework;
