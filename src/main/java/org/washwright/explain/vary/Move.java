package org.washwright.explain.vary;

import java.util.Optional;
import org.washwright.task.Given;

/**
 * One change.
 *
 * @param place where
 * @param given the value it gets; empty where an entry goes or a list is closed
 * @param effort what it asks of a plant
 */
public record Move(Place place, Optional<Given> given, Effort effort) {}
