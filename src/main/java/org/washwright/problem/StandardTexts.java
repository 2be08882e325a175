package org.washwright.problem;

import jakarta.ws.rs.container.ContainerRequestContext;

/** What is said about refusals that carry no text of their own. */
final class StandardTexts {
    private StandardTexts() {}

    static String title(int status) {
        return switch (status) {
            case 400 -> "Not understood";
            case 401 -> "Sign in first";
            case 403 -> "Not allowed";
            case 404 -> "Not found";
            case 405 -> "Not possible here";
            case 406 -> "Not available in that form";
            case 413 -> "Too large";
            case 415 -> "Unknown kind of content";
            case 429 -> "Too many tries";
            default -> "Request refused";
        };
    }

    static String detail(int status, ContainerRequestContext request) {
        String path = ProblemAnswers.path(request);
        return switch (status) {
            case 400 ->
                "The request was not understood. If it came from a form, that page was open too long or cookies are"
                        + " blocked: load the page again and send it once more.";
            case 401 -> "This needs a signed-in caller: sign in, or send an 'Authorization: Bearer' token.";
            case 403 -> "Your roles do not allow this; ask an administrator of your workspace.";
            case 404 -> "There is nothing at " + path + "; check the address.";
            case 405 -> "The address " + path + " does not take " + request.getMethod() + ".";
            case 406 -> "The address " + path + " does not answer in the form asked for by the Accept header.";
            case 413 -> "The request is larger than this service takes; split it.";
            case 415 -> "The address " + path + " does not take this Content-Type; see /q/openapi.";
            case 429 -> "Too many tries in a short time; wait a little.";
            default -> "The request was refused with status " + status + ".";
        };
    }
}
