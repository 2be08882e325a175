package org.washwright.casework;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.washwright.access.OtherWorkspace;
import org.washwright.access.Roles;
import org.washwright.access.SignedInBrowser;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostics;
import org.washwright.document.Hashes;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionReader;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;
import org.washwright.rulebook.Bundle;
import org.washwright.task.Group;
import org.washwright.task.TaskReader;

@QuarkusTest
class CaseworkTest {
    private static final String PROBLEM = "application/problem+json";
    private static final String YAML = "application/yaml";
    private static final String JSON = "application/json";
    private static final String AS_OF = "{\"asOf\":\"2026-01-01\"}";

    @Inject
    DataSource database;

    @Inject
    OtherWorkspace others;

    @BeforeEach
    void people() {
        others.inDemo("reader", Roles.TRAINEE);
    }

    static Stream<Path> demoTasks() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-data/tasks"))) {
            return files.sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("demoTasks")
    void every_demo_task_is_kept_answered_and_drawn(Path file) throws IOException {
        String id = add(YAML, Files.readString(file))
                .then()
                .statusCode(201)
                .extract()
                .path("id");
        Response made = assess(id, "");
        String answer = made.then().statusCode(201).extract().path("id");
        byte[] bytes = as("reader")
                .get("/api/assessments/" + answer)
                .then()
                .statusCode(200)
                .contentType(JSON)
                .extract()
                .asByteArray();
        assertEquals(made.header("Washwright-Answer-Hash"), Hashes.sha256(bytes));
        SignedInBrowser browser = SignedInBrowser.as("reader");
        String page = "/tasks/" + id + "/assessments/" + answer;
        String shown =
                browser.request().get(page).then().statusCode(200).extract().asString();
        assertTrue(shown.contains("Processes") || shown.contains("ruled out"));
        browser.request().get(page + "/trace").then().statusCode(200).body(containsString("/rules#"));
        List<String> processes = as("reader").get("/api/assessments/" + answer).path("candidates.process");
        for (String process : processes.stream().limit(2).toList()) {
            browser.request().get(page + "/processes/" + process).then().statusCode(200);
        }
        browser.request().get(page + "/processes/no-such").then().statusCode(404);
        browser.request().get("/tasks/" + id).then().statusCode(200);
        SignedInBrowser.as("engineer")
                .request()
                .get("/tasks/" + id + "/edit")
                .then()
                .statusCode(200);
    }

