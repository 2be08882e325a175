package org.washwright.plant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.washwright.plant.SmallPlant.PLANT;
import static org.washwright.plant.SmallPlant.TASK;
import static org.washwright.plant.SmallPlant.week;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.washwright.plant.PlantWeek.Load;
import org.washwright.plant.PlantWeek.Range;
import org.washwright.plant.PlantWeek.Reason;
import org.washwright.plant.PlantWeek.TaskOnPlant;
import org.washwright.plant.PlantWeek.Week;
import org.washwright.task.Value;

/** What one plant makes of a task, on an edition without meaning. All figures were worked by hand; the sums stand beside them. */
class PlantJudgeTest {

    private static final double EXACT = 1e-9;

    private static TaskOnPlant one(String plant, String task) {
        return week(plant, task).tasks().get(0);
    }

    private static Load load(String plant, String task) {
        return one(plant, task).load().orElseThrow();
    }

    private static void same(double expected, Optional<Range> range) {
        same(expected, expected, range);
    }

    private static void same(double low, double high, Optional<Range> range) {
        assertEquals(low, range.orElseThrow().low(), low * EXACT);
        assertEquals(high, range.orElseThrow().high(), high * EXACT);
    }

    private static Reason onlyBlock(TaskOnPlant task) {
        assertEquals("does not serve", task.verdict());
        assertEquals(1, task.blocks().size(), () -> task.blocks().toString());
        assertTrue(task.load().isEmpty(), "what is not served takes no hours");
        return task.blocks().get(0);
    }

    private static Reason onlyCondition(TaskOnPlant task) {
        assertEquals("serves if", task.verdict(), () -> task.toString());
        assertEquals(1, task.conditions().size(), () -> task.conditions().toString());
        return task.conditions().get(0);
    }

    // ---- Served, and the hours of it.

    @Test
    void a_task_that_the_plant_can_run_is_served_and_says_where_to_set_the_plant() {
        TaskOnPlant served = one(PLANT, TASK);
        assertEquals("serves", served.verdict(), () -> served.toString());
        assertEquals(List.of(), served.settings());
        // Soil B asks for at least 60 °C of a plant that runs 50 to 70 °C.
        TaskOnPlant set = one(PLANT, TASK.replace("soil-c", "soil-b"));
        assertEquals("serves", set.verdict());
        assertEquals(List.of(new Reason("temperature of tub wash: 60 to 70 °C", List.of("R-5"))), set.settings());
    }

    @Test
    void the_hours_of_a_week_are_those_worked_by_hand() {
        Load load = load(PLANT, TASK);
        // Worked by hand: 52 000 parts a year ÷ 52 weeks.
        same(1000, load.partsPerWeek());
        assertEquals("parts a year ÷ 52", load.partsFrom());
        // 50 kg ÷ 2 kg = 25 parts; 6 m² ÷ 0.05 m² = 120 parts; the smaller holds.
        same(25, load.partsInLoad());
        // 1000 ÷ 25.
        same(40, load.loads());
        // Middle of 4..6 min + 0.5 min transfer = 5.5 min in one of two chambers.
        same(2.75, load.minutesPerLoad());
        assertEquals("tub wash", load.slowest());
        // 40 × 2.75 min ÷ 60 ÷ 0.8.
        same(40 * 2.75 / 60 / 0.8, load.hours());
        assertEquals(List.of(), load.notKnown());
        assertEquals(List.of(), load.assumed());
    }

    @Test
    void the_slowest_station_is_the_dryer_when_that_holds_a_load_longest_and_its_time_is_named_as_assumed() {
        Load load = load(PLANT.replace("[rinse]", "[rinse, dry]"), TASK.replace("spotFree: no", "spotFree: yes"));
        // Worked by hand: middle of 4..8 min + 0.5 min = 6.5 min, more than 2.75 min of the chambers.
        same(6.5, load.minutesPerLoad());
        assertEquals("dry", load.slowest());
        same(40 * 6.5 / 60 / 0.8, load.hours());
        assertEquals(List.of("time of dry"), load.assumed());
    }

