package org.washwright.casework;

import java.util.List;

/**
 * What is to be changed of a task in a what-if, as a page draws it.
 *
 * @param fields attributes that are being changed, with what was typed
 * @param steps changes of whole entries and lists
 * @param offers what else can be changed, by group
 * @param errors everything wrong, with the field it stands at
 */
public record ChangeForm(
        List<FormView.Field> fields, List<Step> steps, List<Offers> offers, List<FormView.FieldError> errors) {

    /** A change that needs no typing: as it is written, and in words. */
    public record Step(String set, String words) {}

    /** Things that can be changed. */
    public record Offers(String title, List<Offer> offers) {}

    /** One of them: how the form calls it, and what a reader calls it. */
    public record Offer(String pick, String label) {}
}
