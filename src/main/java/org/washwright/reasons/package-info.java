/** Explains kept answers to people and programs: why, why not, whether the proof holds, and what readers object to. */
package org.washwright.reasons;
