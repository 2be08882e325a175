package org.washwright.rulebook;

/**
 * That a file of a draft was stored.
 *
 * @param path its name within the edition
 * @param tag names this state of it; the next change is made against it
 * @param textHash hash of all files of the draft with this one
 * @param version counts changes of the draft, as in its ETag
 */
public record Saved(String path, String tag, String textHash, int version) {}
