package org.washwright.training;

import java.util.Optional;
import java.util.UUID;
import org.washwright.casework.TaskView;
import org.washwright.explain.exercise.Exercise;

/**
 * An exercise that was set. The answer it was made from is named here and is for trainers alone.
 *
 * @param id its id
 * @param assessment the answer it was made from
 * @param exercise what is asked
 * @param due day by which it is to be done, ISO 8601
 * @param created who set it and when
 */
record SetExercise(UUID id, UUID assessment, Exercise exercise, Optional<String> due, TaskView.Act created) {}
