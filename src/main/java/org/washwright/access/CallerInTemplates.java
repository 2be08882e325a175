package org.washwright.access;

import io.quarkus.arc.Arc;
import io.quarkus.qute.TemplateGlobal;

/** Lets any template say {@code {caller.name}}, {@code {caller.signedIn}} and so on. */
class CallerInTemplates {
    private CallerInTemplates() {}

    @TemplateGlobal
    static Caller caller() {
        return Arc.container().instance(Caller.class).get();
    }
}
