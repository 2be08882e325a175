package org.washwright.line.sizing;

import static org.washwright.quantity.Dimension.AIR_FLOW;
import static org.washwright.quantity.Dimension.AREA;
import static org.washwright.quantity.Dimension.AREAL_MASS;
import static org.washwright.quantity.Dimension.AREAL_MASS_RATE;
import static org.washwright.quantity.Dimension.CONCENTRATION;
import static org.washwright.quantity.Dimension.CONDUCTIVITY;
import static org.washwright.quantity.Dimension.DENSITY;
import static org.washwright.quantity.Dimension.FINE_LENGTH;
import static org.washwright.quantity.Dimension.FLOW_PER_AREA;
import static org.washwright.quantity.Dimension.LATENT_HEAT;
import static org.washwright.quantity.Dimension.LENGTH;
import static org.washwright.quantity.Dimension.LOW_PRESSURE;
import static org.washwright.quantity.Dimension.MASS;
import static org.washwright.quantity.Dimension.MASS_RATE;
import static org.washwright.quantity.Dimension.MONEY;
import static org.washwright.quantity.Dimension.POWER;
import static org.washwright.quantity.Dimension.PRESSURE;
import static org.washwright.quantity.Dimension.PRICE_PER_ENERGY;
import static org.washwright.quantity.Dimension.PRICE_PER_MASS;
import static org.washwright.quantity.Dimension.PRICE_PER_TIME;
import static org.washwright.quantity.Dimension.PRICE_PER_VOLUME;
import static org.washwright.quantity.Dimension.RATE;
import static org.washwright.quantity.Dimension.RATIO;
import static org.washwright.quantity.Dimension.SHARE;
import static org.washwright.quantity.Dimension.SPECIFIC_HEAT;
import static org.washwright.quantity.Dimension.TEMPERATURE;
import static org.washwright.quantity.Dimension.TIME;
import static org.washwright.quantity.Dimension.VELOCITY;
import static org.washwright.quantity.Dimension.VOLUME;
import static org.washwright.quantity.Dimension.VOLUME_PER_AREA;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.quantity.Dimension;

/** What lines are sized by, and what each measures: an edition that states it has to state it so. */
public final class SizingInputs {

    private static final Map<String, Dimension> ASSUMPTIONS = new TreeMap<>(Map.ofEntries(
            Map.entry("operating-point", SHARE),
            Map.entry("basket-volume", VOLUME),
            Map.entry("part-box", SHARE),
            Map.entry("basket-mass", MASS),
            Map.entry("basket-area", AREA),
            Map.entry("basket-own-mass", MASS),
            Map.entry("availability", SHARE),
            Map.entry("transfer-time", TIME),
            Map.entry("handling-time", TIME),
            Map.entry("hours-per-year", TIME),
            Map.entry("hours-per-shift", TIME),
            Map.entry("drag-out", VOLUME_PER_AREA),
            Map.entry("drain-time", TIME),
            Map.entry("drip-rate", RATE),
            Map.entry("drip-share", RATIO),
            Map.entry("rinse-ratio", RATIO),
            Map.entry("rinse-water-limit", VOLUME_PER_AREA),
            Map.entry("sound-load", SHARE),
            Map.entry("tank-mass", DENSITY),
            Map.entry("soil-taken", SHARE),
            Map.entry("separator-turnover", RATE),
            Map.entry("separator-efficiency", SHARE),
            Map.entry("longest-bath-life", TIME),
            Map.entry("bath-oil-limit", CONCENTRATION),
            Map.entry("oil-drop", FINE_LENGTH),
            Map.entry("part-temperature-in", TEMPERATURE),
            Map.entry("hall-temperature", TEMPERATURE),
            Map.entry("hall-humidity", SHARE),
            Map.entry("hall-draught", VELOCITY),
            Map.entry("supply-temperature", TEMPERATURE),
            Map.entry("heat-up-time", TIME),
            Map.entry("heating-efficiency", SHARE),
            Map.entry("insulation", LENGTH),
            Map.entry("part-specific-heat", SPECIFIC_HEAT),
            Map.entry("fan-pressure", LOW_PRESSURE),
            Map.entry("fan-efficiency", SHARE),
            Map.entry("mixing-factor", RATIO),
            Map.entry("solvent-oil-limit", SHARE),
            Map.entry("still-bottoms-oil", SHARE),
            Map.entry("open-solvent-loss", AREAL_MASS_RATE),
            Map.entry("electricity-price", PRICE_PER_ENERGY),
            Map.entry("water-price", PRICE_PER_VOLUME),
            Map.entry("waste-water-price", PRICE_PER_VOLUME),
            Map.entry("waste-price", PRICE_PER_MASS),
            Map.entry("product-price", PRICE_PER_MASS),
            Map.entry("solvent-price", PRICE_PER_MASS),
            Map.entry("gas-price", PRICE_PER_MASS),
            Map.entry("wage", PRICE_PER_TIME),
            Map.entry("interest", SHARE),
            Map.entry("plant-life", TIME),
            Map.entry("maintenance", SHARE),
            Map.entry("plant-base-price", MONEY),
            Map.entry("planning-share", SHARE),
            Map.entry("priced-basket", VOLUME),
            Map.entry("price-exponent", RATIO)));

