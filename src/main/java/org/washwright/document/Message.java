package org.washwright.document;

import static org.washwright.document.Severity.ERROR;
import static org.washwright.document.Severity.WARNING;

/**
 * The catalogue of messages. Text says what is wrong with the value, advice what to do; {@code {value}} stands for the
 * value found, {@code {0}} ... for what was expected.
 */
public enum Message {
    // documents
    UNREADABLE(ERROR, "\"{value}\" can't be read", "Check that it exists and may be read"),
    NOT_UTF8(ERROR, "the file is not UTF-8 text", "Save it as UTF-8 and try again"),
    BROKEN_YAML(ERROR, "this is not readable YAML: {0}", "Check indentation, colons and quotes at this place"),
    BROKEN_JSON(ERROR, "this is not readable JSON: {0}", "Check commas, quotes and brackets at this place"),
    EMPTY_DOCUMENT(ERROR, "the document is empty", "Write at least one attribute"),
    SEVERAL_DOCUMENTS(ERROR, "more than one document in a file", "Put each into a file of its own"),
    TOO_DEEP(ERROR, "nested more than {0} levels deep", "Flatten it; no form here needs more than eight levels"),
    ALIAS(ERROR, "anchors and aliases are not read here (\"{value}\")", "Write the value out at each place"),
    TAG(ERROR, "tags are not read here (\"{value}\")", "Leave the tag out"),
    KEY_NOT_TEXT(ERROR, "{value} stands where a name is expected", "Use a plain word as the key"),
    DUPLICATE_KEY(ERROR, "\"{value}\" is given twice", "Keep one of the two"),
    TOO_LARGE(ERROR, "{value} is more than the {0} allowed", "Leave out what is not needed, or split it"),
    TOO_MANY(ERROR, "more errors than can be listed", "Mend the first ones and check again"),
    HIDDEN_CHARACTER(
            ERROR,
            "a character that can't be seen stands here ({value})",
            "Take it out, or type the line again by hand"),
    EXPECTED_MAP(ERROR, "{value} stands where a map of named values is expected", "Write \"name: value\" lines"),
    EXPECTED_LIST(ERROR, "{value} stands where a list is expected", "Write a list, one \"- \" a line"),
    EXPECTED_TEXT(ERROR, "{value} stands where a single value is expected", "Write one value"),
    UNKNOWN_FIELD(ERROR, "\"{value}\" is not known in {0}", "{1}"),
    MISSING_FIELD(ERROR, "{0} lacks \"{1}\"", "Add it"),
    BAD_ID(
            ERROR,
            "\"{value}\" is not an id",
            "Use letters a to z, digits and hyphens, at most 60, starting with a letter"),
    NOT_A_NUMBER(ERROR, "\"{value}\" is not a number", "Write for instance 12.5, with a point as decimal sign"),

    EDIT_NOWHERE(
            ERROR, "\"{value}\" leads to nothing that could be changed so", "Read the file again; it may have changed"),
    EDIT_TANGLED(
            ERROR, "\"{value}\" is written in a way that a form can't change", "Change it in the text of the file"),

    // quantities
    BAD_QUANTITY(ERROR, "\"{value}\" is not a quantity", "Write a number and a unit, for instance \"{0}\""),
    DECIMAL_COMMA(ERROR, "\"{value}\" holds a comma", "Use a point as decimal sign and no sign between thousands"),
    UNKNOWN_UNIT(ERROR, "\"{0}\" in \"{value}\" is not a known unit", "Use for instance {1}"),
    WRONG_DIMENSION(ERROR, "\"{value}\" is no {0}", "Use for instance {1}"),
    MISSING_UNIT(ERROR, "\"{value}\" has no unit", "Add one, for instance {0}"),
    RANGE_REVERSED(ERROR, "the range \"{value}\" runs backwards", "Write the smaller end first"),
    OUT_OF_RANGE(ERROR, "\"{value}\" is outside {0}", "Check number and unit"),

