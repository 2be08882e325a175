package org.washwright.editing;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.washwright.rulebook.EditionView;

/**
 * A file of an edition as an editor has it open.
 *
 * @param edition the edition
 * @param path name of the file within it
 * @param tag names the state that was read
 * @param text what it says, without a byte order mark
 * @param marked whether it begins with a byte order mark, which stays
 * @param editable whether the reader may change it: a draft, and a consultant
 */
public record OpenFile(EditionView edition, String path, String tag, String text, boolean marked, boolean editable) {

    /** The path as part of an address. */
    public String query() {
        return "?file=" + URLEncoder.encode(path, StandardCharsets.UTF_8);
    }

    /** Address of an editor of this file, for instance {@code table}. */
    public String at(String editor) {
        return "/rulebooks/" + edition.id() + "/" + editor + query();
    }

    /** The name without its folder. */
    public String name() {
        return path.substring(path.lastIndexOf('/') + 1);
    }
}
