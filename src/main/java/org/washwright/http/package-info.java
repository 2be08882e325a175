/** What all addresses of the API share: pages of a list, entity tags and the conditions built on them, size limits. */
package org.washwright.http;
