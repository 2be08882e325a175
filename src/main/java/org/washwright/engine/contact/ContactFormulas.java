package org.washwright.engine.contact;

import java.util.List;
import org.washwright.rule.Contact;

/** All formulas about what a process meets. */
public final class ContactFormulas {

    private static final List<ContactFormula> ON_SOIL =
            List.of(new RelativeDistance("kind", "soil"), new MeltingMargin());
    private static final List<ContactFormula> ON_MATERIAL =
            List.of(new RelativeDistance("substrate", "substrate"), new TemperatureMargin(), new MediumContactAngle());
    private static final List<ContactFormula> ON_COMPONENT =
            List.of(new RelativeDistance("substrate", "substrate"), new TemperatureMargin());
    private static final List<ContactFormula> IN_FEATURE = List.of(
            new SuctionIntoFeature(), new FilledShare(), new FillTime(), new CyclesToExchange(), new BubbleFit());

    private ContactFormulas() {}

    /** The formulas of a kind of meeting. */
    public static List<ContactFormula> of(Contact contact) {
        return switch (contact) {
            case ON_SOIL -> ON_SOIL;
            case ON_MATERIAL -> ON_MATERIAL;
            case ON_COMPONENT -> ON_COMPONENT;
            case IN_FEATURE -> IN_FEATURE;
        };
    }
}