    @Test
    void the_same_task_by_form_by_rest_inline_and_called_directly_gives_the_same_bytes() throws IOException {
        String yaml =
                Files.readString(Path.of("demo-data/tasks/bearing-rings.yaml")).replaceFirst("(?m)^shows: .*\n", "");
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        Map<String, String> form = new LinkedHashMap<>();
        form.put("do", "save");
        form.put("title", "Bearing rings, ground and honed, before assembly");
        put(form, "part.rate", "1200", "1/h");
        put(form, "part.mass", "0.31", "kg");
        put(form, "part.wettedArea", "120", "cm²");
        form.put("part.shape", "ring");
        form.put("materials.3.substrate", "bearing-steel");
        put(form, "materials.3.hardness", "62", "HRC");
        form.put("materials.3.plating", "bare");
        form.put("materials.3.porous", "no");
        form.put("features.0.kind", "through-bore");
        put(form, "features.0.diameter", "40", "mm");
        put(form, "features.0.depth", "18", "mm");
        form.put("soils.0.kind", "honing-oil");
        put(form, "soils.0.amount", "3", "g/m²");
        form.put("soils.0.state", "fluid");
        form.put("lot.charging", "rotating-basket");
        form.put("lot.place", "in-line");
        form.put("following.operation", "assembly");
        put(form, "demand.residue", "20", "mg/m²");
        form.put("demand.waterBreakFree", "no");
        form.put("demand.particleCode", "A(B-E16/F-G12/H-I4/J-K00)");
        form.put("jurisdictions.0.law", "EU");
        form.put("site.waterDischarge", "yes");
        form.put("permittedSolvents.0.solventClass", "hydrocarbon");
        form.put("attributes.food-contact", "no");
        form.put("part.largestDimension", "60");
        form.put("part.largestDimension.unit", "mm");
        form.put("materials.3.finish", "ground");
        form.put("materials.3.stress", "relieved");
        form.put("materials.3.heatTreatment", "through-hardened");
        form.put("preceding.operation", "grinding-honing");
        form.put("site.explosionZone", "none");
        form.put("site.exhaust", "yes");
        put(form, "site.hallVolume", "5000", "m³");
        put(form, "site.airChange", "4", "1/h");
        restDoesNotApply(
                form,
                Map.of(
                        Group.PART, "part",
                        Group.MATERIALS, "materials.3",
                        Group.FEATURES, "features.0",
                        Group.SOILS, "soils.0",
                        Group.LOT, "lot",
                        Group.PRECEDING, "preceding",
                        Group.FOLLOWING, "following",
                        Group.DEMAND, "demand",
                        Group.SITE, "site"));
        String location = browser.post("/tasks/new", "/tasks/new", form)
                .then()
                .statusCode(303)
                .extract()
                .header("Location");
        String byForm = location.substring(location.lastIndexOf('/') + 1);
        String byRest = add(YAML, yaml).then().statusCode(201).extract().path("id");

        String formHash = assess(byForm, AS_OF).then().statusCode(201).extract().header("Washwright-Answer-Hash");
        String restHash = assess(byRest, AS_OF).then().statusCode(201).extract().header("Washwright-Answer-Hash");
        Object plain = GivenTask.plain(GivenTask.nodes(yaml));
        byte[] inlineBody = Hashes.canonical(Map.of("task", plain, "asOf", "2026-01-01"));
        Response inline = as("engineer").contentType(JSON).body(inlineBody).post("/api/assessments");
        inline.then().statusCode(200).header("Washwright-Answer-Hash", equalTo(restHash));

        Edition edition = new EditionReader(new DrlReader())
                .read(Bundle.starter().files())
                .edition()
                .orElseThrow();
        FrozenAnswer direct = Assessor.of(edition, Starter.units())
                .assess(
                        TaskReader.read("task.yaml", yaml.getBytes(StandardCharsets.UTF_8), edition, new Diagnostics())
                                .orElseThrow(),
                        Wishes.on("2026-01-01"));
        assertEquals(direct.hash(), restHash);
        String document =
                as("engineer").get("/api/tasks/" + byForm + "/document").asString();
        assertEquals(direct.hash(), formHash, document);
        assertArrayEquals(direct.bytes(), inline.asByteArray());

        String edited = browser.request().get("/tasks/" + byForm + "/edit").asString();
        assertTrue(document.contains("\"0.31 kg\""), document);
        assertTrue(edited.contains("value=\"0.31\""), "the unit typed is shown again");
        assertTrue(edited.contains("<option value=\"kg\" selected>"), "the unit typed is chosen again");
    }

    @Test
    void an_answer_is_kept_for_ever_with_its_exact_bytes_and_tag() throws SQLException {
        String task = add(JSON, "{\"title\":\"Brackets\"}")
                .then()
                .statusCode(201)
                .header("ETag", "\"v0\"")
                .extract()
                .path("id");
        String id = assess(task, AS_OF).then().statusCode(201).extract().path("id");
        Response answer = as("reader").get("/api/assessments/" + id);
        answer.then().statusCode(200).body("request.asOf", equalTo("2026-01-01"));
        as("reader")
                .header("If-None-Match", answer.header("ETag"))
                .get("/api/assessments/" + id)
                .then()
                .statusCode(304);
        as("reader")
                .get("/api/assessments/" + id + "/envelope")
                .then()
                .statusCode(200)
                .body("taskId", equalTo(task))
                .body("created.by", equalTo("engineer"));
        as("reader")
                .get("/api/tasks/" + task + "/assessments")
                .then()
                .statusCode(200)
                .body("id", hasItem(id));
        assertThrows(SQLException.class, () -> run("UPDATE assessment SET program = 'x' WHERE id = '" + id + "'"));
        assertThrows(SQLException.class, () -> run("DELETE FROM assessment WHERE id = '" + id + "'"));
    }

