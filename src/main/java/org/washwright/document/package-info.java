/** Reading YAML and JSON with the place of every value kept, and diagnostics that name value, place and advice. */
package org.washwright.document;
