package org.washwright.engine.sweep;

import java.util.ArrayList;
import java.util.List;

/** What patterns of the same fact type and the same own condition share. */
final class Node {

    private final int number;
    private final Check check;
    private final List<Integer> waiting = new ArrayList<>();

    Node(int number, Check check) {
        this.number = number;
        this.check = check;
    }

    /** Its number in the network, from 0. */
    int number() {
        return number;
    }

    /** What a fact has to meet by itself. */
    Check check() {
        return check;
    }

    /** Numbers of the rules that can't match before a fact gets here; a rule as often as it asks. */
    List<Integer> waiting() {
        return waiting;
    }
}
