package org.washwright.explain.proof;

/**
 * One thing that an answer states and that does not follow.
 *
 * @param step the step of the derivation it belongs to
 * @param at JSON pointer in the answer
 * @param about what stands there, in words
 * @param stated what the answer states, as JSON; empty when it states nothing there
 * @param derived what follows instead, as JSON; empty when nothing does
 */
public record Breach(Step step, String at, String about, String stated, String derived) {}
