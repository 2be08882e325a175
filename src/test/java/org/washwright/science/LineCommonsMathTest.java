package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.analysis.solvers.LaguerreSolver;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/**
 * Sizing of lines against Apache Commons Math 3.6.1: its solvers and integrators know the balances alone, none of our
 * algebra.
 */
class LineCommonsMathTest {

    private static final BrentSolver SOLVER = new BrentSolver(1e-13, 1e-12);

    /** Laguerre's method finds all roots of a polynomial; one of them is positive. */
    @Test
    void waterForCounterCurrentTanksIsTheRootOfThePolynomial() {
        Random random = new Random(201);
        for (int i = 0; i < 60; i++) {
            int tanks = 1 + random.nextInt(5);
            double dilution = 2 + StrictMath.exp(random.nextDouble() * 10);
            double[] coefficients = new double[tanks + 1];
            Arrays.fill(coefficients, 1);
            coefficients[0] = 1 - dilution;
            double positive = Double.NaN;
            for (Complex root : new LaguerreSolver(1e-13).solveAllComplex(coefficients, 0)) {
                if (root.getReal() > 0 && Math.abs(root.getImaginary()) < 1e-9 * root.abs()) {
                    positive = root.getReal();
                }
            }
            assertEquals(positive, RinseDilution.waterRatio(dilution, tanks).value(), 1e-9 * positive);
        }
    }

    @Test
    void rinsesAreTheIntegralOfTheirBalance() {
        Random random = new Random(202);
        for (int i = 0; i < 40; i++) {
            double dragOut = random.nextDouble() * 1e-5;
            double water = random.nextDouble() * 1e-4;
            double start = random.nextDouble() * 5;
            double time = 60 + random.nextDouble() * 20_000;
            double flowing = integral(c -> (dragOut * 50 - (dragOut + water) * c) / 0.4, start, time);
            assertEquals(
                    flowing,
                    UnsteadyRinse.concentration(50, start, dragOut, water, 0.4, time)
                            .value(),
                    1e-8);
            double standing = integral(c -> dragOut * (50 - c) / 0.4, 0, time);
            assertEquals(
                    standing, StaticRinse.concentration(50, dragOut, time, 0.4).value(), 1e-8);
            double dripping = integral(v -> -0.08 * v, 1, time / 200);
            assertEquals(
                    0.02 + dripping,
                    DripCurve.retained(0.02, 1, 0.08, time / 200).value(),
                    1e-9);
        }
    }

    @Test
    void bathsAreTheIntegralOfTheirBalanceAndTimesItsRoots() {
        Random random = new Random(203);
        for (int i = 0; i < 40; i++) {
            double load = random.nextDouble() * 1e-4;
            double stream = random.nextDouble() * 1e-4;
            double start = random.nextDouble();
            double time = 600 + random.nextDouble() * 1e5;
            double end = integral(c -> (load - stream * 0.6 * c) / 2, start, time);
            assertEquals(
                    end,
                    BathContamination.concentration(2, start, load, stream, 0.6, time)
                            .value(),
                    1e-8);
            double steady = BathContamination.steadyState(load, stream, 0.6).value();
            assertEquals(0, load - stream * 0.6 * steady, 1e-16);
            if (steady > start) {
                double limit = start + (steady - start) * 0.7;
                double reached = new SimpsonIntegrator(1e-11, 0, 3, 40)
                        .integrate(1_000_000, c -> 2 / (load - stream * 0.6 * c), start, limit);
                assertEquals(
                        reached,
                        BathContamination.timeToLimitWithSideStream(2, limit, start, load, stream, 0.6)
                                .value(),
                        1e-7 * reached);
            }
        }
    }

    /** Heat that flows into a bath of 4.19 MJ/K, integrated, ends at the rise that was asked for. */
    @Test
    void theHeaterReachesTheTemperatureInTime() {
        for (double time = 600; time < 2e4; time *= 1.7) {
            double power = HeatUp.power(4.19e6, 45, time, 0.9).value();
            assertEquals(45, integral(rise -> 0.9 * power / 4.19e6, 0, time), 1e-9);
        }
    }

