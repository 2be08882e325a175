package org.washwright.bench;

/** Something that runs the rules on a task. */
interface Contender {

    /**
     * Runs the rules.
     *
     * @param task number of the task
     * @return how many matches it found
     */
    int run(int task);
}
