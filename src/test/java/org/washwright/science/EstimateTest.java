package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What every correlation promises: nonsense is refused with its value and advice, never carried through a formula. */
class EstimateTest {

    /** Every public class whose static methods take numbers, and a number that all their arguments can be. */
    private static final Map<Class<?>, Double> CORRELATIONS = Map.ofEntries(
            Map.entry(AcousticBoundaryLayer.class, 0.5),
            Map.entry(Annuity.class, 0.5),
            Map.entry(BathContamination.class, 0.5),
            Map.entry(BlowOff.class, 0.5),
            Map.entry(CapillaryPressure.class, 0.5),
            Map.entry(ContaminationLevel.class, 0.5),
            Map.entry(DiffusionTime.class, 0.5),
            Map.entry(DilutionAir.class, 1.0),
            Map.entry(Dosing.class, 0.5),
            Map.entry(DripCurve.class, 0.5),
            Map.entry(EvaporationFromWater.class, 0.5),
            Map.entry(ExplosionDilution.class, 0.5),
            Map.entry(GasVolume.class, 0.5),
            Map.entry(HansenDistance.class, 0.5),
            Map.entry(HeatUp.class, 0.5),
            Map.entry(HumidAir.class, 300.0),
            Map.entry(Jet.class, 0.5),
            Map.entry(JurinRise.class, 0.5),
            Map.entry(MinnaertBubble.class, 0.5),
            Map.entry(OilRise.class, 0.5),
            Map.entry(PipeFlow.class, 0.5),
            Map.entry(PressureCycling.class, 0.5),
            Map.entry(ProductCleanlinessLevel.class, 1.0),
            Map.entry(ResidueLevel.class, 0.5),
            Map.entry(RimExhaust.class, 0.5),
            Map.entry(RinseDilution.class, 1.0),
            Map.entry(RoomConcentration.class, 0.5),
            Map.entry(SaturatedVapour.class, 0.5),
            Map.entry(SixTenthsRule.class, 0.5),
            Map.entry(SizeClass.class, 0.5),
            Map.entry(SolventBalance.class, 0.5),
            Map.entry(StaticRinse.class, 0.5),
            Map.entry(Still.class, 0.5),
            Map.entry(TankSurfaceLoss.class, 300.0),
            Map.entry(TankWallLoss.class, 300.0),
            Map.entry(ThroughputHeat.class, 0.5),
            Map.entry(Titration.class, 0.5),
            Map.entry(TrappedAir.class, 0.5),
            Map.entry(UltrasonicLoad.class, 0.5),
            Map.entry(UltrasonicPower.class, 0.5),
            Map.entry(UnsteadyRinse.class, 0.5),
            Map.entry(VacuumDrying.class, 0.5),
            Map.entry(VacuumFilling.class, 0.5),
            Map.entry(VapourConcentration.class, 0.5),
            Map.entry(VapourCondensation.class, 0.5),
            Map.entry(WashburnPenetration.class, 0.5),
            Map.entry(WaterDensity.class, 300.0),
            Map.entry(WaterLatentHeat.class, 300.0),
            Map.entry(WaterSurfaceTension.class, 300.0),
            Map.entry(WaterVapourPressure.class, 300.0),
            Map.entry(WaterViscosity.class, 300.0),
            Map.entry(YoungContactAngle.class, 0.5),
            Map.entry(YoungDupre.class, 0.5));

    @TestFactory
    List<DynamicTest> numbersThatAreNoneAreRefusedByName() {
        List<DynamicTest> tests = new ArrayList<>();
        CORRELATIONS.forEach((type, base) -> {
            for (Method method : type.getDeclaredMethods()) {
                boolean asked = Modifier.isPublic(method.getModifiers()) && Modifier.isStatic(method.getModifiers());
                for (int i = 0; asked && i < method.getParameterCount(); i++) {
                    if (method.getParameterTypes()[i] == double.class) {
                        int at = i;
                        tests.add(DynamicTest.dynamicTest(
                                type.getSimpleName() + "." + method.getName() + " argument " + i,
                                () -> refuses(method, at, base)));
                    }
                }
            }
        });
        assertTrue(tests.size() > 190, tests.size() + " arguments found");
        return tests;
    }

    private static void refuses(Method method, int at, double base) {
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            Object[] arguments = Arrays.stream(method.getParameterTypes())
                    .map(type -> argument(type, base))
                    .toArray();
            arguments[at] = bad;
            var thrown = assertThrows(InvocationTargetException.class, () -> method.invoke(null, arguments));
            String message = thrown.getCause().getMessage();
            assertEquals(RefusedInput.class, thrown.getCause().getClass(), message);
            assertTrue(message.contains(" is " + bad), message);
            assertTrue(message.contains("; "), message);
        }
    }

    private static Object argument(Class<?> type, double base) {
        if (type == double.class) {
            return base;
        }
        if (type == long.class) {
            return 3L;
        }
        if (type == int.class) {
            return 3;
        }
        if (type == HansenParameters.class) {
            return HansenParameters.ofMegapascal(16, 5, 5);
        }
        return type.getEnumConstants()[0];
    }

    @Test
    void anEstimateIsANumberAndKeepsItsWarningsInOrder() {
        assertThrows(IllegalArgumentException.class, () -> Estimate.of(Double.NaN));
        Estimate estimate = Estimate.of(1).warn("first").warn("second").withValue(2);
        assertEquals(2, estimate.value());
        assertEquals(List.of("first", "second"), estimate.warnings());
        assertEquals(
                List.of("other", "first", "second"),
                Estimate.of(3).warn("other").warnAs(estimate).warnings());
        Estimate next = estimate.then(v -> Estimate.of(v * 10).warn("third"));
        assertEquals(20, next.value());
        assertEquals(List.of("third", "first", "second"), next.warnings());
    }

    @Test
    void aRefusalGivesValueUnitAndAdvice() {
        var refused = assertThrows(IllegalArgumentException.class, () -> JurinRise.height(0.03, 0, 900, -0.001));
        assertEquals("radius of the bore is -0.001 m; give a number above zero", refused.getMessage());
    }
}