    private static final Map<String, Dimension> PROPERTIES = new TreeMap<>(Map.ofEntries(
            Map.entry("station/bathRatio", RATIO),
            Map.entry("station/bathDepth", LENGTH),
            Map.entry("station/openShare", SHARE),
            Map.entry("station/exhaust", FLOW_PER_AREA),
            Map.entry("station/boothAir", AIR_FLOW),
            Map.entry("station/solventLoss", MASS_RATE),
            Map.entry("station/power", POWER),
            Map.entry("station/price", MONEY),
            Map.entry("station/pressure", LOW_PRESSURE),
            Map.entry("station/efficiency", SHARE),
            Map.entry("water/price", PRICE_PER_VOLUME),
            Map.entry("water/conductivity", CONDUCTIVITY),
            Map.entry("stage/tanks", RATIO),
            Map.entry("stage/dilution", RATIO),
            Map.entry("stage/blowsOff", SHARE),
            Map.entry("medium/specificHeat", SPECIFIC_HEAT),
            Map.entry("medium/latentHeat", LATENT_HEAT),
            Map.entry("medium/price", PRICE_PER_MASS),
            Map.entry("medium/titration", CONCENTRATION),
            Map.entry("technique/nozzlePressure", PRESSURE),
            Map.entry("technique/nozzleDiameter", LENGTH),
            Map.entry("technique/boreSpeed", VELOCITY),
            Map.entry("substrate/specificHeat", SPECIFIC_HEAT),
            Map.entry("shape/dragOut", VOLUME_PER_AREA),
            Map.entry("charging/dragOut", VOLUME_PER_AREA),
            Map.entry("charging/partsAtOnce", RATIO),
            Map.entry("test-method/detects", MASS),
            Map.entry("test-method/detectsOnArea", AREAL_MASS),
            Map.entry("test-method/detectsSize", FINE_LENGTH),
            Map.entry("test-method/every", TIME),
            Map.entry("bath-check/every", TIME)));

    private SizingInputs() {}

    /** What an assumption measures; empty for one that no line is sized by. */
    public static Optional<Dimension> ofAssumption(String id) {
        return Optional.ofNullable(ASSUMPTIONS.get(id));
    }

    /** What a property of the terms of a kind measures; empty for one that no line is sized by. */
    public static Optional<Dimension> ofProperty(String kind, String property) {
        return Optional.ofNullable(PROPERTIES.get(kind + "/" + property));
    }

    /** Ids of all assumptions that lines are sized by. */
    public static java.util.Set<String> assumptions() {
        return java.util.Collections.unmodifiableSet(ASSUMPTIONS.keySet());
    }
}
