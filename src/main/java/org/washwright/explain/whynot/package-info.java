/** Why not: what keeps a rule from firing or a process from standing, by the rule tree and plain loops. */
package org.washwright.explain.whynot;
