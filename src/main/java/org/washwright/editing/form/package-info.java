/** Terms, attributes, sources, assumptions and the grading as forms. */
package org.washwright.editing.form;
