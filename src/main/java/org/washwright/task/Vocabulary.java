package org.washwright.task;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a task reader must know of an edition: its terms, its own attributes and its question trees. */
public interface Vocabulary {

    /** The id of the term that this word names within a kind, by id, name or synonym; withdrawn terms lead to their successor. */
    Optional<String> term(String kind, String word);

    /** All term ids of a kind. */
    Collection<String> terms(String kind);

    /** All words that name a term of a kind: ids, names and synonyms. */
    default Collection<String> words(String kind) {
        return terms(kind);
    }

    /** Attributes that the edition declares, by id. */
    Map<String, Attribute> declaredAttributes();

    /** Plays a question tree. */
    Optional<Questions> questions(String treeId);

    /** Ids of all question trees. */
    Collection<String> treeIds();

    /** A question tree as far as a reader needs it. */
    interface Questions {

        /** What it proposes, for instance {@code Soil.kind}. */
        String proposes();

        /** Follows the answers from the start. */
        Played play(List<String> answers);
    }

    /**
     * Where answers lead.
     *
     * @param proposal the proposed value; empty when the path is unfinished or wrong
     * @param path the questions and answers in words
     * @param question question at which it stopped, in words; empty when it ended in a proposal
     * @param badAnswer the answer that is none to that question; empty when the path is only unfinished
     * @param possible answers to that question
     */
    record Played(Optional<Value> proposal, String path, String question, String badAnswer, List<String> possible) {}
}
