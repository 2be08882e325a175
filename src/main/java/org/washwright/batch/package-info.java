/** Many tasks at once: records from folders and files, answered on all cores, written in order, and taken up again. */
package org.washwright.batch;
