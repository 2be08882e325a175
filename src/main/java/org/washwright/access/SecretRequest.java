package org.washwright.access;

import io.quarkus.security.identity.request.BaseAuthenticationRequest;

/** A secret brought by a request, to be turned into an identity. */
final class SecretRequest extends BaseAuthenticationRequest {
    private final SignedIn.By by;
    private final Secret secret;

    SecretRequest(SignedIn.By by, Secret secret) {
        this.by = by;
        this.secret = secret;
    }

    SignedIn.By by() {
        return by;
    }

    Secret secret() {
        return secret;
    }
}
