/** Wiring: the entry point, the embedded database, security headers, health. Imported by nobody. */
package org.washwright.app;
