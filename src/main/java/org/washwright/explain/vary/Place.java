package org.washwright.explain.vary;

import java.util.Optional;
import org.washwright.analysis.TaskEdit;
import org.washwright.task.Group;

/** Something of a task that may be otherwise. */
public sealed interface Place {

    /** Where it is, unlike that of any other place. */
    String pointer();

    /** The group it belongs to; empty for an attribute that the edition declares. */
    Optional<Group> group();

    /** An attribute of an entry that is there. */
    record Said(TaskEdit edit) implements Place {
        @Override
        public String pointer() {
            return edit.pointer();
        }

        @Override
        public Optional<Group> group() {
            return edit.group();
        }
    }

    /** An entry of a list that may be taken away. */
    record Gone(Group list, int index) implements Place {
        @Override
        public String pointer() {
            return "/" + list.key() + "/" + index;
        }

        @Override
        public Optional<Group> group() {
            return Optional.of(list);
        }
    }

    /** One more entry at the end of a list; nothing but what it is is said of it. */
    record More(Group list, int index) implements Place {
        @Override
        public String pointer() {
            return "/" + list.key() + "/" + index + "/"
                    + list.attributes().get(0).name();
        }

        @Override
        public Optional<Group> group() {
            return Optional.of(list);
        }
    }

    /** A list that may hold more than it lists: it holds no more. */
    record Closed(Group list) implements Place {
        @Override
        public String pointer() {
            return "/" + list.key();
        }

        @Override
        public Optional<Group> group() {
            return Optional.of(list);
        }
    }
}
