package org.washwright.editing;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.washwright.access.SignedInBrowser;
import org.washwright.exchange.TableWorkbook;
import org.washwright.generate.SmallEdition;

/** The editors over a small edition; what a file has to say afterwards was written out by hand. */
@QuarkusTest
class EditorPagesTest {

    private static final String TABLE = "tables/t.csv";
    private static final String ROWS =
            "title,T\nbasis,common practice\nthen,support\n\nid,Soil.kind,target,criterion,points,reason\n";
    private static final String TREE = """
            # Played at the sink.
            id: which
            title: Which soil?
            proposes: Soil.kind
            basis: common practice
            start: look
            questions:
              look:
                ask: What do you see?
                answers:
                  - {id: a, say: A film, propose: %s}   # thin
                  - {id: dont-know, say: Can't be seen, propose: unknown}
            """;

    /** Signed in once: each time costs a password's hash. */
    private static SignedInBrowser consultant;

    private static RequestSpecification api;

    private String edition;
    private String soil;
    private String target;
    private String criterion;

    @BeforeEach
    void draft() {
        if (api == null) {
            consultant = SignedInBrowser.as("consultant");
            api = SignedInBrowser.bearer("consultant");
        }
        Map<String, byte[]> files = new LinkedHashMap<>(
                SmallEdition.files(SmallEdition.withFewRules()).files());
        var small = SmallEdition.read(SmallEdition.files(SmallEdition.withFewRules()));
        soil = small.catalogue().ofKind("soil").keySet().iterator().next();
        target = small.catalogue().leaves().iterator().next().id();
        criterion = small.grading().areas().get(0).criteria().get(0).id();
        files.put(TABLE, (ROWS + row("T-1")).getBytes(StandardCharsets.UTF_8));
        files.put("trees/which.yaml", TREE.formatted(soil).getBytes(StandardCharsets.UTF_8));
        edition = given().spec(api)
                .contentType("application/zip")
                .body(new org.washwright.exchange.EditionFiles(files).toZip())
                .post("/api/editions")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
    }

    private String row(String id) {
        return id + "," + soil + "," + target + "," + criterion + ",2,\"Why, then.\"\n";
    }

    private String address(String editor, String file) {
        return "/rulebooks/" + edition + "/" + editor + "?file=" + file;
    }

    private String text(String file) {
        return given().spec(api)
                .get("/api/editions/" + edition + "/files/" + file)
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }

    private String tag(String page) {
        Matcher tag = Pattern.compile("name=\"tag\" value=\"([0-9a-f]+)\"")
                .matcher(consultant.request().get(page).asString());
        assertTrue(tag.find(), page);
        return tag.group(1);
    }

