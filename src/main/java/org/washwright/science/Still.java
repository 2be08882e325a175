package org.washwright.science;

/**
 * What a still gives back of a dirty solvent: {@code recovered = F (1 - xf / xb)}, {@code bottoms = F xf / xb}, by the
 * balance of the soil, none of which goes over.
 *
 * <p>F feed in kg/s, kg, m³/s or m³, the answer in the same; xf share of soil in the feed, xb in what is drawn off
 * below. Oils with light ends go over in part: the distillate is then not clean. Boiling off further than the soil can
 * bear cracks it; the maker's sheet of the still says how far.
 */
public final class Still {

    private Still() {}

    /**
     * Clean solvent, in the unit of the feed.
     *
     * @throws RefusedInput for a negative feed, a share outside 0 to 1 or bottoms with less soil than the feed
     */
    public static Estimate recovered(double feed, double soilInFeed, double soilInBottoms) {
        return Estimate.of(feed * (1 - left(feed, soilInFeed, soilInBottoms)));
    }

    /**
     * What is drawn off below, in the unit of the feed.
     *
     * @throws RefusedInput as {@link #recovered}
     */
    public static Estimate bottoms(double feed, double soilInFeed, double soilInBottoms) {
        return Estimate.of(feed * left(feed, soilInFeed, soilInBottoms));
    }

    private static double left(double feed, double soilInFeed, double soilInBottoms) {
        Need.notNegative(feed, "feed of the still", "");
        Need.between(soilInFeed, 0, 1, "share of soil in the feed", "");
        Need.positive(soilInBottoms, "share of soil in the bottoms", "");
        Need.between(soilInBottoms, 0, 1, "share of soil in the bottoms", "");
        if (soilInBottoms < soilInFeed) {
            throw Need.refused(
                    soilInBottoms,
                    "share of soil in the bottoms",
                    "",
                    "the feed has " + soilInFeed + " and boiling only adds to it; give a larger share");
        }
        return soilInFeed / soilInBottoms;
    }
}
