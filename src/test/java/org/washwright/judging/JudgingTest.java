package org.washwright.judging;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.washwright.access.OtherWorkspace;
import org.washwright.access.Person;
import org.washwright.access.SignedInBrowser;
import org.washwright.document.Hashes;
import org.washwright.generate.SmallEdition;
import org.washwright.impact.meaning.MeaningComparison;
import org.washwright.impact.meaning.States;
import org.washwright.impact.meaning.Subject;
import org.washwright.impact.replay.By;
import org.washwright.impact.replay.Impact;
import org.washwright.impact.replay.Origin;
import org.washwright.impact.replay.Weight;
import org.washwright.rulebook.EditionView;
import org.washwright.rulebook.Editions;
import org.washwright.rulebook.GateItem;

@QuarkusTest
class JudgingTest {
    private static final String JSON = "application/json";
    private static final String CASES = """
            cases:
              - id: rusty
                title: What rusts
                task: {title: t, part: {mass: 100 g}, materials: [{substrate: substrate-a}]}
                expect: {fires: [S-01]}
              - id: dull
                title: What does not rust
                task: {title: t, part: {mass: 100 g}, materials: [{substrate: substrate-b}]}
                expect: {doesNotFire: [S-02]}
            """;

    @Inject
    OtherWorkspace others;

    @Inject
    JudgingGate gate;

    @Inject
    Runs runs;

    @Inject
    Editions editions;

    private UUID workspace;

    @BeforeEach
    void somebody_of_a_workspace_of_their_own() {
        workspace = others.withPerson("judging", "judge");
        others.withPerson("elsewhere-judging", "outsider");
        others.inDemo("reader", org.washwright.access.Roles.TRAINEE);
    }

    private static Map<String, String> texts(String was, String is) {
        Map<String, String> texts = new TreeMap<>(SmallEdition.withFewRules());
        texts.put("cases/c.yaml", CASES);
        assertTrue(texts.get("rules/all.drl").contains(was));
        texts.put("rules/all.drl", texts.get("rules/all.drl").replace(was, is));
        return texts;
    }

    private static String uploaded(String who, Map<String, String> texts) {
        return as(who).contentType("application/zip")
                .body(SmallEdition.files(texts).toZip())
                .post("/api/editions")
                .then()
                .statusCode(201)
                .body("errors", equalTo(0))
                .extract()
                .path("id");
    }

    private static RequestSpecification as(String who) {
        return given().spec(SignedInBrowser.bearer(who));
    }

    /** Two drafts of which the later one warns of what does not rust instead of what does. */
    private record Drafts(String before, String after) {
        String api(String what) {
            return "/api/editions/" + after + "/" + what + "with=" + before;
        }

        static Drafts made() {
            return made("judge");
        }

        static Drafts made(String who) {
            return new Drafts(
                    uploaded(who, texts("rusts == true", "rusts == true")),
                    uploaded(who, texts("rusts == true", "rusts == false")));
        }
    }

    private static Response tried(String who, Drafts drafts) throws InterruptedException {
        as(who).contentType(JSON).post(drafts.api("impact?")).then().statusCode(202);
        Response answer = as(who).get(drafts.api("impact?"));
        for (int i = 0; answer.statusCode() == 202 && i < 600; i++) {
            Thread.sleep(100);
            answer = as(who).get(drafts.api("impact?"));
        }
        answer.then().statusCode(200);
        return answer;
    }

    @Test
    void a_comparison_is_the_one_of_the_core_byte_for_byte_with_its_tag_and_stands_on_its_page() {
        Drafts drafts = Drafts.made();
        Response there = as("judge").get(drafts.api("compare?"));
        there.then().statusCode(200).body("differences[0].id", equalTo("S-01"));
        byte[] core = Hashes.canonical(MeaningComparison.of(
                States.read(texts("rusts == true", "rusts == true")),
                States.read(texts("rusts == true", "rusts == false"))));
        assertEquals(new String(core, StandardCharsets.UTF_8), there.asString());
        as("judge")
                .header("If-None-Match", there.header("ETag"))
                .get(drafts.api("compare?"))
                .then()
                .statusCode(304);
        SignedInBrowser.as("judge")
                .request()
                .get("/rulebooks/" + drafts.after() + "/compare?with=" + drafts.before())
                .then()
                .statusCode(200)
                .body(containsString("Answers may change: 1 rule changed."))
                .body(containsString("/rulebooks/" + drafts.after() + "/rules#S-01"));
        as("outsider").get(drafts.api("compare?")).then().statusCode(404);
        as("reader").get(drafts.api("compare?")).then().statusCode(404);
        as("judge")
                .get("/api/editions/" + drafts.after() + "/compare?with=" + UUID.randomUUID())
                .then()
                .statusCode(404)
                .contentType("application/problem+json");
    }

