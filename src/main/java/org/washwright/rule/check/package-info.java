/** From what an author wrote to a rule tree that means something, or to diagnostics with place and advice. */
package org.washwright.rule.check;
