package org.washwright.catalogue;

import org.washwright.task.FieldType;

/** Something the terms of a kind can say of themselves. */
public record Property(String id, String label, FieldType type) {}
