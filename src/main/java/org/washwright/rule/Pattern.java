package org.washwright.rule;

/**
 * One pattern of a rule.
 *
 * @param sign positive, not or exists
 * @param type fact type
 * @param condition what it demands
 */
public record Pattern(Sign sign, FactType type, Condition condition) {}