    // tasks
    CONTRADICTION(ERROR, "{value} contradict each other", "Keep the one that was measured"),
    UNKNOWN_TERM(ERROR, "\"{value}\" is no {0} of this edition", "{1}"),
    NOT_A_FLAG(ERROR, "\"{value}\" is neither yes nor no", "Write yes, no, unknown or not applicable"),
    BAD_CODE(
            ERROR,
            "\"{value}\" is not a component cleanliness code: {0}",
            "Write for instance A(B-E17/F-G14/H-I4/J-K00)"),
    BAD_LEVEL(ERROR, "\"{value}\" is not a product cleanliness level: {0}", "Write for instance 200B, 100 or A/10"),
    BAD_REST(
            ERROR,
            "\"{value}\" can't be said of the rest",
            "Write \"rest: not applicable\", or leave it out where the rest is not known"),
    LIST_TOO_LONG(
            ERROR, "{value} {0}, at most {1} are allowed", "Keep those that differ in what they ask of the process"),
    TEXT_TOO_LONG(ERROR, "this text is longer than {0} characters", "Shorten it"),
    NO_TITLE(ERROR, "the task has no title", "Add \"title: ...\" so that people can find it again"),
    PLANT_SOLVENT(
            ERROR,
            "\"{value}\" works with the solvent class {0}, which this list leaves out",
            "Add it, or name another process"),
    TREE_PATH(ERROR, "\"{value}\" is no answer to \"{0}\"", "{1}"),
    TREE_UNFINISHED(ERROR, "the path through \"{0}\" ends before a proposal", "Answer the next question: {1}"),
    UNKNOWN_TREE(ERROR, "\"{value}\" is no question tree of this edition", "{0}"),
    TREE_ATTRIBUTE(ERROR, "the tree \"{value}\" proposes {0}, not this attribute", "Use it there"),

    // many tasks at once
    NO_TASKS(ERROR, "there is no task file below \"{value}\"", "Tasks are files that end in .yaml, .yml or .json"),
    COLUMN_WITHIN(ERROR, "the columns \"{value}\" and \"{0}\" say the same thing twice", "Keep one of the two"),
    CELL_COUNT(
            ERROR,
            "the row has {value} cells, the header {0}",
            "Put quotes around a cell that holds a comma, and leave a cell empty when nothing is given"),
    CELL_QUOTE(
            ERROR,
            "text follows the quote that closes a cell (\"{value}\")",
            "Write a quote inside a quoted cell twice"),
    CELL_UNENDED(ERROR, "a quoted cell is never closed (\"{value}\")", "Close it with a quote"),
    CELL_FORMULA(
            ERROR,
            "the cell holds a formula (\"{value}\")",
            "Write what it comes to; nothing is worked out from cells"),
    CELL_FAULT(ERROR, "the cell holds an error of its own (\"{value}\")", "Write the value, or leave it empty"),
    CELL_DATE(
            ERROR,
            "the cell holds a date (\"{value}\"), which a spreadsheet may have made of other text",
            "Give the cell the format \"text\" and write again what it should say"),
    WORKBOOK_MORE(
            ERROR,
            "the workbook holds {0} (\"{value}\"), which a table has not",
            "Take it out and save again as .xlsx"),
    BROKEN_WORKBOOK(
            ERROR, "this is not a readable workbook: {0}", "Save it again as .xlsx, or fill in the template anew"),
    TASK_FORMAT(
            ERROR, "\"{value}\" is no kind of task file", "Use a file that ends in .yaml, .yml, .json, .csv or .xlsx"),
    SEVERAL_TASKS(ERROR, "the file holds {value} tasks, and one is asked for", "Use \"bulk\" for many tasks"),
    FILE_THERE(ERROR, "\"{value}\" exists already", "Name a new file, or move that one away"),
    REPORT_FORMAT(ERROR, "\"{value}\" is no kind of report", "Use a file that ends in .pdf, .xlsx or .html"),
    NO_SUCH_LINE(
            ERROR,
            "there is no line of \"{value}\" for this task: {0}",
            "Choose a process that may clean it, or leave the process out for the one that stands first"),
    NO_TASK_ROWS(ERROR, "the table holds no task", "Write a row below its header"),
    OUTPUT_IS_INPUT(ERROR, "the output \"{value}\" would be read as input", "Name another file with --out"),
    OUTPUT_UNWRITABLE(
            ERROR,
            "\"{value}\" can't be written: {0}",
            "Check that its folder exists, may be written to and has space, then give the same command again"),
    OUTPUT_BUSY(ERROR, "another run is writing \"{value}\"", "Wait until it has ended, or name another file"),
    OUTPUT_STRANGE(
            ERROR,
            "\"{value}\" exists, but \"{0}\", which says what was asked, can't be read",
            "Name another file with --out, or start anew with --again"),
    OUTPUT_OTHER_REQUEST(
            ERROR,
            "\"{value}\" holds answers to another request; these differ: {0}",
            "Name another file with --out, or start anew with --again"),
    INPUT_CHANGED(
            ERROR,
            "record {0} is not the one that \"{value}\" holds an answer to",
            "Give the input as it was, name another file with --out, or start anew with --again"),
    INPUT_SHORTER(
            ERROR,
            "the input ends at record {0}, but \"{value}\" holds answers to more",
            "Give the input as it was, name another file with --out, or start anew with --again"),

