package org.washwright.task;

import static org.washwright.task.Attribute.computed;
import static org.washwright.task.Attribute.essential;
import static org.washwright.task.Attribute.further;
import static org.washwright.task.FieldType.flag;
import static org.washwright.task.FieldType.number;
import static org.washwright.task.FieldType.term;

import java.util.List;
import org.washwright.quantity.Dimension;

/** What can be said of the site: law, air, supplies, the plants that stand there, and the process one has in mind. */
final class SiteAttributes {

    static final List<Attribute> JURISDICTIONS =
            List.of(essential("law", "jurisdiction", "Which law applies at the site?", term("jurisdiction")));

    static final List<Attribute> SITE = List.of(
            essential("waterDischarge", "waste water may be discharged", "May waste water be discharged?", flag()),
            further(
                    "explosionZone",
                    "explosion-protected zone",
                    "Is there a zone made safe against explosion?",
                    term("explosion-zone")),
            further("exhaust", "exhaust air plant", "Is there an exhaust to connect to?", flag()),
            further("hallVolume", "volume of the hall", "How large is the hall?", number(Dimension.HALL_VOLUME)),
            further("airChange", "air changes of the hall", "How often is its air changed?", number(Dimension.RATE)),
            further(
                    "power",
                    "electric power to spare",
                    "How much electric power is to spare?",
                    number(Dimension.POWER)),
            further("steam", "steam", "Is there steam to heat with?", flag()),
            further("deionisedWater", "deionised water", "Is there deionised water?", flag()),
            computed(
                    "airFlow",
                    "fresh air of the hall",
                    "How large is the hall and how often is its air changed?",
                    number(Dimension.AIR_FLOW)),
            computed("asOf", "date of the question", "For which date is the law read?", number(Dimension.DATE)));

    static final List<Attribute> PERMITTED_SOLVENTS = List.of(essential(
            "solventClass", "solvent class", "Which classes of solvent may the site use?", term("solvent-class")));

    static final List<Attribute> PLANTS = List.of(
            essential("process", "plant in place", "Which cleaning plant stands there already?", term("process")),
            further(
                    "spareArea",
                    "area it can still take",
                    "How much area an hour is free?",
                    number(Dimension.AREA_RATE)),
            further(
                    "largestPart",
                    "longest part it takes",
                    "How long may a part be that goes in?",
                    number(Dimension.LENGTH)));

    static final List<Attribute> INTENDED = List.of(
            essential("process", "intended process", "Which process do you have in mind?", term("process")),
            further("temperature", "intended temperature", "At which temperature?", number(Dimension.TEMPERATURE)),
            further("time", "intended time", "For how long?", number(Dimension.TIME)),
            further("ph", "intended pH", "At which pH?", number(Dimension.PH)),
            further(
                    "concentration",
                    "intended concentration",
                    "At which concentration?",
                    number(Dimension.CONCENTRATION)),
            further(
                    "frequency",
                    "intended ultrasonic frequency",
                    "At which ultrasonic frequency?",
                    number(Dimension.FREQUENCY)),
            further(
                    "currentDensity",
                    "intended current density",
                    "At which current density?",
                    number(Dimension.CURRENT_DENSITY)));

    private SiteAttributes() {}
}
