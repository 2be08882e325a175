package org.washwright.editing.tree;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.washwright.document.edit.Data;

/**
 * A question tree as its file says it, sound or not.
 *
 * @param data the whole file
 */
record TreeData(Data data) {

    /** An answer: where it stands, what it says, where it leads, or what it proposes. */
    record Answer(int number, String id, String say, String next, String propose) {}

    /** A question. */
    record Question(String id, String ask, String help, List<Answer> answers) {
        /** The answer with this id. */
        Optional<Answer> answer(String answer) {
            return answers.stream().filter(a -> a.id().equals(answer)).findFirst();
        }
    }

    /** A question as the picture shows it: the branch below each answer, unless it stands elsewhere already. */
    record Drawn(Question question, List<Branch> branches) {}

    /** An answer in the picture. */
    record Branch(Answer answer, Optional<Drawn> below, boolean again) {}

    public String head(String word) {
        return data.at("/" + word).map(Data::text).orElse("");
    }

    List<Question> questions() {
        List<Question> out = new ArrayList<>();
        if (data.at("/questions").orElse(Data.one("")) instanceof Data.Named all) {
            all.entries().forEach((id, q) -> out.add(question(id, q)));
        }
        return out;
    }

    Optional<Question> question(String id) {
        return questions().stream().filter(q -> q.id().equals(id)).findFirst();
    }

    private static Question question(String id, Data data) {
        List<Answer> answers = new ArrayList<>();
        if (data.at("/answers").orElse(Data.one("")) instanceof Data.Many all) {
            for (int i = 0; i < all.items().size(); i++) {
                Data a = all.items().get(i);
                answers.add(new Answer(
                        i,
                        text(a, "id"),
                        text(a, "say"),
                        text(a, "next"),
                        a.at("/propose").map(p -> String.join(" | ", p.texts())).orElse("")));
            }
        }
        return new Question(id, text(data, "ask"), text(data, "help"), answers);
    }

    private static String text(Data data, String key) {
        return data.at("/" + key).map(Data::text).orElse("");
    }

    /** The picture from the first question on; empty when there is none. */
    public Optional<Drawn> drawn() {
        return question(head("start")).map(q -> drawn(q, new HashSet<>()));
    }

    private Drawn drawn(Question question, Set<String> seen) {
        seen.add(question.id());
        List<Branch> branches = new ArrayList<>();
        for (Answer answer : question.answers()) {
            boolean again = seen.contains(answer.next());
            Optional<Drawn> below =
                    again ? Optional.empty() : question(answer.next()).map(q -> drawn(q, seen));
            branches.add(new Branch(answer, below, again));
        }
        return new Drawn(question, branches);
    }

    /** Questions that the picture does not reach. */
    public List<Question> loose() {
        Set<String> seen = new HashSet<>();
        question(head("start")).ifPresent(q -> drawn(q, seen));
        return questions().stream().filter(q -> !seen.contains(q.id())).toList();
    }

    /** An id that no question has. */
    String freeId() {
        Set<String> ids = new HashSet<>(questions().stream().map(Question::id).toList());
        int n = ids.size() + 1;
        while (ids.contains("question-" + n)) {
            n++;
        }
        return "question-" + n;
    }

    /** A question with one answer, to go on from. */
    static Data newQuestion(String ask) {
        return new Data.Named(ordered(
                "ask", Data.one(ask), "answers", new Data.Many(List.of(newAnswer("dont-know", "Nobody can say")))));
    }

    static Data newAnswer(String id, String say) {
        Map<String, Data> answer = new java.util.LinkedHashMap<>();
        answer.put("id", Data.one(id));
        answer.put("say", Data.one(say));
        answer.put("propose", Data.one("unknown"));
        return new Data.Named(answer);
    }

    private static Map<String, Data> ordered(String first, Data one, String second, Data two) {
        Map<String, Data> out = new java.util.LinkedHashMap<>();
        out.put(first, one);
        out.put(second, two);
        return out;
    }
}
