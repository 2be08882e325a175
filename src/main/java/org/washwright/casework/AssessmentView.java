package org.washwright.casework;

import java.util.UUID;

/**
 * What stands around an answer and is no part of its hashed bytes.
 *
 * @param id its id
 * @param taskId the task answered
 * @param taskVersion version of the task at that time
 * @param editionId the edition it was answered by
 * @param requestHash hash of what was asked
 * @param answerHash hash of the answer's bytes
 * @param program build and formula-set version
 * @param created who asked and when
 */
public record AssessmentView(
        UUID id,
        UUID taskId,
        int taskVersion,
        UUID editionId,
        String requestHash,
        String answerHash,
        String program,
        TaskView.Act created) {}