    @Test
    void a_stage_in_the_chamber_holds_the_chamber() {
        Load load =
                load(PLANT.replace("[rinse]", "[flush, rinse]"), TASK.replace("features: []", "features: [feature-a]"));
        // Worked by hand: 5 min + 2 min of flushing in the same chamber + 0.5 min, two chambers.
        same(7.5 / 2, load.minutesPerLoad());
    }

    @Test
    void parts_a_week_are_those_given_else_the_year_s_else_the_rate_s() {
        PlantJudge judge = SmallPlant.judge();
        Load given = judge.task(SmallPlant.plant(PLANT), new SetTask(SmallPlant.task(TASK), Value.number(30)))
                .load()
                .orElseThrow();
        same(30, given.partsPerWeek());
        assertEquals("given", given.partsFrom());
        // Worked by hand: 30 ÷ 25 are two loads, because the rest does not wait for the next week.
        same(2, given.loads());
        Load rate = load(PLANT, TASK.replace("annualQuantity: 52000 1/year", "rate: 10 1/h"));
        // 10 an hour × 40 h; 400 ÷ 25 = 16 loads.
        same(400, rate.partsPerWeek());
        same(16, rate.loads());
        assertEquals("parts an hour × hours of the plant", rate.partsFrom());
    }

    @Test
    void single_parts_go_one_by_one_and_a_basket_without_a_limit_of_area_counts_by_mass_alone() {
        same(1, load(PLANT, TASK.replace("charging-a", "charging-b")).partsInLoad());
        String open = PLANT.replace("area: 6 m2", "area: not applicable");
        same(
                25,
                load(open, TASK.replace("wettedArea: 500 cm2", "wettedArea: unknown"))
                        .partsInLoad());
    }

    @Test
    void ranges_go_through_to_the_hours() {
        Load load = load(PLANT, TASK.replace("mass: 2 kg", "mass: 2..5 kg"));
        // Worked by hand: 10 to 25 parts, so 40 to 100 loads.
        same(10, 25, load.partsInLoad());
        same(40 * 2.75 / 60 / 0.8, 100 * 2.75 / 60 / 0.8, load.hours());
    }

    // ---- Blocked.

    @Test
    void a_process_that_is_ruled_out_blocks_with_its_refusal() {
        Reason block = onlyBlock(one(PLANT, TASK.replace("soil-c", "soil-a")));
        assertEquals(new Reason("Soil A stays on.", List.of("R-3")), block);
    }

    @Test
    void a_stage_that_the_plant_lacks_blocks_with_the_reason_of_the_rule() {
        String hard = TASK.replace("hardness: 40 HRC", "hardness: 60 HRC");
        assertEquals("serves", one(PLANT, hard).verdict());
        String bare = PLANT.replace("[rinse]", "[]").replaceFirst("  rinse: .*\n", "");
        assertEquals(
                new Reason("It needs the stage rinse, which the plant lacks: Hard parts are rinsed.", List.of("R-1")),
                onlyBlock(one(bare, hard)));
    }

    @Test
    void a_window_that_the_plant_can_not_meet_blocks_with_both_ends_and_who_set_them() {
        Reason block = onlyBlock(one(PLANT, TASK.replace("substrate-a", "substrate-b")));
        assertEquals(
                new Reason(
                        "temperature of tub wash: the task needs at least 20 °C (the stage's own range) and at most 40 °C"
                                + " (Substrate B warps); the plant runs 50 to 70 °C.",
                        List.of("R-4")),
                block);
    }

    @Test
    void a_part_that_is_too_long_or_too_heavy_is_blocked() {
        assertEquals(
                "The length of a part is 700 mm; the longest part that the plant takes is 600 mm.",
                onlyBlock(one(PLANT, TASK.replace("100 mm", "700 mm"))).text());
        assertEquals(
                "The mass of a part is 60 kg; the mass that a basket takes is 50 kg.",
                onlyBlock(one(PLANT, TASK.replace("mass: 2 kg", "mass: 60 kg"))).text());
    }

    // ---- Not known.

