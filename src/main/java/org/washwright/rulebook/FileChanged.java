package org.washwright.rulebook;

import java.util.Optional;
import java.util.UUID;
import org.washwright.problem.PreconditionFailed;

/** A file was changed by somebody else since the caller read it; what the caller wrote is kept aside. */
public final class FileChanged extends PreconditionFailed {
    private static final long serialVersionUID = 1L;

    private final transient Optional<KeptFile> now;
    private final transient Optional<UUID> aside;

    FileChanged(String path, Optional<KeptFile> now, Optional<UUID> aside) {
        super(path + " was "
                + (now.isPresent() ? "changed" : "deleted")
                + " by somebody else since you read it."
                + (aside.isPresent()
                        ? " Your text is kept aside; look at both and save again."
                        : " Look at it again first."));
        this.now = now;
        this.aside = aside;
    }

    /** What stands there now; empty when the file is gone. */
    public Optional<KeptFile> now() {
        return now;
    }

    /** Where the refused text is kept; empty when there was none. */
    public Optional<UUID> aside() {
        return aside;
    }
}
