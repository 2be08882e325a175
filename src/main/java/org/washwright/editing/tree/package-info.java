/** Question trees as a picture, as forms, and played. */
package org.washwright.editing.tree;
