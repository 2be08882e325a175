/** Problem details (RFC 9457): how every refused or failed request is answered. Used by all features. */
package org.washwright.problem;
