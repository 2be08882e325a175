/** Editors for the files of drafts: tables as grids, question trees as pictures and forms, words and values as forms. */
package org.washwright.editing;
