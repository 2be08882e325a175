/**
 * Targets for coverage-guided fuzzing, one a reader. A target takes bytes and throws when a promise is broken; it knows
 * nothing of the fuzzer, so that the seeds run as plain tests.
 */
package org.washwright.fuzz;
