/** Published correlations and codes, one class each, with source, validity and what happens outside it. */
package org.washwright.science;
