package org.washwright.task;

import static org.washwright.task.Attribute.computed;
import static org.washwright.task.Attribute.essential;
import static org.washwright.task.Attribute.further;
import static org.washwright.task.FieldType.flag;
import static org.washwright.task.FieldType.number;
import static org.washwright.task.FieldType.term;

import java.util.List;
import org.washwright.quantity.Dimension;

/** What can be said of the part itself: its size, materials, what stays in it, and its holes and gaps. */
final class WorkpieceAttributes {

    static final List<Attribute> PART = List.of(
            essential("rate", "parts an hour", "How many parts an hour?", number(Dimension.RATE)),
            further("annualQuantity", "parts a year", "How many parts a year?", number(Dimension.ANNUAL_RATE)),
            essential("mass", "mass of one part", "What does one part weigh?", number(Dimension.MASS)),
            essential("wettedArea", "wetted area", "What surface gets wet, inside and out?", number(Dimension.AREA)),
            further("largestDimension", "largest dimension", "How long is its longest side?", number(Dimension.LENGTH)),
            further("wallThickness", "thinnest wall", "How thin is its thinnest wall?", number(Dimension.LENGTH)),
            essential("shape", "shape", "What shape is the part?", term("shape")),
            further("assembly", "state of assembly", "Is it a single piece or put together?", term("assembly")),
            computed(
                    "areaPerHour",
                    "area an hour",
                    "How many parts an hour, and what surface has one?",
                    number(Dimension.AREA_RATE)),
            computed(
                    "massPerHour",
                    "mass an hour",
                    "How many parts an hour, and what does one weigh?",
                    number(Dimension.MASS_RATE)));

    static final List<Attribute> MATERIALS = List.of(
            essential("substrate", "substrate", "What is it made of?", term("substrate")),
            essential("hardness", "hardness", "How hard is it (HRC)?", number(Dimension.ROCKWELL_C)),
            further("vickersHardness", "Vickers hardness", "How hard is it (HV)?", number(Dimension.VICKERS)),
            further("tensileStrength", "tensile strength", "What is its tensile strength?", number(Dimension.PRESSURE)),
            further("plating", "plating or layer", "Which plating or conversion layer does it carry?", term("plating")),
            further("porous", "open pores", "Does it have open pores?", flag()),
            further("heatTreatment", "heat treatment", "How was it heat-treated?", term("heat-treatment")),
            further("finish", "surface finish", "How fine is its surface?", term("surface-finish")),
            further(
                    "stress",
                    "residual stress",
                    "Is it under stress from forming, moulding or hardening?",
                    term("residual-stress")),
            computed("strength", "strength", "How hard or how strong is the material?", number(Dimension.PRESSURE)),
            computed(
                    "rockwell",
                    "hardness (computed)",
                    "How hard or how strong is the material?",
                    number(Dimension.ROCKWELL_C)));

    static final List<Attribute> COMPONENTS = List.of(
            essential(
                    "kind",
                    "component left in place",
                    "What stays in the part while it is cleaned?",
                    term("component")),
            essential("substrate", "its material", "What is that component made of?", term("substrate")),
            further("sealed", "sealed tight", "Is it sealed against liquid and vacuum?", flag()),
            further(
                    "highestTemperature",
                    "highest temperature it stands",
                    "Up to which temperature may it go?",
                    number(Dimension.TEMPERATURE)));

    static final List<Attribute> FEATURES = List.of(
            essential("kind", "kind of feature", "What kind of hole, gap or thread is it?", term("feature")),
            essential("diameter", "diameter or width", "How wide is it?", number(Dimension.LENGTH)),
            essential("depth", "depth", "How deep is it?", number(Dimension.LENGTH)),
            further("count", "how many of them", "How many of them has one part?", number(Dimension.RATIO)),
            further(
                    "mouth",
                    "where its mouth points",
                    "Where does its mouth point while the part is cleaned?",
                    term("mouth")),
            computed("slenderness", "depth over width", "How wide and how deep is it?", number(Dimension.RATIO)),
            computed(
                    "diffusionTime",
                    "time for liquid to trade places by diffusion",
                    "How deep is it?",
                    number(Dimension.TIME)),
            computed(
                    "waterHold",
                    "pressure that holds rinse water in it",
                    "How wide is it?",
                    number(Dimension.LOW_PRESSURE)),
            computed("waterRise", "height to which it holds rinse water", "How wide is it?", number(Dimension.LENGTH)));

    private WorkpieceAttributes() {}
}
