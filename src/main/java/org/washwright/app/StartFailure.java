package org.washwright.app;

/** The service cannot start for a reason its operator can do something about; the message holds the advice. */
final class StartFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    StartFailure(String message) {
        super(message);
    }

    StartFailure(String message, Throwable cause) {
        super(message, cause);
    }
}