    // editions
    FILE_NAME(
            ERROR,
            "\"{value}\" is no file of an edition",
            "Use the folders and names that the edition format describes"),
    PATH_ESCAPE(ERROR, "\"{value}\" leads out of the edition's folder", "Use plain relative names"),
    BROKEN_ZIP(ERROR, "the bundle is not a readable zip: {0}", "Make it again with any zip program"),
    MISSING_FILE(ERROR, "the edition has no {0}", "Add the file"),
    DUPLICATE_ID(ERROR, "\"{value}\" is used twice as {0}", "Ids are unique; the other one is at {1}"),
    REPLACED_TWICE(
            ERROR, "a term is replaced by \"{value}\", which is replaced itself", "Name the term that stands today"),
    RESERVED_PROPERTY(
            ERROR, "\"{value}\" is computed of every process", "Choose another name, or leave the property out"),
    UNKNOWN_KIND(ERROR, "\"{value}\" is no kind of term", "{0}"),
    UNKNOWN_REFERENCE(ERROR, "\"{value}\" is no {0}", "{1}"),
    PARENT_CYCLE(ERROR, "\"{value}\" is its own ancestor in the process tree", "Give it another parent"),
    NO_ROOT(ERROR, "\"{value}\" does not reach the root \"any\"", "Give it a parent in the process tree"),
    PROPERTY_SHAPE(ERROR, "the property \"{value}\" needs exactly one of quantity, kind or flag", "Keep one"),
    UNKNOWN_DIMENSION(ERROR, "\"{value}\" is no dimension", "{0}"),
    GRADING_SHAPE(ERROR, "grading: {0}", "See the edition format"),
    TREE_CYCLE(
            ERROR,
            "the question tree comes back to \"{value}\"",
            "Lead every answer to a later question or a proposal"),
    TREE_UNREACHED(WARNING, "no answer leads to the question \"{value}\"", "Lead an answer to it or remove it"),

    // reference cases, known findings and the grid
    CASE_TASK(
            ERROR,
            "the case \"{value}\" needs exactly one of task and change",
            "Write the task out under \"task\", or tell it by its difference under \"change\""),
    CASE_EXPECTS_NOTHING(
            ERROR,
            "the case \"{value}\" expects nothing",
            "Say under \"expect\" what must hold, for instance \"proposes\" or \"fires\""),
    CASE_NO_SOURCE(
            ERROR,
            "the case \"{value}\" names no source",
            "Name one under \"source\", or use the basis \"common practice\""),
    CASE_POINTER(ERROR, "\"{value}\" leads nowhere in the task that is changed", "{0}"),
    GRID_SHAPE(ERROR, "the grid: {0} (\"{value}\")", "See the edition format"),
    CASE_CIRCLE(ERROR, "the case \"{value}\" is made from itself", "Let one of the cases write its task out"),