    @Test
    void a_draft_is_held_against_what_counts_unless_somebody_says_otherwise() {
        UUID demo = UUID.fromString(as("consultant").get("/api/me").path("workspaceId"));
        String draft = uploaded("consultant", texts("rusts == true", "rusts == true"));
        as("reader")
                .get("/api/editions/" + draft + "/compare")
                .then()
                .statusCode(200)
                .body(
                        "before.textHash",
                        equalTo(editions.current(demo).orElseThrow().textHash()))
                .body("after.name", equalTo("small"));
        // Nothing was released in the workspace of this test.
        EditionView alone =
                editions.view(workspace, UUID.fromString(Drafts.made().after()));
        as("judge").get("/api/editions/" + alone.id() + "/compare").then().statusCode(409);
        assertEquals(GateItem.Mark.MET, mark(workspace, alone));
    }

    @Test
    void kept_tasks_and_cases_are_tried_judged_once_and_by_everybody_who_may() throws InterruptedException {
        // Only where an edition counts can tasks be kept.
        as("engineer")
                .contentType("application/yaml")
                .body("title: Pins of nothing known\n".getBytes(StandardCharsets.UTF_8))
                .post("/api/tasks")
                .then()
                .statusCode(201);
        Drafts drafts = Drafts.made("consultant");
        as("consultant").get(drafts.api("impact?")).then().statusCode(404);
        Response found = tried("consultant", drafts);
        int kept = as("consultant").get("/api/tasks?size=200").path("total");
        assertEquals(2 + Math.min(kept, Impacts.MOST_TASKS), (int) found.path("impact.tried"));
        found.then()
                .body("impact.sample.size()", equalTo(2))
                .body("impact.sample", hasItem("dull"))
                .body("impact.cases.id", equalTo(List.of("rusty")))
                .body("impact.changed.find { it.key == 'dull' }.by[0].id", equalTo("S-01"))
                .body("judgements.size()", equalTo(0));
        String judgement = drafts.api("impact/judgements/dull?");
        as("consultant")
                .contentType(JSON)
                .body("{\"verdict\":\"not meant\",\"note\":\" \"}")
                .put(judgement)
                .then()
                .statusCode(422)
                .body("errors[0].pointer", equalTo("/note"));
        as("consultant").contentType(JSON).body("{}").put(judgement).then().statusCode(422);
        Response made = as("consultant")
                .contentType(JSON)
                .body("{\"verdict\":\"not meant\",\"note\":\"It must not warn.\"}")
                .put(judgement);
        made.then().statusCode(200).body("by", equalTo("consultant")).body("verdict", equalTo("not meant"));
        assertNotNull(made.header("ETag"));
        as("consultant")
                .contentType(JSON)
                .body("{\"verdict\":\"meant\"}")
                .put(judgement)
                .then()
                .statusCode(412);
        as("consultant")
                .contentType(JSON)
                .header("If-Match", made.header("ETag"))
                .body("{\"verdict\":\"meant\"}")
                .put(judgement)
                .then()
                .statusCode(200)
                .body("version", equalTo(2));
        as("consultant")
                .contentType(JSON)
                .body("{\"verdict\":\"meant\"}")
                .put(drafts.api("impact/judgements/no-such?"))
                .then()
                .statusCode(404);
        as("outsider").get(drafts.api("impact?")).then().statusCode(404);
        as("reader").contentType(JSON).post(drafts.api("impact?")).then().statusCode(403);
    }

