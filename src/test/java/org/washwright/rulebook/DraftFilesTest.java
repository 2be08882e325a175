package org.washwright.rulebook;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.access.OtherWorkspace;
import org.washwright.access.Roles;
import org.washwright.access.SignedInBrowser;
import org.washwright.generate.SmallEdition;

/** The files of a draft one by one: what is acknowledged is there, what is overtaken is kept aside. */
@QuarkusTest
class DraftFilesTest {
    private static final String PROBLEM = "application/problem+json";
    private static final String RULES = "rules/notes.drl";

    @Inject
    OtherWorkspace others;

    @BeforeEach
    void people() {
        others.inDemo("second-author", Roles.CONSULTANT);
        others.inDemo("reader", Roles.TRAINEE);
    }

    @Test
    void a_saved_file_comes_back_byte_for_byte_and_the_text_hash_is_that_of_all_files() {
        Bundle bundle = small();
        String draft = draft(bundle);
        String text = "// ä note\r\n\tkept as it is \n";
        put("consultant", draft, RULES, Optional.empty(), text)
                .then()
                .statusCode(200)
                .body("textHash", equalTo(bundle.with(RULES, text).files().textHash()));
        assertArrayEquals(
                text.getBytes(StandardCharsets.UTF_8),
                as("reader").get(at(draft, RULES)).asByteArray());
        as("reader").get("/api/editions/" + draft + "/files").then().body("path", hasItem(RULES));
    }

    @Test
    void a_saved_error_is_stored_and_told_by_the_edition() {
        String draft = draft(small());
        put("consultant", draft, "rules/broken.drl", Optional.empty(), "rule oops")
                .then()
                .statusCode(200);
        JsonPath view = as("reader").get("/api/editions/" + draft).jsonPath();
        assertTrue(view.getInt("errors") > 0, "the error is counted when the edition is looked at");
        as("reader")
                .get("/api/editions/" + draft + "/diagnostics")
                .then()
                .body("errors[0].file", equalTo("rules/broken.drl"));
        String tag = as("consultant").get(at(draft, "rules/broken.drl")).header("ETag");
        put("consultant", draft, "rules/broken.drl", Optional.of(tag), "// mended\n")
                .then()
                .statusCode(200);
        as("reader").get("/api/editions/" + draft).then().body("errors", equalTo(0));
    }

    @Test
    void of_two_people_at_one_file_the_second_is_told_sees_both_and_loses_nothing() {
        String draft = draft(small());
        String tag =
                put("consultant", draft, RULES, Optional.empty(), "// first\n").header("ETag");
        put("consultant", draft, RULES, Optional.of(tag), "// mine\n").then().statusCode(200);
        Response refused = put("second-author", draft, RULES, Optional.of(tag), "// theirs\n");
        refused.then()
                .statusCode(412)
                .contentType(PROBLEM)
                .body("now.text", equalTo("// mine\n"))
                .body("detail", containsString("kept aside"));
        String page = "/rulebooks/" + draft + "/files";
        SignedInBrowser.as("second-author")
                .request()
                .get(page + "/aside/" + refused.jsonPath().getString("aside"))
                .then()
                .statusCode(200)
                .body(containsString("// theirs"));
        SignedInBrowser.as("consultant").request().get(page).then().body(containsString("changed meanwhile"));
        put(
                        "second-author",
                        draft,
                        RULES,
                        Optional.of("\"" + refused.jsonPath().getString("now.tag") + "\""),
                        "// both\n")
                .then()
                .statusCode(200);
        assertEquals("// both\n", as("reader").get(at(draft, RULES)).asString());
    }

    @Test
    void whoever_puts_their_refused_text_in_place_of_the_other_leaves_the_other_aside() {
        String draft = draft(small());
        String tag =
                put("consultant", draft, RULES, Optional.empty(), "// first\n").header("ETag");
        put("consultant", draft, RULES, Optional.of(tag), "// the other\n")
                .then()
                .statusCode(200);
        String now = put("second-author", draft, RULES, Optional.of(tag), "// mine\n")
                .then()
                .statusCode(412)
                .extract()
                .path("now.tag");
        put("second-author", draft, RULES, Optional.of("\"" + now + "\""), "// mine\n")
                .then()
                .statusCode(200);
        SignedInBrowser reader = SignedInBrowser.as("consultant");
        String list = reader.request().get("/rulebooks/" + draft + "/files").asString();
        Matcher kept = Pattern.compile("/rulebooks/" + draft + "/files/aside/[0-9a-f-]{36}")
                .matcher(list);
        List<String> texts = new ArrayList<>();
        while (kept.find()) {
            texts.add(reader.request().get(kept.group()).asString());
        }
        assertEquals(2, texts.size());
        assertTrue(texts.stream().anyMatch(text -> text.contains("// the other")), "the overwritten text is kept");
    }

