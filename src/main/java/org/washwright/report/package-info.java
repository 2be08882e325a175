/**
 * The report of an assessment: a paper that plant makers can quote on and an auditor can follow, as printable page, PDF and
 * workbook.
 *
 * <p>Everything shown is read from the answer; nothing is computed here but lengths of bars. The same answer gives the same
 * bytes.
 */
package org.washwright.report;
