/** What the page templates need beyond plain data: shapes, numbers in words, and look-ups in an answer. */
package org.washwright.pages;
