package org.washwright.rulebook;

import java.util.List;
import java.util.UUID;

/** Tells what is to be looked at before a release; any feature may add to it. */
public interface GateSource {

    /** What this source looks at, as it stands for the present files of the edition. */
    List<GateItem> items(UUID workspace, EditionView edition, Reading reading);
}
