package org.washwright.editing.tree;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.washwright.document.edit.Change;
import org.washwright.document.edit.Data;
import org.washwright.document.edit.Pointers;
import org.washwright.editing.Posted;

/** The changes of a tree's file that a form asks for. What says the same is not changed. */
final class TreeForm {

    /** What an answer leads to when it leads to a question that is not there yet. */
    static final String NEW = "+";

    private static final List<String> HEAD = List.of("title", "proposes", "basis", "source", "start");

    private final TreeData tree;
    private final Posted posted;
    private final List<Change> changes = new ArrayList<>();
    private String focus = "";

    private TreeForm(TreeData tree, Posted posted) {
        this.tree = tree;
        this.posted = posted;
    }

    /** The changes, and which question they leave the reader at. */
    record Asked(List<Change> changes, String focus) {}

    static Asked of(TreeData tree, Posted posted) {
        TreeForm form = new TreeForm(tree, posted);
        String question = posted.word("question");
        switch (posted.asked().word()) {
            case "head" -> HEAD.forEach(word -> form.text("", word, posted.word(word)));
            case "new" -> form.newQuestion(posted.word("ask"));
            case "drop" -> form.changes.add(new Change.Remove(at(question)));
            default -> tree.question(question).ifPresent(form::question);
        }
        return new Asked(form.changes, form.focus);
    }

    private static String at(String question) {
        return Pointers.child("/questions", question);
    }

    private void newQuestion(String ask) {
        String id = tree.freeId();
        enter(id, ask.isEmpty() ? "What do you want to ask?" : ask);
        focus = id;
    }

    private void enter(String id, String ask) {
        changes.add(new Change.Enter("/questions", tree.questions().size(), id, TreeData.newQuestion(ask)));
    }

    private void text(String parent, String key, String text) {
        String pointer = Pointers.child(parent, key);
        String now = tree.data().at(pointer).map(Data::text).orElse("");
        if (text.equals(now)) {
            return;
        }
        if (text.isEmpty() && (key.equals("help") || key.equals("source"))) {
            changes.add(new Change.Remove(pointer));
        } else {
            changes.add(new Change.Put(pointer, Data.one(text)));
        }
    }

    private void question(TreeData.Question question) {
        focus = question.id();
        String pointer = at(question.id());
        text(pointer, "ask", posted.word("ask"));
        text(pointer, "help", posted.word("help"));
        for (TreeData.Answer answer : question.answers()) {
            if (posted.has("say." + answer.number())) {
                answer(Pointers.child(pointer + "/answers", answer.number()), answer);
            }
        }
        Posted.Asked asked = posted.asked();
        String answers = pointer + "/answers";
        int n = asked.number();
        int size = question.answers().size();
        switch (asked.word()) {
            case "add" ->
                changes.add(new Change.Insert(answers, size, TreeData.newAnswer(freeId(question), "Another answer")));
            case "remove" -> changes.add(new Change.Remove(Pointers.child(answers, n)));
            case "up" -> move(answers, n, n - 1, size);
            case "down" -> move(answers, n, n + 1, size);
            default -> {
                // saving alone
            }
        }
    }

    private void move(String answers, int from, int to, int size) {
        if (to >= 0 && to < size) {
            changes.add(new Change.Move(Pointers.child(answers, from), to));
        }
    }

    private void answer(String pointer, TreeData.Answer answer) {
        int n = answer.number();
        text(pointer, "id", posted.word("id." + n));
        text(pointer, "say", posted.word("say." + n));
        String next = posted.word("next." + n);
        if (next.equals(NEW)) {
            next = tree.freeId();
            enter(next, "What do you want to ask?");
            focus = next;
        }
        String propose = posted.word("propose." + n);
        if (!next.isEmpty()) {
            swap(pointer, "propose", "next", Data.one(next));
        } else if (!propose.equals(answer.propose()) || !answer.next().isEmpty()) {
            List<String> words =
                    Stream.of(propose.split("\\|")).map(String::strip).toList();
            Data value = words.size() > 1 ? Data.texts(words) : Data.one(propose.isEmpty() ? "unknown" : propose);
            swap(pointer, "next", "propose", value);
        }
    }

    private void swap(String pointer, String gone, String key, Data value) {
        String there = Pointers.child(pointer, key);
        if (!tree.data().at(there).equals(java.util.Optional.of(value))) {
            changes.add(new Change.Put(there, value));
        }
        if (tree.data().at(Pointers.child(pointer, gone)).isPresent()) {
            changes.add(new Change.Remove(Pointers.child(pointer, gone)));
        }
    }

    private static String freeId(TreeData.Question question) {
        Set<String> ids = new HashSet<>(
                question.answers().stream().map(TreeData.Answer::id).toList());
        int n = ids.size() + 1;
        while (ids.contains("answer-" + n)) {
            n++;
        }
        return "answer-" + n;
    }
}
