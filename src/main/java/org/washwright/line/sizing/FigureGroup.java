package org.washwright.line.sizing;

/** What a figure belongs to, in the order in which a plant is thought through. */
public enum FigureGroup {
    THROUGHPUT("throughput"),
    BATHS("baths and stations"),
    WATER("rinsing and water"),
    HEAT("heat and drying"),
    AIR("air and solvent"),
    UPKEEP("bath life and waste"),
    POWER("power and people"),
    COST("cost");

    private final String word;

    FigureGroup(String word) {
        this.word = word;
    }

    /** As shown. */
    public String word() {
        return word;
    }
}
