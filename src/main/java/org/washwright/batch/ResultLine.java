package org.washwright.batch;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.washwright.assessment.Answer;
import org.washwright.document.Diagnostic;
import org.washwright.library.Evaluation;

/** One line of the output: what came of one record, as one JSON object. */
final class ResultLine {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private ResultLine() {}

    static byte[] answered(InputRecord record, Evaluation.Answered answered, boolean full) {
        Answer answer = answered.answer();
        Map<String, Object> out = start(record, Status.ANSWERED, answered.title());
        out.put("answer", answered.hash());
        out.put("request", answer.requestHash());
        out.put("headline", answer.headline().sentence());
        answer.candidates().stream().findFirst().ifPresent(c -> out.put("first", candidate(c)));
        out.put("counts", counts(answer));
        byte[] line = json(out);
        return full ? withAnswer(line, answered.bytes()) : end(line);
    }

    static byte[] refused(InputRecord record, Evaluation.Refused refused) {
        Map<String, Object> out = start(record, Status.REFUSED, refused.title());
        out.put(
                "diagnostics",
                refused.diagnostics().stream().map(Diagnostic::asData).toList());
        return end(json(out));
    }

    /** A record on which the program itself failed. */
    static byte[] failed(InputRecord record, String failure) {
        Map<String, Object> out = start(record, Status.FAILED, "");
        out.put("failure", failure);
        return end(json(out));
    }

    private static Map<String, Object> start(InputRecord record, Status status, String title) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("record", record.number());
        out.put("line", record.line());
        out.put("key", record.key());
        out.put("sha256", record.sha256());
        out.put("status", status.word());
        out.put("title", title);
        return out;
    }

    private static Map<String, Object> candidate(Answer.Candidate c) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("process", c.process());
        out.put("name", c.name());
        out.put("status", c.status());
        out.put("points", List.of(c.low(), c.high()));
        return out;
    }

    private static Map<String, Object> counts(Answer answer) {
        long recommended = answer.candidates().stream()
                .filter(c -> c.status().equals("recommended"))
                .count();
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("recommended", recommended);
        out.put("conditional", answer.candidates().size() - recommended);
        out.put("ruledOut", answer.ruledOut().size());
        out.put("cautions", answer.cautions().size());
        out.put("questions", answer.questions().size());
        return out;
    }

    private static byte[] json(Map<String, Object> data) {
        try {
            return MAPPER.writeValueAsBytes(data);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("plain data can always be written as JSON", e);
        }
    }

    private static byte[] end(byte[] line) {
        byte[] ended = java.util.Arrays.copyOf(line, line.length + 1);
        ended[line.length] = '\n';
        return ended;
    }

    /** The answer's own bytes are put in as they are: written again they could come out otherwise. */
    private static byte[] withAnswer(byte[] line, byte[] answer) {
        byte[] name = ",\"full\":".getBytes(StandardCharsets.UTF_8);
        ByteArrayOutputStream out = new ByteArrayOutputStream(line.length + name.length + answer.length + 1);
        out.write(line, 0, line.length - 1);
        out.writeBytes(name);
        out.writeBytes(answer);
        out.write('}');
        out.write('\n');
        return out.toByteArray();
    }
}
