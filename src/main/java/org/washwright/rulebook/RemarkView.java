package org.washwright.rulebook;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.Optional;
import java.util.UUID;

/**
 * A remark of a review.
 *
 * @param id of the record
 * @param rule the rule it is about; empty when it is about the whole draft
 * @param text what was said
 * @param said by whom and when
 * @param settled who settled it and how; empty while it is open
 * @param version counts its changes, as in its ETag
 */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
public record RemarkView(
        UUID id, String rule, String text, EditionView.Act said, Optional<EditionView.Act> settled, int version) {

    /** Whether it still waits for somebody. */
    @JsonIgnore
    public boolean isOpen() {
        return settled.isEmpty();
    }
}
