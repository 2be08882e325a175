package org.washwright.impact.meaning;

/**
 * One thing that differs.
 *
 * @param what what it is: {@code condition}, {@code says}, {@code title}, the name of a property ...
 * @param before in the earlier edition; empty when it was not there
 * @param after in the later one; empty when it is not there
 * @param answers whether an answer can turn on it; else it is wording
 */
public record Detail(String what, String before, String after, boolean answers) {}