    @Test
    void dosedProductAndAnnuitiesAreRoots() {
        Random random = new Random(204);
        for (int i = 0; i < 40; i++) {
            double now = random.nextDouble() * 0.02;
            double wanted = now + random.nextDouble() * 0.1;
            double product = 0.2 + random.nextDouble() * 0.8;
            double added = SOLVER.solve(200, v -> (1.5 * now + v * product) / (1.5 + v) - wanted, 0, 100);
            assertEquals(added, Dosing.productVolume(1.5, now, wanted, product).value(), 1e-9);
            double interest = random.nextDouble() * 0.2;
            int years = 1 + random.nextInt(25);
            double paid = SOLVER.solve(200, p -> debt(p, interest, years), 0, 2);
            assertEquals(paid, Annuity.factor(interest, years).value(), 1e-10);
        }
    }

    private static double debt(double paid, double interest, int years) {
        double debt = 1;
        for (int i = 0; i < years; i++) {
            debt = debt * (1 + interest) - paid;
        }
        // In money of today, so that long lives stay in scale.
        return debt / StrictMath.pow(1 + interest, years);
    }

    /**
     * The flow is the integral of the parabola of velocities over the bore, and a jet's velocity the root of the
     * balance of energy.
     */
    @Test
    void boresAndJetsFollowTheirBalances() {
        for (double radius = 0.2e-3; radius < 5e-3; radius *= 1.7) {
            double r0 = radius;
            double flow = new SimpsonIntegrator()
                    .integrate(
                            100_000,
                            r -> 500 / (4 * 1e-3 * 0.3) * (r0 * r0 - r * r) * 2 * StrictMath.PI * r,
                            0,
                            radius);
            assertEquals(
                    500,
                    PipeFlow.laminarPressureDrop(1e-3, 0.3, flow, 2 * radius).value(),
                    1e-6 * 500);
            double mean = flow / (StrictMath.PI * radius * radius);
            // The slope of the parabola at the wall.
            assertEquals(
                    500 * radius / (2 * 0.3),
                    PipeFlow.laminarWallShear(1e-3, mean, 2 * radius).value(),
                    1e-6);
        }
        for (double p = 1e4; p < 1e8; p *= 3) {
            double pressure = p;
            double root = SOLVER.solve(200, v -> 998 * v * v / 2 / pressure - 1, 0, 1000);
            assertEquals(root, Jet.velocity(p, 998).value(), 1e-8);
        }
    }

    /** A drop rises where buoyancy and Stokes' drag are equal: pi d³/6 g drho = 3 pi mu d v. */
    @Test
    void oilRisesWhereBuoyancyAndDragAreEqual() {
        for (double d = 5e-6; d < 150e-6; d *= 1.5) {
            double diameter = d;
            double root = SOLVER.solve(
                    200,
                    v -> 1e9
                            * (StrictMath.PI / 6 * diameter * diameter * 9.80665 * 120
                                    - 3 * StrictMath.PI * 0.55e-3 * v),
                    0,
                    1);
            assertEquals(root, OilRise.velocity(d, 120, 0.55e-3).value(), 1e-11);
        }
    }

    /** ETB's table of open tanks through the library's own interpolator. */
    @Test
    void openTanksLieOnTheInterpolatorsLine() {
        double[] kelvin = new double[13];
        double[] btu = {130, 230, 330, 470, 615, 820, 1040, 1310, 1615, 2000, 2450, 3000, 3600};
        for (int i = 0; i < kelvin.length; i++) {
            kelvin[i] = (90 + 10 * i + 459.67) / 1.8;
        }
        var line = new LinearInterpolator().interpolate(kelvin, btu);
        for (double t = kelvin[0]; t < kelvin[12]; t += 0.37) {
            assertEquals(line.value(t) * 3.154590745, TankSurfaceLoss.total(t).value(), 1e-8);
        }
    }

    private static double integral(UnivariateFunction slope, double start, double time) {
        double[] value = {start};
        new DormandPrince853Integrator(1e-6, time, 1e-13, 1e-12)
                .integrate(
                        new FirstOrderDifferentialEquations() {
                            @Override
                            public int getDimension() {
                                return 1;
                            }

                            @Override
                            public void computeDerivatives(double t, double[] y, double[] dy) {
                                dy[0] = slope.value(y[0]);
                            }
                        },
                        0,
                        value,
                        time,
                        value);
        return value[0];
    }
}
