package org.washwright.plant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.washwright.plant.PlantWeek.TaskOnPlant;

/** Laws that hold whatever plant and tasks are: what follows from the question needs no expected numbers. */
class PlantPropertiesTest {

    private static final int TRIES = 150;
    private static final double ROUNDING = 1e-9;

    private final Random random = new Random(12);

    private String one(String... of) {
        return of[random.nextInt(of.length)];
    }

    private String plant(String temperature, int hours) {
        return SmallPlant.PLANT
                .replace("50..70 °C", temperature)
                .replace("hours: 40 h", "hours: " + hours + " h")
                .replace("[rinse]", one("[rinse]", "[rinse, dry]", "[before, flush, rinse]"));
    }

    private List<SetTask> tasks(int count) {
        List<SetTask> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String yaml = SmallPlant.TASK
                    .replace("substrate-a", one("substrate-a", "substrate-b"))
                    .replace("soil-c", one("soil-c", "soil-b", "soil-c", "soil-a"))
                    .replace("hardness: 40 HRC", "hardness: " + one("40 HRC", "60 HRC", "40..60 HRC"))
                    .replace("spotFree: no", "spotFree: " + one("no", "no", "yes", "unknown"))
                    .replace("features: []", one("features: []", "features: [feature-a]", "features: [feature-b]"))
                    .replace("mass: 2 kg", "mass: " + one("2 kg", "1..3 kg", "7 kg", "unknown"))
                    .replace(
                            "annualQuantity: 52000 1/year",
                            one("annualQuantity: 100000 1/year", "rate: 60 1/h", "annualQuantity: 400000 1/year"));
            out.add(SetTask.of(SmallPlant.task(yaml)));
        }
        return out;
    }

    private static int fitting(PlantWeek week) {
        return (int) week.week().order().stream()
                .filter(s -> s.fits().equals("fits"))
                .count();
    }

    private static int served(PlantWeek week) {
        return (int) week.tasks().stream().filter(TaskOnPlant::isServed).count();
    }

    @Test
    void a_plant_with_more_hours_serves_and_fits_no_fewer_tasks() {
        PlantJudge judge = SmallPlant.judge();
        int moved = 0;
        for (int i = 0; i < TRIES; i++) {
            int hours = 1 + random.nextInt(80);
            String few = plant("50..70 °C", hours);
            String more = few.replace("hours: " + hours + " h", "hours: " + (hours + 1 + random.nextInt(80)) + " h");
            List<SetTask> set = tasks(4);
            PlantWeek before = judge.week(SmallPlant.plant(few), set);
            PlantWeek after = judge.week(SmallPlant.plant(more), set);
            assertEquals(served(before), served(after));
            assertTrue(fitting(before) <= fitting(after), () -> few + before + after);
            moved += fitting(after) - fitting(before);
        }
        assertTrue(moved > 0, "some plant had hours that decided something");
    }

    @Test
    void a_wider_setting_never_blocks_more() {
        PlantJudge judge = SmallPlant.judge();
        int freed = 0;
        for (int i = 0; i < TRIES; i++) {
            int low = 20 + random.nextInt(40);
            int high = low + random.nextInt(20);
            String narrow = plant(low + ".." + high + " °C", 40);
            String wide = narrow.replace(
                    low + ".." + high + " °C", (low - random.nextInt(20)) + ".." + (high + random.nextInt(30)) + " °C");
            SetTask task = tasks(1).get(0);
            TaskOnPlant before = judge.task(SmallPlant.plant(narrow), task);
            TaskOnPlant after = judge.task(SmallPlant.plant(wide), task);
            assertTrue(after.blocks().size() <= before.blocks().size(), () -> before + " " + after);
            assertTrue(!before.isServed() || after.isServed());
            freed += before.blocks().size() - after.blocks().size();
        }
        assertTrue(freed > 0, "some setting decided something");
    }

    @Test
    void one_more_task_never_lowers_the_load_and_no_task_is_no_load() {
        PlantJudge judge = SmallPlant.judge();
        for (int i = 0; i < TRIES / 3; i++) {
            Plant plant = SmallPlant.plant(plant("50..70 °C", 40));
            List<SetTask> set = tasks(4);
            double low = 0;
            int notKnown = 0;
            for (int n = 0; n <= set.size(); n++) {
                PlantWeek.Week week = judge.week(plant, set.subList(0, n)).week();
                assertTrue(week.needs().low() >= low - ROUNDING);
                assertTrue(week.notKnown() >= notKnown);
                assertTrue(week.needs().low() <= week.needs().high());
                if (n == 0) {
                    assertEquals(new PlantWeek.Range(0, 0), week.needs());
                }
                low = week.needs().low();
                notKnown = week.notKnown();
            }
        }
    }

    @Test
    void the_order_changes_what_fits_but_not_what_is_served_nor_the_sum() {
        PlantJudge judge = SmallPlant.judge();
        for (int i = 0; i < TRIES / 3; i++) {
            Plant plant = SmallPlant.plant(plant("50..70 °C", 40));
            List<SetTask> set = new ArrayList<>(tasks(4));
            PlantWeek one = judge.week(plant, set);
            java.util.Collections.reverse(set);
            PlantWeek other = judge.week(plant, set);
            assertEquals(served(one), served(other));
            assertEquals(
                    one.week().needs().high(),
                    other.week().needs().high(),
                    ROUNDING * one.week().needs().high());
        }
    }
}
