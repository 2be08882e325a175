/** The command line: everything that answers without a server and without a database. */
package org.washwright.cli;
