package org.washwright.assessment;

import org.junit.jupiter.api.Test;
import org.washwright.generate.Starter;

class WantedTest {
    @Test
    void look() {
        for (String yaml : new String[] {
            "title: x",
            "title: x\nmaterials: [{substrate: carbon-steel}]\nsoils: [{kind: drawing-fat}]\nfollowing: {operation: electroplating}",
            "title: x\nmaterials: [{}]\nsoils: {open: yes, list: [{}]}",
            "title: x\nmaterials: [{substrate: aluminium-wrought}]\nfeatures: []\nsoils: [{kind: cutting-oil, amount: 3 g/m2, state: fluid}]\nfollowing: {operation: assembly}\nlot: {charging: basket, place: central}"
        }) {
            Wanted w = Starter.interpreted().wanted(Starter.task(yaml), Starter.WISHES);
            System.out.println("=== " + yaml);
            w.first().forEach(f -> System.out.println("FIRST " + f));
            new java.util.TreeMap<>(w.notes())
                    .forEach((r, n) -> System.out.println(r + " -> " + n.kind() + ": " + n.text()));
        }
    }
}