    // what-ifs
    CHANGE_SHAPE(ERROR, "\"{value}\" is no change", "Write POINTER=VALUE, for instance /following/operation=painting"),
    CHANGE_POINTER(ERROR, "\"{value}\" is nothing that can be set in this task", "{0}"),
    CHANGE_COMPUTED(ERROR, "\"{value}\" is computed and can't be set", "Set what it follows from: {0}"),
    CHANGE_NONE(ERROR, "nothing is changed", "Name at least one change, for instance /following/operation=painting"),
    CHANGES_TOO_MANY(ERROR, "{value} changes at once, at most {0} are allowed", "Describe a task of its own instead"),

    // rules
    DRL_SYNTAX(ERROR, "this is not readable rule text: {0}", "Check the line against the rule language"),
    UNICODE_ESCAPE(ERROR, "unicode escapes are refused", "Write the character itself"),
    REFUSED(ERROR, "{0} is not part of the rule language (\"{value}\")", "{1}"),
    MISSING_ANNOTATION(ERROR, "the rule \"{value}\" has no {0}", "Add {1}"),
    UNKNOWN_ANNOTATION(ERROR, "the annotation \"{value}\" is not known", "{0}"),
    BAD_BASIS(
            ERROR, "\"{value}\" is no basis", "Use standard, handbook, regulation, physics, trial or common practice"),
    UNKNOWN_SOURCE(ERROR, "\"{value}\" is no source of this edition", "{0}"),
    NO_SOURCE(ERROR, "the rule \"{value}\" names no source", "Name one, or use the basis \"common practice\""),
    UNKNOWN_TYPE(ERROR, "\"{value}\" is no fact type", "{0}"),
    BAD_CONSTRAINT(
            ERROR,
            "\"{value}\" is not a constraint: {0}",
            "Write field, operator and literal, for instance hardness >= \"31 HRC\""),
    UNKNOWN_VARIABLE(ERROR, "\"{value}\" is not bound above", "Bind it in an earlier pattern"),
    DUPLICATE_VARIABLE(ERROR, "\"{value}\" is bound twice", "Use another name"),
    BINDING_UNDER_OR(
            ERROR,
            "\"{value}\" is bound inside an alternative",
            "Bind it in a constraint of its own, joined by a comma"),
    TYPE_MISMATCH(ERROR, "{0} can't be compared with {1} (\"{value}\")", "{2}"),
    TOO_MANY_PATTERNS(
            ERROR, "the rule \"{value}\" has more than {0} patterns", "Split it, with a conclusion between the parts"),
    JOIN_TOO_LARGE(
            ERROR,
            "the patterns of \"{value}\" can meet in {0} ways, more than {1}",
            "Join them by a shared value, or split the rule"),
    NO_CONDITION(ERROR, "the rule \"{value}\" has no condition", "Add a pattern"),
    NO_CONSEQUENCE(ERROR, "the rule \"{value}\" says nothing", "Add a consequence"),
    UNKNOWN_VERB(ERROR, "\"{value}\" is no verb of the rule language", "{0}"),
    BAD_ARGUMENTS(ERROR, "{0} got {1}", "Write {2}"),
    NO_REASON(ERROR, "the reason of \"{value}\" is empty", "Say in one sentence why"),
    BAD_PLACEHOLDER(ERROR, "\"{value}\" in the reason is no bound value", "{0}"),
    RULE_CYCLE(
            ERROR,
            "these rules depend on each other through conclusions: {value}",
            "Take one conclusion out of the circle"),
    LINE_CONCLUDES(
            ERROR, "the line rule \"{value}\" concludes", "Rules over stages may not conclude; use another verb"),
    TABLE_SHAPE(ERROR, "table: {0} (\"{value}\")", "See the edition format"),
    CONCLUSION_NEVER(
            WARNING,
            "the rule \"{value}\" waits for \"{0}\", which nothing concludes",
            "Conclude it somewhere, or remove the rule");

    private final Severity severity;
    private final String text;
    private final String advice;

    Message(Severity severity, String text, String advice) {
        this.severity = severity;
        this.text = text;
        this.advice = advice;
    }

    /** Whether it refuses the text. */
    public Severity severity() {
        return severity;
    }

    /** What is wrong. */
    public String text() {
        return text;
    }

    /** What to do about it. */
    public String advice() {
        return advice;
    }

    /** Code for programs, for instance {@code unknown-term}. */
    public String code() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
