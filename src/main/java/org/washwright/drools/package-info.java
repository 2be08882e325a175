/** The only user of Drools: rule text to what its author wrote, and rule tree to compiled rules. */
package org.washwright.drools;
