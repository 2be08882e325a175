package org.washwright.access;

import java.util.Set;

/** The names of the roles, for {@code @RolesAllowed}. */
public final class Roles {
    /** Writes rules, tables, question trees and reference cases in drafts. */
    public static final String CONSULTANT = "CONSULTANT";
    /** Reviews drafts and releases editions. */
    public static final String REVIEWER = "REVIEWER";
    /** Describes tasks, reads assessments, records trials. */
    public static final String ENGINEER = "ENGINEER";
    /** Replays assessments and works exercises. */
    public static final String TRAINEE = "TRAINEE";
    /** Looks after accounts and settings. */
    public static final String ADMINISTRATOR = "ADMINISTRATOR";
    /** Anyone signed in, whatever the role. */
    public static final String ANYONE = "**";

    static final Set<String> ALL = Set.of(CONSULTANT, REVIEWER, ENGINEER, TRAINEE, ADMINISTRATOR);

    private Roles() {}
}