    @Test
    void a_task_is_changed_only_on_what_was_read_last() {
        String id = add(YAML, "title: First").then().statusCode(201).extract().path("id");
        as("engineer")
                .contentType(YAML)
                .body("title: Second".getBytes(StandardCharsets.UTF_8))
                .put("/api/tasks/" + id)
                .then()
                .statusCode(428)
                .contentType(PROBLEM);
        as("engineer")
                .contentType(YAML)
                .header("If-Match", "\"v0\"")
                .body("title: Second".getBytes(StandardCharsets.UTF_8))
                .put("/api/tasks/" + id)
                .then()
                .statusCode(200)
                .header("ETag", "\"v1\"")
                .body("task.title", equalTo("Second"));
        as("engineer")
                .contentType(YAML)
                .header("If-Match", "\"v0\"")
                .body("title: Third".getBytes(StandardCharsets.UTF_8))
                .put("/api/tasks/" + id)
                .then()
                .statusCode(412)
                .contentType(PROBLEM);
        as("reader").get("/api/tasks/" + id).then().statusCode(200).header("ETag", "\"v1\"");
        as("reader")
                .get("/api/tasks?size=1")
                .then()
                .statusCode(200)
                .body("items.size()", equalTo(1))
                .body("total", greaterThan(0));
    }

    @Test
    void all_that_is_wrong_with_a_task_comes_at_once_with_places_and_nothing_is_stored() throws SQLException {
        long before = rows();
        add(
                        YAML,
                        "title: x\ncolour: red\npart:\n  mass: 3 m\n  mass: 4 kg\nmaterials:\n  - hardness: NaN HRC\n    substrate: unobtainium\n")
                .then()
                .statusCode(422)
                .contentType(PROBLEM)
                .body(
                        "errors.code",
                        hasItems("unknown-field", "duplicate-key", "wrong-dimension", "bad-quantity", "unknown-term"))
                .body(
                        "errors.pointer",
                        hasItems("/colour", "/part/mass", "/materials/0/hardness", "/materials/0/substrate"))
                .body("errors.line", everyItem(greaterThan(0)))
                .body("errors.advice", everyItem(not(equalTo(""))));
        add(JSON, "{\"title\":\"x\",\"part\":{\"mass\":NaN}}")
                .then()
                .statusCode(422)
                .body("errors[0].line", equalTo(1));
        add(YAML, "title: [x\n  - y: z")
                .then()
                .statusCode(422)
                .body("errors[0].code", equalTo("broken-yaml"))
                .body("errors[0].line", greaterThan(0));
        add(YAML, "a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\ntitle: *c")
                .then()
                .statusCode(422)
                .body("errors.code", hasItem("alias"));
        add(YAML, "title: many\nsoils:\n" + "  - {kind: cutting-oil}\n".repeat(10_000))
                .then()
                .statusCode(422)
                .body("errors[0].code", equalTo("list-too-long"))
                .body("errors[0].value", equalTo("10000"));
        add(YAML, "title: long\nnotes: " + "x".repeat(2_000_000))
                .then()
                .statusCode(422)
                .body("errors[0].code", equalTo("too-large"));
        add(JSON, "{\"title\":\"" + "x".repeat(20_000_000) + "\"}")
                .then()
                .statusCode(413)
                .contentType(PROBLEM);
        add("text/plain", "title: x").then().statusCode(415);
        add(JSON, "").then().statusCode(422);
        assertEquals(before, rows());
    }

    @Test
    void wishes_that_can_not_be_read_are_told_at_once_and_nothing_is_stored() throws SQLException {
        String id = add(YAML, "title: Wishes").then().statusCode(201).extract().path("id");
        long before = rows();
        assess(id, "{\"asOf\":\"yesterday\",\"seed\":\"-1\",\"weights\":{\"cost\":-1},\"shade\":1}")
                .then()
                .statusCode(422)
                .contentType(PROBLEM)
                .body("errors.size()", equalTo(4))
                .body("errors.pointer", hasItems("/asOf", "/seed", "/weights/cost", "/shade"));
        as("engineer")
                .contentType(JSON)
                .body("{\"asOf\":\"2026-01-01\"}")
                .post("/api/assessments")
                .then()
                .statusCode(422)
                .body("errors[0].code", equalTo("missing-field"));
        assertEquals(before, rows());
    }

