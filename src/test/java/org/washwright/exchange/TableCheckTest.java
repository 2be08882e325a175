package org.washwright.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.washwright.document.Diagnostics;
import org.washwright.rule.Edition;

/** Tables with one fault each; the cell where it stands was counted by hand. */
class TableCheckTest {

    private static Edition words;

    @BeforeAll
    static void readWords() throws IOException {
        words = EditionWords.read(EditionFiles.ofFolder(Path.of("rules/starter"), new Diagnostics()))
                .edition()
                .orElseThrow();
    }

    private static TableCheck check(String row) {
        return TableCheck.of(
                words,
                "tables/t.csv",
                "title,T\nbasis,common practice\nthen,support\n\n"
                        + "id,Soil.kind,Part.wallThickness,target,criterion,points,reason\n" + row + "\n");
    }

    private static void assertAt(int column, String code, String row) {
        List<TableCheck.Found> found = check(row).found();
        assertEquals(code, found.get(0).diagnostic().message().code(), found.toString());
        assertEquals(column, found.get(0).column(), found.toString());
        assertEquals(TableCheck.Part.ROW, found.get(0).part());
    }

    @Test
    void a_fault_is_told_at_its_cell() {
        assertAt(1, "unknown-term", "X-1,cutting-oli,,solvent,soil-removal,1,Why");
        assertAt(1, "unknown-term", "X-1,cutting-oil|rusty,,solvent,soil-removal,1,Why");
        assertAt(2, "unknown-unit", "X-1,cutting-oil,< 3 parsec,solvent,soil-removal,1,Why");
        assertAt(3, "unknown-reference", "X-1,cutting-oil,,solvant,soil-removal,1,Why");
        assertAt(4, "unknown-reference", "X-1,cutting-oil,,solvent,soil-removl,1,Why");
        assertAt(6, "bad-placeholder", "X-1,cutting-oil,,solvent,soil-removal,1,{$lot.kind} why");
        assertAt(0, "bad-id", "<script>,cutting-oil,,solvent,soil-removal,1,Why");
    }

    @Test
    void a_sound_row_says_its_sentence_beside_a_broken_one() {
        TableCheck check =
                check("X-1,cutting-oil,,solvent,soil-removal,1,Why\nX-2,nothing,,solvent,soil-removal,1,Why");
        assertEquals(List.of(0), List.copyOf(check.sentences().keySet()));
        assertTrue(
                check.sentences().get(0).contains("cutting oil"),
                check.sentences().get(0));
    }

    @Test
    void a_fault_of_the_header_is_told_at_its_column_and_one_of_the_head_at_its_line() {
        TableCheck header = TableCheck.of(words, "tables/t.csv", "then,ask\n\nid,Sole.kind,reason\n");
        assertEquals(TableCheck.Part.HEADER, header.found().get(0).part());
        assertEquals(1, header.found().get(0).column());
        TableCheck head = TableCheck.of(words, "tables/t.csv", "title,T\nthen,aks\n\nid,reason\n");
        assertEquals(TableCheck.Part.HEAD, head.found().get(0).part());
        assertEquals(1, head.found().get(0).row());
    }

    @ParameterizedTest
    @MethodSource("org.washwright.exchange.TableTextTest#starterTables")
    void every_row_of_a_real_table_has_its_sentence(Path path) throws IOException {
        String text = Files.readString(path);
        TableCheck check = TableCheck.of(words, "tables/" + path.getFileName(), text);
        assertEquals(List.of(), check.found());
        assertEquals(TableText.of(text).rows().size(), check.sentences().size());
    }
}
