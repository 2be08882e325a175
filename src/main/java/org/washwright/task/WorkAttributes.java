package org.washwright.task;

import static org.washwright.task.Attribute.computed;
import static org.washwright.task.Attribute.essential;
import static org.washwright.task.Attribute.further;
import static org.washwright.task.FieldType.code;
import static org.washwright.task.FieldType.flag;
import static org.washwright.task.FieldType.number;
import static org.washwright.task.FieldType.term;

import java.util.List;
import org.washwright.quantity.Dimension;

/** What can be said of the work: the soil, the lot, what comes before and after, and how clean it has to be. */
final class WorkAttributes {

    static final List<Attribute> SOILS = List.of(
            essential("kind", "soil", "What has to come off?", term("soil")),
            essential("amount", "amount", "How much is on the surface?", number(Dimension.AREAL_MASS)),
            essential("state", "state", "In what state is it?", term("soil-state")),
            further("age", "age", "How long has it been on the part?", number(Dimension.TIME)),
            further("chlorinated", "chlorinated additive", "Does it hold chlorinated additives?", flag()),
            further("sulphurised", "sulphurised additive", "Does it hold sulphurised additives?", flag()),
            further("silicate", "silicate", "Does it hold silicate?", flag()),
            further("silicone", "silicone", "Does it hold silicone?", flag()),
            further("pigment", "pigment", "Does it hold graphite, chalk or other pigment?", flag()),
            further("abrasive", "abrasive", "Does it hold abrasive grain?", flag()),
            computed(
                    "filmThickness",
                    "mean thickness of the film",
                    "How much is on the surface?",
                    number(Dimension.FINE_LENGTH)),
            computed(
                    "load",
                    "soil an hour",
                    "How much soil comes in an hour (amount, area, parts an hour)?",
                    number(Dimension.MASS_RATE)),
            computed(
                    "loadPerShift",
                    "soil a shift",
                    "How much soil comes in a shift (amount, area, parts an hour)?",
                    number(Dimension.MASS)));

    static final List<Attribute> LOT = List.of(
            essential("charging", "charging", "How do the parts come to the plant?", term("charging")),
            essential("place", "place of the plant", "Where does the plant stand?", term("place")),
            further("size", "parts in a lot", "How many parts are in one lot?", number(Dimension.RATIO)),
            further("mass", "mass of a lot", "What does one lot weigh?", number(Dimension.MASS)));

    static final List<Attribute> PRECEDING = List.of(
            essential("operation", "preceding operation", "What was done to it last?", term("preceding-operation")),
            further(
                    "delay",
                    "time since that operation",
                    "How long does it wait before it is cleaned?",
                    number(Dimension.TIME)),
            further(
                    "particleCode",
                    "particles found now",
                    "Which component cleanliness code does it have before cleaning?",
                    code(FieldType.Code.COMPONENT_CLEANLINESS)));

    static final List<Attribute> FOLLOWING = List.of(
            essential("operation", "following operation", "What happens next?", term("operation")),
            further(
                    "delay",
                    "time until that operation",
                    "How long does it wait after cleaning?",
                    number(Dimension.TIME)));

    static final List<Attribute> DEMAND = List.of(
            further("grade", "grade of cleaning", "Which grade of cleaning is wanted?", term("cleanliness-grade")),
            essential("residue", "residual film", "How much film may remain?", number(Dimension.AREAL_MASS)),
            essential("waterBreakFree", "water-break-free", "Must the surface be water-break-free?", flag()),
            essential(
                    "particleCode",
                    "component cleanliness code",
                    "Which component cleanliness code is agreed?",
                    code(FieldType.Code.COMPONENT_CLEANLINESS)),
            further(
                    "productLevel",
                    "product cleanliness level",
                    "Which product cleanliness level is agreed, such as 200B?",
                    code(FieldType.Code.PRODUCT_CLEANLINESS)),
            further(
                    "particleLimit",
                    "largest particle allowed",
                    "Which particle size is no longer allowed?",
                    number(Dimension.FINE_LENGTH)),
            further(
                    "contactAngle",
                    "contact angle of water",
                    "How large may the contact angle of water be?",
                    number(Dimension.ANGLE)),
            further(
                    "contactAngleDiiodomethane",
                    "contact angle of diiodomethane",
                    "How large may the contact angle of diiodomethane be?",
                    number(Dimension.ANGLE)),
            further("ionic", "ionic residue", "How much salt may remain (as NaCl)?", number(Dimension.AREAL_MASS)),
            further("spotFree", "free of spots", "Must it dry without spots?", flag()),
            further("biological", "biological demand", "How far must germs be taken off?", term("biological-demand")),
            further(
                    "corrosionProtection",
                    "corrosion protection",
                    "How long must it stay free of rust?",
                    number(Dimension.TIME)),
            further("appearance", "appearance", "How must it look?", term("appearance")),
            computed(
                    "largestParticle",
                    "smallest particle forbidden",
                    "Which particle size is no longer allowed?",
                    number(Dimension.FINE_LENGTH)),
            computed(
                    "finestParticle",
                    "smallest particle counted",
                    "From which particle size on is counted?",
                    number(Dimension.FINE_LENGTH)),
            computed(
                    "particlesMet",
                    "particles found now meet the demand",
                    "Which component cleanliness codes are found now and agreed?",
                    flag()),
            computed(
                    "fineParticlesAllowed",
                    "particles of 5 µm and more allowed on 0.1 m²",
                    "Which product cleanliness level is agreed?",
                    number(Dimension.RATIO)),
            computed(
                    "strictestResidue",
                    "strictest limit on film",
                    "How much film may remain?",
                    number(Dimension.AREAL_MASS)),
            computed(
                    "adhesion",
                    "work of adhesion of water",
                    "How large may the contact angle of water be?",
                    number(Dimension.SURFACE_TENSION)),
            computed(
                    "surfaceEnergy",
                    "surface energy",
                    "How large may the contact angles of water and diiodomethane be?",
                    number(Dimension.SURFACE_TENSION)));

    private WorkAttributes() {}
}