    @Test
    void a_save_whose_answer_was_lost_can_be_sent_again() {
        String draft = draft(small());
        put("consultant", draft, RULES, Optional.empty(), "// once\n").then().statusCode(200);
        put("consultant", draft, RULES, Optional.empty(), "// once\n").then().statusCode(200);
    }

    @Test
    void a_deleted_file_is_gone_and_its_text_is_kept_aside() {
        String draft = draft(small());
        String tag =
                put("consultant", draft, RULES, Optional.empty(), "// to go\n").header("ETag");
        as("consultant")
                .header("If-Match", "\"0000\"")
                .delete(at(draft, RULES))
                .then()
                .statusCode(412);
        as("consultant").header("If-Match", tag).delete(at(draft, RULES)).then().statusCode(204);
        as("consultant").get(at(draft, RULES)).then().statusCode(404);
        SignedInBrowser.as("consultant")
                .request()
                .get("/rulebooks/" + draft + "/files")
                .then()
                .body(containsString("deleted; consultant"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"rules/a.txt", "rules/%2e%2e/a.drl", "secrets.yaml", "cases/sub/a.yaml", "rules/%3Cscript%3E.drl"
            })
    void a_name_that_belongs_to_no_edition_is_refused(String path) {
        String draft = draft(small());
        int before = as("reader")
                .get("/api/editions/" + draft + "/files")
                .jsonPath()
                .getList("$")
                .size();
        int status = given().spec(SignedInBrowser.bearer("consultant"))
                .urlEncodingEnabled(false)
                .contentType("text/plain")
                .header("If-None-Match", "*")
                .body("x")
                .put("/api/editions/" + draft + "/files/" + path)
                .statusCode();
        assertTrue(status >= 400 && status < 500, path + " gave " + status);
        assertEquals(
                before,
                as("reader")
                        .get("/api/editions/" + draft + "/files")
                        .jsonPath()
                        .getList("$")
                        .size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"../outside", "<script>alert(1)</script>", "", "a/../../b", "con:1", "x\u0000y"})
    void a_hostile_name_of_a_new_file_is_refused_on_the_page_and_shown_as_text(String name) {
        String draft = draft(small());
        String page = "/rulebooks/" + draft + "/files";
        int before = as("reader")
                .get("/api/editions/" + draft + "/files")
                .jsonPath()
                .getList("$")
                .size();
        SignedInBrowser.as("consultant")
                .post(page, page, Map.of("kind", "RULES", "name", name))
                .then()
                .statusCode(422)
                .body(containsString("That was not done"), not(containsString("<script>alert")));
        assertEquals(
                before,
                as("reader")
                        .get("/api/editions/" + draft + "/files")
                        .jsonPath()
                        .getList("$")
                        .size());
    }

    @Test
    void a_new_file_of_each_kind_opens_in_its_editor() {
        String draft = draft(small());
        String page = "/rulebooks/" + draft + "/files";
        for (FileGroup.Kind kind : FileGroup.Kind.values()) {
            if (kind.mayBegin()) {
                String editor = SignedInBrowser.as("consultant")
                        .post(page, page, Map.of("kind", kind.name(), "name", "new-one"))
                        .then()
                        .statusCode(303)
                        .extract()
                        .header("Location");
                SignedInBrowser.as("consultant")
                        .request()
                        .urlEncodingEnabled(false)
                        .get(editor.substring(editor.indexOf("/rulebooks")))
                        .then()
                        .statusCode(200)
                        .body(containsString("new-one"));
            }
        }
    }

    @Test
    void what_is_no_text_or_has_no_condition_is_refused_with_its_place() {
        String draft = draft(small());
        as("consultant")
                .contentType("application/octet-stream")
                .header("If-None-Match", "*")
                .body(new byte[] {'/', '/', (byte) 0xff})
                .put(at(draft, RULES))
                .then()
                .statusCode(422)
                .body("errors[0].line", equalTo(1))
                .body("errors[0].column", equalTo(3));
        as("consultant")
                .contentType("text/plain")
                .body("x")
                .put(at(draft, RULES))
                .then()
                .statusCode(428);
        put("reader", draft, RULES, Optional.empty(), "x").then().statusCode(403);
        as("reader").get(at(draft, RULES)).then().statusCode(404);
    }

    @Test
    void a_draft_begun_from_an_edition_has_its_files_and_another_name_makes_a_rulebook_of_its_own() {
        String draft = draft(small());
        JsonPath same = begin(draft, "{}");
        assertEquals(
                as("reader").get("/api/editions/" + draft).jsonPath().getString("textHash"),
                same.getString("textHash"));
        assertEquals(draft, same.getString("basedOn"));
        JsonPath own = begin(draft, "{\"name\":\"fine-work\",\"title\":\"Fine: \\\"work\\\"\",\"withRules\":false}");
        assertEquals("fine-work", own.getString("rulebook"));
        assertEquals("Fine: \"work\"", own.getString("title"));
        assertEquals(0, own.getInt("rules"));
        assertEquals(0, own.getInt("errors"));
        as("consultant")
                .contentType("application/json")
                .body("{\"name\":\"No!\",\"title\":\"\"}")
                .post("/api/editions/" + draft + "/drafts")
                .then()
                .statusCode(422)
                .body("errors.pointer", hasItem("/name"))
                .body("errors.pointer", hasItem("/title"));
    }

    /** Every author adds lines to a file of their own and to one that all share, reading again whenever told to. */
    @Test
    void twenty_authors_at_one_draft_lose_no_acknowledged_line() throws Exception {
        String draft = draft(small());
        put("consultant", draft, "rules/shared.drl", Optional.empty(), "// shared\n")
                .then()
                .statusCode(200);
        int authors = 20;
        int lines = 5;
        ExecutorService pool = Executors.newFixedThreadPool(authors);
        try {
            List<Future<List<String>>> coming = new ArrayList<>();
            for (int author = 0; author < authors; author++) {
                coming.add(pool.submit(new Author(draft, author, lines)));
            }
            List<String> acknowledged = new ArrayList<>();
            for (Future<List<String>> lines0 : coming) {
                acknowledged.addAll(lines0.get());
            }
            assertEquals(authors * lines * 2, acknowledged.size());
            Map<String, String> files = new TreeMap<>();
            for (int author = 0; author < authors; author++) {
                files.put(
                        "own " + author,
                        as("reader")
                                .get(at(draft, "rules/own-" + author + ".drl"))
                                .asString());
            }
            files.put("shared", as("reader").get(at(draft, "rules/shared.drl")).asString());
            List<String> lost = acknowledged.stream()
                    .filter(line -> files.values().stream().noneMatch(text -> text.contains(line)))
                    .toList();
            assertEquals(List.of(), lost);
        } finally {
            pool.shutdownNow();
        }
        assertEquals(
                0, as("reader").get("/api/editions/" + draft).jsonPath().getInt("errors"), "comments are no error");
    }

    private record Author(String draft, int number, int lines) implements Callable<List<String>> {
        @Override
        public List<String> call() {
            String who = number % 2 == 0 ? "consultant" : "second-author";
            List<String> acknowledged = new ArrayList<>();
            String own = "";
            Optional<String> tag = Optional.empty();
            for (int i = 0; i < lines; i++) {
                String line = "// own " + number + " " + i + ";";
                own += line + "\n";
                Response saved = put(who, draft, "rules/own-" + number + ".drl", tag, own);
                if (saved.statusCode() == 200) {
                    tag = Optional.of(saved.header("ETag"));
                    acknowledged.add(line);
                }
                acknowledged.addAll(shared(who, "// shared " + number + " " + i + ";"));
            }
            return acknowledged;
        }

        private List<String> shared(String who, String line) {
            for (int tries = 0; tries < 500; tries++) {
                Response now = as(who).get(at(draft, "rules/shared.drl"));
                Response saved = put(
                        who, draft, "rules/shared.drl", Optional.of(now.header("ETag")), now.asString() + line + "\n");
                if (saved.statusCode() == 200) {
                    return List.of(line);
                }
            }
            return List.of();
        }
    }

    private static JsonPath begin(String from, String body) {
        return as("consultant")
                .contentType("application/json")
                .body(body)
                .post("/api/editions/" + from + "/drafts")
                .then()
                .statusCode(201)
                .extract()
                .jsonPath();
    }

    private static Bundle small() {
        return Bundle.of(SmallEdition.files(SmallEdition.withFewRules()));
    }

    private static String draft(Bundle bundle) {
        return as("consultant")
                .contentType("application/zip")
                .body(bundle.zip())
                .post("/api/editions")
                .then()
                .statusCode(201)
                .body("errors", equalTo(0))
                .extract()
                .path("id");
    }

    private static String at(String draft, String path) {
        return "/api/editions/" + draft + "/files/" + path;
    }

    private static Response put(String who, String draft, String path, Optional<String> tag, String text) {
        RequestSpecification request =
                as(who).contentType("text/plain; charset=UTF-8").body(text);
        return tag.map(t -> request.header("If-Match", t))
                .orElseGet(() -> request.header("If-None-Match", "*"))
                .put(at(draft, path));
    }

    /** Signing in costs time on purpose; once for each person is enough. */
    private static final Map<String, RequestSpecification> TOKENS = new ConcurrentHashMap<>();

    private static RequestSpecification as(String who) {
        return given().spec(TOKENS.computeIfAbsent(who, SignedInBrowser::bearer));
    }
}