    @Test
    void a_rule_changed_reviewed_and_released_by_two_people_changes_the_answer_and_not_the_old_one()
            throws IOException {
        String yaml = Files.readString(Path.of("demo-data/tasks/steel-clips.yaml"));
        String task = add(YAML, yaml).then().statusCode(201).extract().path("id");
        String first = assess(task, AS_OF).then().statusCode(201).extract().path("id");
        byte[] before = as("reader").get("/api/assessments/" + first).asByteArray();
        String drl = """
                rule "Nothing with alkali here"
                  @id("TEST-01")
                  @basis("common practice")
                when
                  Part(rate > "1 1/h")
                then
                  ruleOut("any", "main", "A rule of this test takes every process out.");
                end
                """;
        String edition = given().spec(SignedInBrowser.bearer("consultant"))
                .contentType("application/zip")
                .body(Bundle.starter()
                        .withoutFolder("cases")
                        .with("rules/test.drl", drl)
                        .zip())
                .post("/api/editions")
                .then()
                .statusCode(201)
                .body("errors", equalTo(0))
                .extract()
                .path("id");
        String asked = as("consultant")
                .contentType(JSON)
                .header("If-Match", "\"v0\"")
                .post("/api/editions/" + edition + "/review")
                .then()
                .statusCode(200)
                .extract()
                .header("ETag");
        as("reviewer")
                .contentType(JSON)
                .header("If-Match", asked)
                .body("{\"note\":\"read\",\"despite\":\"It has no cases.\"}")
                .post("/api/editions/" + edition + "/release")
                .then()
                .statusCode(200);
        try {
            String second = assess(task, AS_OF).then().statusCode(201).extract().path("id");
            Response after = as("reader").get("/api/assessments/" + second);
            after.then()
                    .body("candidates.size()", equalTo(0))
                    .body("ruledOut.reasons.flatten().text", hasItem("A rule of this test takes every process out."));
            assertNotEquals(Hashes.sha256(before), Hashes.sha256(after.asByteArray()));
            assertArrayEquals(
                    before, as("reader").get("/api/assessments/" + first).asByteArray());
            SignedInBrowser.as("reader")
                    .request()
                    .get("/rulebooks/" + edition + "/rules")
                    .then()
                    .statusCode(200)
                    .body(containsString("id=\"TEST-01\""));
        } finally {
            String now = as("reader").get("/api/editions/" + edition).header("ETag");
            as("reviewer")
                    .contentType(JSON)
                    .header("If-Match", now)
                    .body("{\"note\":\"It rules everything out.\"}")
                    .post("/api/editions/" + edition + "/withdrawal")
                    .then()
                    .statusCode(200);
        }
    }

    @Test
    void tasks_and_answers_of_another_workspace_are_not_there() {
        others.withPerson("over-there", "visitor");
        String task = add(YAML, "title: Ours").then().statusCode(201).extract().path("id");
        String answer = assess(task, AS_OF).then().statusCode(201).extract().path("id");
        for (String path : List.of(
                "/api/tasks/" + task,
                "/api/tasks/" + task + "/document",
                "/api/tasks/" + task + "/assessments",
                "/api/assessments/" + answer,
                "/api/assessments/" + answer + "/envelope")) {
            as("visitor").get(path).then().statusCode(404).contentType(PROBLEM);
        }
        as("visitor")
                .contentType(YAML)
                .header("If-Match", "\"v0\"")
                .body("title: Theirs".getBytes(StandardCharsets.UTF_8))
                .put("/api/tasks/" + task)
                .then()
                .statusCode(404);
        as("visitor")
                .contentType(JSON)
                .post("/api/tasks/" + task + "/assessments")
                .then()
                .statusCode(404);
        SignedInBrowser browser = SignedInBrowser.as("visitor");
        for (String path : List.of(
                "/tasks/" + task,
                "/tasks/" + task + "/assessments/" + answer,
                "/tasks/" + task + "/assessments/" + answer + "/trace")) {
            browser.request().get(path).then().statusCode(404);
        }
    }

    @Test
    void the_schema_of_a_task_is_served_by_the_words_of_the_current_edition() {
        Response schema = as("reader").get("/api/task-schema");
        schema.then()
                .statusCode(200)
                .contentType("application/schema+json")
                .body(containsString("draft/2020-12"))
                .body(containsString("honing-oil"));
        as("reader")
                .header("If-None-Match", schema.header("ETag"))
                .get("/api/task-schema")
                .then()
                .statusCode(304);
    }

