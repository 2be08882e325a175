/** The program as a library: open an edition once, answer tasks from any number of threads. */
package org.washwright.library;
