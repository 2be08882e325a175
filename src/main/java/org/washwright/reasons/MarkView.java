package org.washwright.reasons;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.washwright.casework.TaskView;

/**
 * A mark on a reason.
 *
 * @param id its id
 * @param assessmentId the answer it was made on
 * @param taskId the task answered
 * @param taskTitle what that was called then
 * @param editionId the edition that answered
 * @param at JSON pointer of the statement in the answer
 * @param said the statement
 * @param rules ids of the rules behind it
 * @param because what is wrong with it
 * @param state {@code open}, {@code will change} or {@code stands}
 * @param reply what the consultant says to it
 * @param made who made it and when
 * @param changed who changed it last and when
 * @param version counts its changes, as in its ETag
 */
record MarkView(
        UUID id,
        UUID assessmentId,
        UUID taskId,
        String taskTitle,
        UUID editionId,
        String at,
        String said,
        List<String> rules,
        String because,
        String state,
        String reply,
        TaskView.Act made,
        TaskView.Act changed,
        int version) {

    /** Where the reasons of the statement stand. */
    @JsonIgnore
    public String whyUrl() {
        return "/tasks/" + taskId + "/assessments/" + assessmentId + "/why?of="
                + URLEncoder.encode(at, StandardCharsets.UTF_8);
    }

    /** True until somebody has settled it. */
    @JsonIgnore
    public boolean isOpen() {
        return state.equals(MarkState.OPEN.word());
    }
}