    private Map<String, String> grid(String... cells) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("tag", tag(address("table", TABLE)));
        fields.put("h.title", "T");
        fields.put("h.basis", "common practice");
        fields.put("h.then", "support");
        String[] columns = {"id", "Soil.kind", "target", "criterion", "points", "reason"};
        for (int c = 0; c < columns.length; c++) {
            fields.put("c." + c, columns[c]);
            fields.put("cf." + c, String.valueOf(c));
        }
        fields.put("rf.0", "0");
        for (int c = 0; c < cells.length; c++) {
            fields.put("r.0." + c, cells[c]);
        }
        return fields;
    }

    private Response post(String editor, String file, Map<String, String> fields) {
        return consultant.post(address(editor, file), address(editor, file), fields);
    }

    @Test
    void a_row_is_added_copied_and_changed_without_scripts_and_the_rest_keeps_its_bytes() {
        Map<String, String> fields = grid("T-1", soil, target, criterion, "2", "Why, then.");
        fields.put("do", "copy.0");
        post("table", TABLE, fields).then().statusCode(303);
        assertEquals(ROWS + row("T-1") + row("T-2"), text(TABLE));
    }

    @Test
    void a_cell_is_checked_while_it_is_typed_and_nothing_is_stored() {
        Map<String, String> fields = grid("T-1", "<script>x</script>", target, criterion, "9", "Why");
        String page = address("table", TABLE);
        consultant
                .post(page, page.replace("/table?", "/table/check?"), fields)
                .then()
                .statusCode(200)
                .body("wrong.column", hasItem(1))
                .body("wrong.row", hasItem(0));
        assertEquals(ROWS + row("T-1"), text(TABLE));
    }

    @Test
    void hostile_cells_come_back_as_text() {
        String evil = "<img src=x onerror=alert(1)>\"'{inject:caller.name}";
        post("table", TABLE, grid("T-1", soil, target, criterion, "2", evil))
                .then()
                .statusCode(303);
        consultant
                .request()
                .get(address("table", TABLE))
                .then()
                .body(not(containsString("<img src=x")))
                .body(containsString("&lt;img src=x onerror=alert(1)&gt;&quot;&#39;{inject:caller.name}"));
    }

    @Test
    void two_who_change_one_table_both_see_both_and_nothing_is_lost() {
        Map<String, String> mine = grid("T-1", soil, target, criterion, "3", "Mine");
        post("table", TABLE, grid("T-1", soil, target, criterion, "1", "Theirs"))
                .then()
                .statusCode(303);
        post("table", TABLE, mine)
                .then()
                .statusCode(412)
                .body(containsString("Theirs"))
                .body(containsString("Mine"));
        assertTrue(text(TABLE).contains("Theirs"));
    }

    @Test
    void a_table_goes_to_a_workbook_and_back_and_stays_byte_for_byte() {
        Response got = given().spec(api).get("/api/editions/" + edition + "/tables/t.csv/workbook");
        String tag = got.then().statusCode(200).extract().header("ETag");
        given().spec(api)
                .header("If-Match", tag)
                .contentType("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet")
                .body(got.asByteArray())
                .put("/api/editions/" + edition + "/tables/t.csv/workbook")
                .then()
                .statusCode(200);
        assertEquals(ROWS + row("T-1"), text(TABLE));
        given().spec(api)
                .header("If-Match", tag)
                .contentType("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet")
                .body("no workbook".getBytes(StandardCharsets.UTF_8))
                .put("/api/editions/" + edition + "/tables/t.csv/workbook")
                .then()
                .statusCode(422);
        given().spec(api)
                .get("/api/editions/" + edition + "/tables/t.csv")
                .then()
                .statusCode(200)
                .body("rows[0].cells[0]", equalTo("T-1"))
                .body("wrong.size()", equalTo(0));
        assertArrayEquals(
                (ROWS + row("T-1")).getBytes(StandardCharsets.UTF_8),
                consultant
                        .request()
                        .get("/rulebooks/" + edition + "/table/csv?file=" + TABLE)
                        .asByteArray());
        assertTrue(TableWorkbook.write(ROWS).length > 0);
    }

    @Test
    void paths_that_lead_elsewhere_are_not_found() {
        for (String path :
                new String[] {"../edition.yaml", "edition.yaml", "tables/../edition.yaml", "tables/none.csv", ""}) {
            consultant.request().get(address("table", path)).then().statusCode(404);
        }
        consultant.request().get(address("tree", "catalogue/kinds.yaml")).then().statusCode(404);
        consultant.request().get(address("entries", "rules/a.drl")).then().statusCode(404);
    }

    @Test
    void only_a_consultant_changes_and_others_read() {
        SignedInBrowser engineer = SignedInBrowser.as("engineer");
        engineer.request().get(address("table", TABLE)).then().statusCode(200).body(not(containsString("data-sheet")));
        Map<String, String> fields = grid("T-1", soil, target, criterion, "2", "Why");
        engineer.post("/account", address("table", TABLE), fields).then().statusCode(403);
    }

    @Test
    void a_branch_is_added_to_a_tree_and_played_and_the_comments_stay() {
        String file = "trees/which.yaml";
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("tag", tag(address("tree", file)));
        fields.put("question", "look");
        fields.put("ask", "What do you see?");
        fields.put("id.0", "a");
        fields.put("say.0", "A film");
        fields.put("next.0", "+");
        fields.put("propose.0", soil);
        post("tree", file, fields).then().statusCode(303);
        assertEquals(TREE.formatted(soil).replace("propose: " + soil + "}", "next: question-2}") + """
                          question-2:
                            ask: What do you want to ask?
                            answers:
                              - {id: dont-know, say: Nobody can say, propose: unknown}
                        """, text(file));
        consultant
                .request()
                .get(address("tree", file) + "&play=a.dont-know")
                .then()
                .body(containsString("It proposes <b>unknown</b>"));
    }

    @Test
    void a_term_is_added_changed_and_refused_beside_its_field() {
        String file = SmallEdition.withFewRules().keySet().stream()
                .filter(f -> f.startsWith("catalogue/") && text(f).startsWith("kind: soil\n"))
                .findFirst()
                .orElseThrow();
        String before = text(file);
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("tag", tag(address("entries", file) + "&entry=new"));
        fields.put("entry", "new");
        fields.put("f.id", "fresh-soil");
        fields.put("f.name", "fresh: soil");
        fields.put("f.synonyms", "one\ntwo, three");
        fields.put("f.properties.oily", "perhaps");
        post("entries", file, fields)
                .then()
                .statusCode(422)
                .body(containsString("id=\"f-properties-oily-wrong\""))
                .body(containsString("value=\"fresh-soil\""));
        assertEquals(before, text(file));
        fields.put("f.properties.oily", "yes");
        post("entries", file, fields).then().statusCode(303);
        assertTrue(text(file).startsWith(before), text(file));
        assertTrue(text(file).contains("fresh: soil"), text(file));
        assertTrue(text(file).contains("two, three"), text(file));
    }

    @Test
    void a_weight_is_changed_alone() {
        String before = text("grading.yaml");
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("tag", tag(address("entries", "grading.yaml") + "&entry=/areas/0"));
        fields.put("entry", "/areas/0");
        fields.put("f.weight", "37");
        post("entries", "grading.yaml", fields).then().statusCode(303);
        String after = text("grading.yaml");
        assertEquals(before.lines().count(), after.lines().count());
        assertEquals(1, before.lines().filter(l -> !after.contains(l)).count(), after);
        assertTrue(after.contains("weight: 37"), after);
    }

    @Test
    void a_file_with_errors_is_left_to_the_text_editor() {
        String file = "trees/which.yaml";
        String tag = tag(address("tree", file));
        given().spec(api)
                .header("If-Match", "\"" + tag + "\"")
                .contentType("text/plain")
                .body("a: &x [*x]\nb: !!java.net.URL c\n")
                .put("/api/editions/" + edition + "/files/" + file)
                .then()
                .statusCode(200);
        consultant.request().get(address("tree", file)).then().statusCode(200).body(containsString("Mend it as text"));
    }
}
