package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Sizing of lines and weights against Python's iapws, numpy and scipy, which start from balances and definitions. */
class LineIndependentToolsIT {

    private final List<String> requests = new ArrayList<>();
    private final List<Double> found = new ArrayList<>();

    private void ask(double ours, String name, double... arguments) {
        requests.add(
                name + " " + Arrays.stream(arguments).mapToObj(Double::toString).collect(Collectors.joining(" ")));
        found.add(ours);
    }

    private void agree(double relative, double absolute) {
        List<Double> expected = Tool.python(requests);
        for (int i = 0; i < found.size(); i++) {
            assertEquals(
                    expected.get(i), found.get(i), relative * Math.abs(expected.get(i)) + absolute, requests.get(i));
        }
    }

    /** IAPWS-IF97 against the auxiliary equations and Clapeyron: other equations for all three of its parts. */
    @Test
    void latentHeatsAreThoseOfIapws() {
        for (double t = 273.16; t < 620; t += 6.7) {
            ask(WaterLatentHeat.at(t).value(), "latent-heat", t);
        }
        agree(1e-3, 0);
    }

    @Test
    void saturatedAirIsThatOfIapws() {
        for (double t = 274; t < 363; t += 4.5) {
            ask(HumidAir.saturated(t, 101_325).value(), "saturated-air", t, 101_325);
            ask(HumidAir.saturated(t, 90_000).value(), "saturated-air", t, 90_000);
        }
        agree(2e-3, 0);
    }

    @Test
    void rinsesAreThoseOfNumpyAndScipy() {
        Random random = new Random(301);
        for (int i = 0; i < 40; i++) {
            int tanks = 1 + random.nextInt(5);
            double dilution = 2 + StrictMath.exp(random.nextDouble() * 10);
            ask(RinseDilution.waterRatio(dilution, tanks).value(), "water-ratio", dilution, tanks);
            double ratio = 0.1 + random.nextDouble() * 30;
            ask(1 / RinseDilution.counterCurrent(ratio, tanks).value(), "last-rinse", ratio, tanks);
            double dragOut = random.nextDouble() * 1e-5;
            double water = random.nextDouble() * 1e-4;
            double time = random.nextDouble() * 20_000;
            ask(
                    UnsteadyRinse.concentration(50, 3, dragOut, water, 0.4, time)
                            .value(),
                    "rinse",
                    50,
                    3,
                    dragOut,
                    water,
                    0.4,
                    time);
            ask(StaticRinse.concentration(50, dragOut, time, 0.4).value(), "rinse", 50, 0, dragOut, 0, 0.4, time);
            ask(DripCurve.retained(0.02, 0.1, 0.08, time / 200).value(), "drip", 0.02, 0.1, 0.08, time / 200);
        }
        agree(1e-7, 1e-9);
    }

    @Test
    void bathsAreThoseOfScipy() {
        Random random = new Random(302);
        for (int i = 0; i < 40; i++) {
            double load = 1e-5 + random.nextDouble() * 1e-4;
            double stream = random.nextDouble() * 1e-5;
            double share = random.nextDouble();
            double time = random.nextDouble() * 1e5;
            ask(
                    BathContamination.concentration(2, 0.3, load, stream, share, time)
                            .value(),
                    "bath",
                    2,
                    0.3,
                    load,
                    stream,
                    share,
                    time);
            double limit = 0.3 + 0.9 * random.nextDouble() * (load / (stream * share) - 0.3);
            ask(
                    BathContamination.timeToLimitWithSideStream(2, limit, 0.3, load, stream, share)
                            .value(),
                    "bath-time",
                    2,
                    limit,
                    0.3,
                    load,
                    stream,
                    share);
        }
        agree(1e-8, 0);
    }

    @Test
    void boresAndAnnuitiesAreThoseOfScipy() {
        Random random = new Random(303);
        for (int i = 0; i < 30; i++) {
            double diameter = 1e-4 + random.nextDouble() * 5e-3;
            double flow = random.nextDouble() * 1e-6;
            ask(
                    PipeFlow.laminarPressureDrop(1e-3, 0.3, flow, diameter).value(),
                    "bore-pressure",
                    1e-3,
                    0.3,
                    flow,
                    diameter);
            double interest = random.nextDouble() * 0.2;
            int years = 1 + random.nextInt(25);
            ask(Annuity.factor(interest, years).value(), "annuity", interest, years);
        }
        agree(1e-9, 0);
    }

    @Test
    void weightsAreTheEigenvectorsOfNumpy() {
        Random random = new Random(304);
        for (int i = 0; i < 30; i++) {
            int n = 2 + random.nextInt(8);
            double[][] matrix = new double[n][n];
            for (int row = 0; row < n; row++) {
                matrix[row][row] = 1;
                for (int column = row + 1; column < n; column++) {
                    matrix[row][column] = StrictMath.exp(random.nextGaussian());
                    matrix[column][row] = 1 / matrix[row][column];
                }
            }
            PairwiseWeights weights = PairwiseWeights.of(matrix);
            double[] flat =
                    Arrays.stream(matrix).flatMapToDouble(Arrays::stream).toArray();
            for (int part = -1; part < n; part++) {
                double[] arguments = new double[flat.length + 1];
                arguments[0] = part;
                System.arraycopy(flat, 0, arguments, 1, flat.length);
                ask(part < 0 ? weights.lambda() : weights.weights().get(part), "principal", arguments);
            }
        }
        agree(1e-9, 0);
    }

    /**
     * scipy cuts the triangle of weightings along straight lines and measures the pieces; we draw: within four standard
     * deviations.
     */
    @Test
    void firstRanksAreTheAreasThatScipyMeasures() {
        Random random = new Random(305);
        int draws = 20_000;
        for (int i = 0; i < 12; i++) {
            double[][] scores = new double[3 + random.nextInt(3)][];
            for (int k = 0; k < scores.length; k++) {
                scores[k] = random.doubles(3).toArray();
            }
            double[] shares = FirstRankShare.of(scores, i, draws);
            double[] flat =
                    Arrays.stream(scores).flatMapToDouble(Arrays::stream).toArray();
            for (int k = 0; k < scores.length; k++) {
                double[] arguments = new double[flat.length + 1];
                arguments[0] = k;
                System.arraycopy(flat, 0, arguments, 1, flat.length);
                ask(shares[k], "first-share", arguments);
            }
        }
        agree(0, 4 * StrictMath.sqrt(0.25 / draws));
    }
}
