package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.washwright.science.OwensWendt.Measured;
import org.washwright.science.ProductCleanlinessLevel.AreaBasis;

/** Correlations against Apache Commons Math 3.6.1: its root finder, integrators and regression know none of our algebra. */
class CommonsMathTest {

    private static final BrentSolver SOLVER = new BrentSolver(1e-12, 1e-10);

    @Test
    void boilingPointsAreTheRootsOfTheAntoineEquation() {
        var toluene = AntoineVapourPressure.log10(9.05043, 1327.62, -55.525, 286, 410);
        for (double p = 3e3; p < 2e5; p *= 1.5) {
            double target = p;
            double root =
                    SOLVER.solve(200, t -> StrictMath.pow(10, 9.05043 - 1327.62 / (t - 55.525)) - target, 250, 500);
            assertEquals(root, toluene.boilingTemperature(p).value(), 1e-6);
        }
    }

    @Test
    void waterBoilsWhereBrentsMethodFindsIt() {
        for (double p = 1e3; p < 2e7; p *= 2) {
            double target = p;
            double root = SOLVER.solve(200, t -> WaterVapourPressure.pressure(t).value() / target - 1, 273.16, 647);
            assertEquals(root, WaterVapourPressure.boilingTemperature(p).value(), 1e-6);
        }
    }

    @Test
    void purgingIsTheIntegralOfTheBalanceOfTheRoom() {
        Random random = new Random(2);
        for (int i = 0; i < 20; i++) {
            double start = random.nextDouble() * 0.01;
            double supply = random.nextDouble() * 0.001;
            double release = random.nextDouble() * 1e-3;
            double flow = 0.1 + random.nextDouble();
            double time = 60 + random.nextDouble() * 3600;
            double[] share = {start};
            var integrator = new DormandPrince853Integrator(1e-6, 600, 1e-14, 1e-11);
            integrator.integrate(balance(supply, release, flow, 250), 0, share, time, share);
            assertEquals(
                    share[0],
                    RoomConcentration.after(start, supply, release, flow, 250, time)
                            .value(),
                    1e-9);
        }
    }

    private static FirstOrderDifferentialEquations balance(double supply, double release, double flow, double volume) {
        return new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return 1;
            }

            @Override
            public void computeDerivatives(double t, double[] share, double[] slope) {
                slope[0] = (release + flow * (supply - share[0])) / volume;
            }
        };
    }

    @Test
    void surfaceEnergyIsTheRegressionThroughSeveralLiquids() {
        Random random = new Random(4);
        List<SurfaceEnergy> liquids = List.of(
                new SurfaceEnergy(0.0218, 0.051),
                new SurfaceEnergy(0.0508, 0),
                new SurfaceEnergy(0.0293, 0.019),
                new SurfaceEnergy(0.0395, 0.0187),
                new SurfaceEnergy(0.037, 0.0264));
        for (int i = 0; i < 100; i++) {
            SurfaceEnergy solid =
                    new SurfaceEnergy(0.02 + random.nextDouble() * 0.01, 0.002 + random.nextDouble() * 0.01);
            List<Measured> measured = new ArrayList<>();
            var line = new SimpleRegression();
            for (SurfaceEnergy liquid : liquids) {
                double angle = OwensWendt.contactAngle(solid, liquid).value() + (random.nextDouble() - 0.5) * 0.04;
                measured.add(new Measured(liquid, angle));
                line.addData(
                        StrictMath.sqrt(liquid.polar() / liquid.dispersive()),
                        liquid.total() * (1 + StrictMath.cos(angle)) / (2 * StrictMath.sqrt(liquid.dispersive())));
            }
            SurfaceEnergy found = OwensWendt.solid(measured).energy();
            assertEquals(line.getSlope() * line.getSlope(), found.polar(), 1e-12);
            assertEquals(line.getIntercept() * line.getIntercept(), found.dispersive(), 1e-12);
        }
    }

    /** Young's contact angle is where the energy of a drop that covers more or less of the solid has its least: a root of the balance. */
    @Test
    void contactAnglesAreTheRootsOfTheBalance() {
        for (double solid = 0.02; solid < 0.06; solid += 0.005) {
            SurfaceEnergy s = new SurfaceEnergy(solid, 0.004);
            SurfaceEnergy water = new SurfaceEnergy(0.0218, 0.051);
            double face = OwensWendt.interfacialEnergy(s, water);
            double root = SOLVER.solve(200, a -> s.total() - face - 0.0728 * StrictMath.cos(a), 0, StrictMath.PI);
            assertEquals(root, OwensWendt.contactAngle(s, water).value(), 1e-7);
            assertEquals(root, YoungContactAngle.angle(s.total(), face, 0.0728).value(), 1e-7);
        }
    }

    @Test
    void cleanlinessLevelsAreTheRootsOfTheLaw() {
        for (double count = 50; count < 1e6; count *= 3) {
            double target = count;
            double root = SOLVER.solve(
                    500,
                    level -> StrictMath.log(ProductCleanlinessLevel.count(level, 15e-6, AreaBasis.SQUARE_FOOT)
                                    .value()
                            / target),
                    1.5,
                    3000);
            assertEquals(
                    root,
                    ProductCleanlinessLevel.level(count, 15e-6, AreaBasis.SQUARE_FOOT)
                            .value(),
                    1e-6 * root);
        }
    }

    /** Time to wet a bore is the integral of the resistance of the wetted length: dt = 4 mu L dL / (r s cos(theta)). */
    @Test
    void washburnsTimeIsTheIntegralOfTheResistance() {
        double time = new SimpsonIntegrator()
                .integrate(1000, l -> 4 * 1e-3 * l / (50e-6 * 0.03 * StrictMath.cos(0.3)), 0, 0.04);
        assertEquals(
                time, WashburnPenetration.time(50e-6, 0.03, 0.3, 1e-3, 0.04).value(), 1e-9 * time);
    }

    /** ASTM E140, table 1, from memory: between rows our conversion is the interpolator's straight line. */
    @Test
    void hardnessBetweenRowsLiesOnTheInterpolatorsLine() {
        var line = new LinearInterpolator()
                .interpolate(new double[] {238, 248, 260, 272, 286, 302}, new double[] {20, 22, 24, 26, 28, 30});
        for (double hv = 238; hv <= 302; hv += 0.5) {
            assertEquals(line.value(hv), HardnessConversion.rockwellOfVickers(hv), 1e-12);
        }
    }
}