    @Test
    void the_page_shows_what_changes_and_takes_a_judgement() throws InterruptedException {
        Drafts drafts = Drafts.made();
        String page = "/rulebooks/" + drafts.after() + "/impact";
        SignedInBrowser judge = SignedInBrowser.as("judge");
        judge.request()
                .get(page + "?with=" + drafts.before())
                .then()
                .statusCode(200)
                .body(containsString("were not tried yet"));
        tried("judge", drafts);
        judge.request()
                .get(page + "?with=" + drafts.before())
                .then()
                .statusCode(200)
                .body(containsString("Was this meant?"))
                .body(containsString("What rusts"));
        Map<String, String> form = new TreeMap<>(
                Map.of("with", drafts.before(), "task", "rusty", "version", "0", "verdict", "not meant", "note", ""));
        judge.post(page + "?with=" + drafts.before(), page + "/judge", form)
                .then()
                .statusCode(422)
                .body(containsString("id=\"note-error\""));
        form.put("note", "<b>No.</b>");
        judge.post(page + "?with=" + drafts.before(), page + "/judge", form)
                .then()
                .statusCode(303);
        judge.post(page + "?with=" + drafts.before(), page + "/judge", form)
                .then()
                .statusCode(412)
                .body(containsString("in the meantime"));
        judge.request()
                .get(page + "?with=" + drafts.before())
                .then()
                .body(containsString("&lt;b&gt;No.&lt;/b&gt;"))
                .body(containsString("1 of 2 was not meant"));
    }

    @Test
    void the_gate_is_open_until_the_sample_is_judged_and_closed_by_what_was_not_meant() {
        UUID demo = UUID.fromString(as("consultant").get("/api/me").path("workspaceId"));
        Person consultant =
                new Person(UUID.fromString(as("consultant").get("/api/me").path("accountId")), "consultant");
        // Nobody has judged a draft with a remark that was never made before.
        Map<String, String> texts = texts("1 kg", "2 kg");
        texts.merge("rules/all.drl", "// " + UUID.randomUUID() + "\n", String::concat);
        EditionView draft = editions.view(demo, UUID.fromString(uploaded("consultant", texts)));
        EditionView counts = editions.current(demo).orElseThrow();
        assertEquals(GateItem.Mark.OPEN, mark(demo, draft));
        Impact impact = impact(counts, draft);
        runs.add(demo, draft.id(), counts.id(), impact, consultant);
        assertEquals(
                impact,
                runs.latest(demo, counts.textHash(), draft.textHash())
                        .orElseThrow()
                        .impact());
        assertEquals(GateItem.Mark.OPEN, mark(demo, draft));
        runs.judge(demo, impact, "a", 0, Verdict.MEANT, "", consultant);
        assertEquals(GateItem.Mark.OPEN, mark(demo, draft));
        runs.judge(demo, impact, "b", 0, Verdict.NOT_MEANT, "No.", consultant);
        assertEquals(GateItem.Mark.BLOCKED, mark(demo, draft));
        runs.judge(demo, impact, "b", 1, Verdict.MEANT, "", consultant);
        assertEquals(GateItem.Mark.MET, mark(demo, draft));
        as("consultant")
                .get("/api/editions/" + draft.id() + "/gate")
                .then()
                .statusCode(200)
                .body("find { it.id == 'impact' }.mark", equalTo("met"));
    }

    private GateItem.Mark mark(UUID where, EditionView draft) {
        return gate.items(where, draft, editions.reading(where, draft.id()))
                .get(0)
                .mark();
    }

    /** An impact of two changed answers, made up: what it holds is no matter to the gate but its hashes and its sample. */
    private static Impact impact(EditionView before, EditionView after) {
        List<Impact.AnswerChange> changed = List.of(change("a"), change("b"));
        return new Impact(
                1,
                "Made up.",
                new MeaningComparison.Side("x", "X", 1, 0, "m", before.textHash()),
                new MeaningComparison.Side("y", "Y", 1, 0, "n", after.textHash()),
                "2026-11-25",
                2,
                0,
                changed,
                List.of(),
                List.of(),
                List.of(),
                List.of("a", "b"));
    }

    private static Impact.AnswerChange change(String key) {
        return new Impact.AnswerChange(
                key,
                "Task " + key,
                Origin.KEPT,
                Weight.STATUS,
                "Something.",
                "",
                "",
                List.of(new Impact.Process("p", "P", "recommended", "ruled out", List.of("R"))),
                0,
                List.of("now: something"),
                List.of(new By(Subject.RULE, "R-1", "R")),
                "h",
                "i");
    }
}
