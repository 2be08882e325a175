/** What a rule's author wrote, before it is known whether it means anything: one form for rule text and table rows. */
package org.washwright.rule.syntax;
