/** Reference cases: tasks with the outcome an edition must give, their reading and their running. */
package org.washwright.cases;
