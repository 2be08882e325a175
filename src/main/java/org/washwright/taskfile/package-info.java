/** The cleaning task as a file: read from YAML, JSON, tables and workbooks, written as each of them, with templates. */
package org.washwright.taskfile;
