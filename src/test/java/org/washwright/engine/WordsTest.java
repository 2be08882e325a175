package org.washwright.engine;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Answer;
import org.washwright.generate.Starter;

class WordsTest {

    @Test
    void noSentenceOfADemoAnswerHasTwoArticlesInARow() {
        Starter.demoTasks().forEach((name, task) -> {
            Answer answer = Starter.interpreted().assess(task, Starter.WISHES).answer();
            List<String> texts = new ArrayList<>();
            answer.firings().forEach(f -> f.findings().forEach(x -> texts.add(x.text())));
            answer.questions().forEach(q -> texts.add(q.question() + " " + q.consequence()));
            texts.forEach(t -> assertFalse(t.matches("(?i).*\\b(a|an|the) (a|an|the)\\b.*"), t));
        });
    }
}
