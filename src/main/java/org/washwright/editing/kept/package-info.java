/** Answers kept as reference cases of a draft, by one action. */
package org.washwright.editing.kept;
