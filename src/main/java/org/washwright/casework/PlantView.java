package org.washwright.casework;

import java.util.UUID;

/**
 * A plant in a list.
 *
 * @param id its id
 * @param name what people call it
 * @param created who made it and when
 * @param changed who last changed it and when
 * @param version counts its changes, as in its ETag
 */
record PlantView(UUID id, String name, TaskView.Act created, TaskView.Act changed, int version) {}
