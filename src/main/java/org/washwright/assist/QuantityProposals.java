package org.washwright.assist;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;

/** Proposes quantities of a dimension: an example, and behind a number that is typed already the units that fit. */
final class QuantityProposals {

    private static final Pattern NUMBER = Pattern.compile("\\s*(-?[0-9]+(?:\\.[0-9]*)?(?:[eE]-?[0-9]+)?)\\s*(.*)");

    /** Units that one writes, most usual first; those that fit a dimension are told by {@link Quantities}. */
    private static final List<String> UNITS = List.of(
            "°C",
            "K",
            "°F",
            "mm",
            "cm",
            "um",
            "m",
            "in",
            "cm2",
            "m2",
            "dm2",
            "L",
            "mL",
            "m3",
            "g",
            "kg",
            "mg",
            "s",
            "min",
            "h",
            "days",
            "1/h",
            "1/min",
            "1/year",
            "g/m2",
            "mg/m2",
            "mg/1000 cm2",
            "m2/h",
            "g/h",
            "kg/h",
            "L/h",
            "L/min",
            "m3/h",
            "kPa",
            "Pa",
            "mbar",
            "bar",
            "MPa",
            "psi",
            "g/L",
            "mg/L",
            "mg/m3",
            "kg/m3",
            "g/cm3",
            "kHz",
            "Hz",
            "kW",
            "W",
            "W/L",
            "kWh",
            "A/dm2",
            "m/s",
            "L/m2",
            "uS/cm",
            "mN/m",
            "mPa s",
            "m2/s",
            "g/mol",
            "MPa^0.5",
            "%",
            "ppm",
            "°",
            "€",
            "€/kg",
            "€/m3",
            "€/kWh",
            "€/h",
            "€/m2",
            "kJ/(kg K)",
            "kJ/kg",
            "kWh/m2",
            "kg/(m2 h)",
            "m3/(h m2)",
            "HRC",
            "HV");

    private QuantityProposals() {}

    static List<Proposal> of(Dimension dimension, Range range) {
        Matcher typed = NUMBER.matcher(range.typed());
        if (!typed.matches()) {
            String example = dimension.example();
            boolean plain = dimension.isPlain() && !range.quoted();
            return List.of(Proposal.of(
                    example, plain ? example : range.quote(example), "quantity", dimension.label(), "An example."));
        }
        List<Proposal> out = new ArrayList<>();
        if (dimension.isPlain()) {
            String number = typed.group(1);
            return List.of(Proposal.of(
                    number, range.quoted() ? range.quote(number) : number, "quantity", dimension.label(), ""));
        }
        for (String unit : units(dimension)) {
            String quantity = typed.group(1) + " " + unit;
            out.add(Proposal.of(quantity, range.quote(quantity), "quantity", dimension.label(), ""));
        }
        return out;
    }

    /** Units of a dimension, the usual one first. */
    static Set<String> units(Dimension dimension) {
        Set<String> units = new LinkedHashSet<>();
        String example = dimension.example();
        int blank = example.indexOf(' ');
        if (blank > 0) {
            units.add(example.substring(blank + 1));
        }
        UNITS.stream().filter(u -> Quantities.isUnitOf(u, dimension)).forEach(units::add);
        return units;
    }
}