    @Test
    void a_trainee_and_a_reviewer_read_and_do_not_write() {
        String task =
                add(YAML, "title: Read me").then().statusCode(201).extract().path("id");
        for (String who : List.of("reader", "reviewer")) {
            as(who).contentType(YAML)
                    .body("title: x".getBytes(StandardCharsets.UTF_8))
                    .post("/api/tasks")
                    .then()
                    .statusCode(403)
                    .contentType(PROBLEM);
            as(who).contentType(JSON)
                    .post("/api/tasks/" + task + "/assessments")
                    .then()
                    .statusCode(403);
            as(who).get("/api/tasks/" + task).then().statusCode(200);
        }
        SignedInBrowser browser = SignedInBrowser.as("reader");
        browser.request().get("/tasks/new").then().statusCode(403);
        browser.post("/tasks", "/tasks/" + task + "/assessments", Map.of())
                .then()
                .statusCode(403);
        given().get("/api/tasks").then().statusCode(401);
    }

    @Test
    void a_form_without_its_token_changes_nothing() throws SQLException {
        long before = rows();
        SignedInBrowser.as("engineer")
                .request()
                .contentType("application/x-www-form-urlencoded")
                .formParam("title", "forged")
                .post("/tasks/new")
                .then()
                .statusCode(400);
        SignedInBrowser.as("engineer")
                .request()
                .multiPart("file", "t.yaml", "title: forged".getBytes(StandardCharsets.UTF_8))
                .post("/tasks/import")
                .then()
                .statusCode(400);
        assertEquals(before, rows());
    }

    @Test
    void a_wrong_form_comes_back_with_errors_beside_the_fields_and_nothing_typed_lost() throws SQLException {
        long before = rows();
        Response page = SignedInBrowser.as("engineer")
                .post(
                        "/tasks/new",
                        "/tasks/new",
                        Map.of(
                                "do",
                                "save",
                                "title",
                                "Rings",
                                "materials.0.hardness",
                                "sixty",
                                "materials.0.hardness.unit",
                                "HRC",
                                "soils.0.kind",
                                "honing-oil",
                                "soils.0.state",
                                "fluid",
                                "soils.open",
                                "yes",
                                "soils.0.amount",
                                "3..2",
                                "soils.0.amount.unit",
                                "g/m²"));
        page.then()
                .statusCode(422)
                .body("**.find { it.@id == 'materials.0.hardness' }.@value", equalTo("sixty"))
                .body("**.find { it.@id == 'materials.0.hardness' }.@aria-invalid", equalTo("true"))
                .body("**.find { it.@id == 'soils.0.amount' }.@aria-invalid", equalTo("true"))
                .body(containsString("href=\"#materials.0.hardness\""))
                .body(containsString("href=\"#soils.0.amount\""))
                .body(containsString("value=\"Rings\""))
                .body(containsString("<option value=\"honing-oil\" selected"));
        assertEquals(before, rows());
    }

    @Test
    void rows_come_and_go_and_a_question_tree_is_played_without_any_script() {
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        browser.post("/tasks/new", "/tasks/new", Map.of("do", "add:features", "title", "kept", "features.0.depth", "5"))
                .then()
                .statusCode(200)
                .body(containsString("id=\"features.1.depth\""))
                .body("**.find { it.@id == 'features.0.depth' }.@value", equalTo("5"))
                .body(containsString("value=\"kept\""));
        browser.post(
                        "/tasks/new",
                        "/tasks/new",
                        Map.of("do", "remove:features.0", "features.0.depth", "5", "features.1.depth", "7"))
                .then()
                .statusCode(200)
                .body("**.find { it.@id == 'features.0.depth' }.@value", equalTo("7"))
                .body(not(containsString("id=\"features.1.depth\"")));
        browser.post(
                        "/tasks/new",
                        "/tasks/new",
                        Map.of("do", "play:soils.0.kind", "title", "kept", "soils.0.row", "yes"))
                .then()
                .statusCode(200)
                .body(containsString("What do you see?"))
                .body(containsString("value=\"answer:soils.0.kind:film\""))
                .body(containsString("name=\"title\" value=\"kept\""));
        Map<String, String> last = Map.of(
                "do",
                "answer:soils.0.kind:powder",
                "title",
                "Rusty",
                "soils.0.row",
                "yes",
                "soils.0.kind.tree",
                "what-is-this-soil",
                "soils.0.kind.answers",
                "crust");
        browser.post("/tasks/new", "/tasks/new", last)
                .then()
                .statusCode(200)
                .body(containsString("name=\"soils.0.kind.answers\" value=\"crust,powder\""))
                .body(containsString("Red-brown and powdery"));
        Map<String, String> save = new LinkedHashMap<>(last);
        save.put("do", "save");
        save.put("soils.0.kind.answers", "crust,powder");
        save.put("soils.0.kind", "cutting-oil");
        String location = browser.post("/tasks/new", "/tasks/new", save)
                .then()
                .statusCode(303)
                .extract()
                .header("Location");
        as("reader")
                .get("/api" + java.net.URI.create(location).getPath())
                .then()
                .body("task.soils[0].kind.value", equalTo("cutting-oil"))
                .body("task.soils[0].kind.answers", equalTo(List.of("crust", "powder")));
    }

