package org.washwright.rulebook;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.washwright.document.Diagnostic;
import org.washwright.document.Severity;

/**
 * Files of an edition that belong together, for display.
 *
 * @param kind what they hold
 * @param entries the files in order of their names
 */
record FileGroup(Kind kind, List<Entry> entries) {

    /** What a file of an edition can hold, and what a new one of the kind starts with. */
    enum Kind {
        RULES("Rules", "rules/", ".drl", "text", "// Rules, one after the other; see the rule language.\n"),
        TABLES(
                "Decision tables",
                "tables/",
                ".csv",
                "table",
                "title,New table\nbasis,common practice\nthen,support\n\nid,target,criterion,points,reason\n"),
        TREES("Question trees", "trees/", ".yaml", "tree", """
                id: new-tree
                title: What is to be found out?
                proposes: Demand.residue
                basis: common practice
                start: first
                questions:
                  first:
                    ask: What is asked first?
                    answers:
                      - {id: one, say: One answer, propose: unknown}
                      - {id: dont-know, say: Nobody knows, propose: unknown}
                """),
        WORDS("Words: the catalogue", "catalogue/", ".yaml", "entries", ""),
        CASES("Reference cases", "cases/", ".yaml", "text", "# A task each, with what must come of it.\ncases: []\n"),
        VALUES("Values and sources", "", ".yaml", "entries", "");

        private final String title;
        private final String folder;
        private final String ending;
        private final String editor;
        private final String start;

        Kind(String title, String folder, String ending, String editor, String start) {
            this.title = title;
            this.folder = folder;
            this.ending = ending;
            this.editor = editor;
            this.start = start;
        }

        /** As people say it. */
        public String title() {
            return title;
        }

        /** The folder of its files, with a slash at the end; empty for those at the top. */
        public String folder() {
            return folder;
        }

        /** Ending of its files. */
        public String ending() {
            return ending;
        }

        /** What a new file holds. */
        String start() {
            return start;
        }

        /** Whether new files of the kind begin here. */
        public boolean mayBegin() {
            return !start.isEmpty();
        }

        static Kind of(String path) {
            return Arrays.stream(values())
                    .filter(kind -> path.startsWith(kind.folder))
                    .findFirst()
                    .orElseThrow();
        }
    }

    /**
     * A file.
     *
     * @param path its name
     * @param tag of its present state
     * @param lines how many lines it has
     * @param errors errors found in it
     * @param warnings warnings found in it
     */
    record Entry(String path, String tag, long lines, long errors, long warnings) {

        /** The page that edits files of its kind, from the address of the edition. */
        public String editor() {
            return "/" + Kind.of(path).editor + "?file=" + encoded();
        }

        /** Whether that is the text itself. */
        public boolean isText() {
            return Kind.of(path).editor.equals("text");
        }

        /** The page that edits its text. */
        public String text() {
            return "/text?file=" + encoded();
        }

        /** Its name without the folder. */
        public String name() {
            return path.substring(Kind.of(path).folder.length());
        }

        private String encoded() {
            return URLEncoder.encode(path, StandardCharsets.UTF_8);
        }
    }

    static List<FileGroup> of(List<KeptFile> files, List<Diagnostic> found) {
        Map<String, List<Diagnostic>> byFile =
                found.stream().collect(Collectors.groupingBy(d -> d.place().file()));
        Map<Kind, List<Entry>> byKind = files.stream()
                .map(file -> entry(file, byFile.getOrDefault(file.path(), List.of())))
                .collect(Collectors.groupingBy(entry -> Kind.of(entry.path())));
        return Arrays.stream(Kind.values())
                .filter(byKind::containsKey)
                .map(kind -> new FileGroup(kind, byKind.get(kind)))
                .toList();
    }

    private static Entry entry(KeptFile file, List<Diagnostic> found) {
        long errors = found.stream().filter(d -> d.severity() == Severity.ERROR).count();
        return new Entry(file.path(), file.tag(), file.text().lines().count(), errors, found.size() - errors);
    }
}
