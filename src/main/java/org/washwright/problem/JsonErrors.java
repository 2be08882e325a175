package org.washwright.problem;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** Says where a JSON body went wrong. */
final class JsonErrors {
    private JsonErrors() {}

    static ProblemError describe(JsonProcessingException failure) {
        Optional<JsonLocation> place = Optional.ofNullable(failure.getLocation());
        return new ProblemError(
                failure instanceof JsonMappingException mapping ? Optional.of(pointer(mapping)) : Optional.empty(),
                Optional.empty(),
                number(place.map(JsonLocation::getLineNr)),
                number(place.map(JsonLocation::getColumnNr)),
                Optional.empty(),
                // The original message may name Java types: only a syntax error's is fit for callers.
                failure instanceof JsonMappingException
                        ? "The value at this place has the wrong shape or type."
                        : failure.getOriginalMessage(),
                "Compare the body with the API description at /q/openapi.",
                "json-unreadable");
    }

    private static String pointer(JsonMappingException failure) {
        return failure.getPath().stream()
                .map(step -> step.getFieldName() == null
                        ? Integer.toString(step.getIndex())
                        : step.getFieldName().replace("~", "~0").replace("/", "~1"))
                .collect(Collectors.joining("/", failure.getPath().isEmpty() ? "" : "/", ""));
    }

    private static OptionalInt number(Optional<Integer> found) {
        return found.filter(n -> n > 0).map(OptionalInt::of).orElse(OptionalInt.empty());
    }
}