    @Test
    void a_file_is_brought_in_by_page_and_its_errors_told_there() {
        SignedInBrowser browser = SignedInBrowser.as("engineer");
        String token = browser.formToken("/tasks");
        browser.request()
                .multiPart("csrf-token", token)
                .multiPart("file", "t.yaml", "title: Brought in".getBytes(StandardCharsets.UTF_8))
                .post("/tasks/import")
                .then()
                .statusCode(303);
        browser.request()
                .multiPart("csrf-token", token)
                .multiPart("file", "t.yaml", "title: x\nsole: y".getBytes(StandardCharsets.UTF_8))
                .post("/tasks/import")
                .then()
                .statusCode(422)
                .body(containsString("sole"));
    }

    @Test
    void pages_of_rulebooks_and_words_open_for_everybody_signed_in() {
        SignedInBrowser browser = SignedInBrowser.as("reader");
        String starter = as("reader").get("/api/editions?size=200").path("items.find { it.starter }.id");
        for (String path : List.of(
                "/",
                "/tasks",
                "/rulebooks",
                "/rulebooks/" + starter,
                "/rulebooks/" + starter + "/rules",
                "/rulebooks/" + starter + "/trees",
                "/rulebooks/" + starter + "/diagnostics",
                "/glossary",
                "/glossary?q=honing")) {
            browser.request().get(path).then().statusCode(200);
        }
        browser.request().get("/glossary?q=honing").then().body(containsString("honing oil"));
        browser.request()
                .get("/rulebooks/" + starter + "/bundle")
                .then()
                .statusCode(200)
                .contentType("application/zip");
    }

    /** Ticks "does not apply" wherever nothing was typed, as a task file says by {@code rest: not applicable}. */
    private static void restDoesNotApply(Map<String, String> form, Map<Group, String> entries) {
        entries.forEach((group, prefix) -> group.attributes().stream()
                .filter(a -> !a.computed() && !form.containsKey(prefix + "." + a.name()))
                .forEach(a -> form.put(prefix + "." + a.name() + ".none", "yes")));
    }

    private static void put(Map<String, String> form, String name, String value, String unit) {
        form.put(name, value);
        form.put(name + ".unit", unit);
    }

    private static Response add(String type, String document) {
        return as("engineer")
                .contentType(type)
                .body(document.getBytes(StandardCharsets.UTF_8))
                .post("/api/tasks");
    }

    private static Response assess(String task, String wishes) {
        return as("engineer").contentType(JSON).body(wishes).post("/api/tasks/" + task + "/assessments");
    }

    private static final Map<String, RequestSpecification> TOKENS = new java.util.concurrent.ConcurrentHashMap<>();

    private static RequestSpecification as(String who) {
        return given().spec(TOKENS.computeIfAbsent(who, SignedInBrowser::bearer));
    }

    private long rows() throws SQLException {
        try (Connection connection = database.getConnection();
                Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery(
                        "SELECT (SELECT count(*) FROM cleaning_task) + (SELECT count(*) FROM assessment)")) {
            result.next();
            return result.getLong(1);
        }
    }

    private void run(String sql) throws SQLException {
        try (Connection connection = database.getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