    @Test
    void a_stage_that_may_be_needed_hangs_only_where_the_plant_lacks_it() {
        String open = TASK.replace("hardness: 40 HRC", "hardness: 40..60 HRC");
        assertEquals("serves", one(PLANT, open).verdict());
        String bare = PLANT.replace("[rinse]", "[]").replaceFirst("  rinse: .*\n", "");
        assertEquals(
                new Reason(
                        "It may need the stage rinse, which the plant lacks: Hard parts are rinsed.", List.of("R-1")),
                onlyCondition(one(bare, open)));
    }

    @Test
    void an_alternative_of_the_catalogue_would_have_to_do_and_a_wrong_order_is_said() {
        String thick = TASK.replace("features: []", "features: [feature-b]");
        Reason instead = onlyCondition(one(PLANT.replace("[rinse]", "[beside, rinse]"), thick));
        assertTrue(instead.text().contains("the plant's mild prewash would have to do"), instead.text());
        Reason order = onlyCondition(one(PLANT.replace("[rinse]", "[main, before, rinse]"), thick));
        assertEquals(
                "A load has to pass the stages in an order in which they do not stand: prewash, tub wash.",
                order.text());
    }

    @Test
    void a_setting_that_is_not_said_matters_only_where_the_task_narrows_it() {
        String silent = PLANT.replace("temperature: 50..70 °C, ", "");
        assertEquals("serves", one(silent, TASK).verdict());
        Reason open = onlyCondition(one(silent, TASK.replace("substrate-a", "substrate-b")));
        assertTrue(open.text().endsWith("what the plant runs is not known."), open.text());
        assertEquals(List.of("R-4"), open.rules());
    }

    @Test
    void what_is_not_known_of_part_or_plant_is_said_and_never_counts_as_nothing() {
        TaskOnPlant task = one(PLANT, TASK.replace("mass: 2 kg", "mass: unknown"));
        assertEquals(
                "The mass of a part is not known; the mass that a basket takes is 50 kg.",
                onlyCondition(task).text());
        Load load = task.load().orElseThrow();
        assertEquals(Optional.empty(), load.hours());
        assertEquals(List.of("mass of a part"), load.notKnown());
        Load chambers = load(PLANT.replace("chambers: 2\n", ""), TASK);
        assertEquals(Optional.empty(), chambers.hours());
        assertEquals(List.of("chambers of the main stage"), chambers.notKnown());
        Load rate = load(
                PLANT.replace("hours: 40 h", "hours: unknown"),
                TASK.replace("annualQuantity: 52000 1/year", "rate: 10 1/h"));
        assertEquals(List.of("hours a week of the plant"), rate.notKnown());
        Week week = week(PLANT, TASK, TASK.replace("annualQuantity: 52000 1/year", "rate: unknown"))
                .week();
        assertEquals(1, week.notKnown());
        assertEquals("not known", week.order().get(1).fits());
        assertTrue(week.sentence().contains("The hours of one more are not known and come on top."), week.sentence());
    }

    // ---- Over the week.

    @Test
    void a_week_that_is_too_short_says_by_how_much_and_which_fit_in_their_order() {
        // Worked by hand: 2.75 ÷ 60 ÷ 0.8 = 0.0572917 h a load. 400 loads take 22.9167 h; twice that is 45.8333 h of 40
        // h.
        String many = TASK.replace("52000 1/year", "520000 1/year");
        PlantWeek all = week(PLANT, many, TASK.replace("soil-c", "soil-a"), many);
        Week week = all.week();
        same(5.833333333333333, week.over());
        assertEquals(45.833333333333336, week.needs().high(), 1e-9);
        assertEquals(List.of(1, 3), week.order().stream().map(s -> s.task()).toList());
        assertEquals(
                List.of("fits", "does not fit"),
                week.order().stream().map(s -> s.fits()).toList());
        assertEquals(
                "Of 3 tasks it serves 2 and can't serve 1. Together they take 45.8 h of the 40 h that the plant has a"
                        + " week. That is 5.83 h more than it has. Taken in the order given, the first one fits.",
                all.headline());
    }

    @Test
    void no_task_fills_nothing() {
        PlantWeek none = week(PLANT);
        assertEquals(new Range(0, 0), none.week().needs());
        assertEquals(List.of(), none.tasks());
        assertFalse(none.week().over().isPresent());
    }
}
