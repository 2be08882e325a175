package org.washwright.access;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.CookieParam;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Signing in and out. */
@Path("/")
@PermitAll
@Produces(MediaType.TEXT_HTML)
class SignInPage {
    private final Sessions sessions;
    private final SignInThrottle throttle;
    private final DemoAccounts demo;

    SignInPage(Sessions sessions, SignInThrottle throttle, DemoAccounts demo) {
        this.sessions = sessions;
        this.throttle = throttle;
        this.demo = demo;
    }

    @GET
    @Path("sign-in")
    public TemplateInstance form(@QueryParam("return") String returnPath) {
        return Templates.signIn(view(returnPath, "", Optional.empty()));
    }

    @POST
    @Path("sign-in")
    public Response signIn(
            @FormParam("name") @DefaultValue("") String name,
            @FormParam("password") @DefaultValue("") String password,
            @FormParam("return") String returnPath,
            @CookieParam(SessionCookie.NAME) String earlier,
            RoutingContext context) {
        String address = context.request().remoteAddress().hostAddress();
        Optional<Duration> wait = throttle.waitFor(name, address);
        if (wait.isPresent()) {
            long seconds = wait.get().toSeconds() + 1;
            String text = "Too many wrong passwords. Wait " + seconds + " seconds, then try again.";
            return Response.status(429)
                    .header("Retry-After", seconds)
                    .entity(Templates.signIn(view(returnPath, name, Optional.of(text))))
                    .build();
        }
        Optional<Secret> session = sessions.open(name, password);
        if (session.isEmpty()) {
            throttle.failed(name, address);
            String text = "This name and password do not fit together. Check both and try again.";
            return Response.status(401)
                    .entity(Templates.signIn(view(returnPath, name, Optional.of(text))))
                    .build();
        }
        throttle.succeeded(name, address);
        close(earlier);
        return Response.seeOther(URI.create(ReturnPath.safe(returnPath)))
                .cookie(SessionCookie.holding(session.get(), context.request().isSSL()))
                .build();
    }

    @POST
    @Path("sign-out")
    public Response signOut(@CookieParam(SessionCookie.NAME) String current, RoutingContext context) {
        close(current);
        return Response.seeOther(URI.create("/sign-in"))
                .cookie(SessionCookie.ended(context.request().isSSL()))
                .build();
    }

    private void close(String cookie) {
        Optional.ofNullable(cookie).map(Secret::new).filter(Secret::plausible).ifPresent(sessions::close);
    }

    private View view(String returnPath, String name, Optional<String> error) {
        return new View(
                ReturnPath.safe(returnPath), name, error, demo.usable(), DemoAccounts.NAMES, DemoAccounts.PASSWORD);
    }

    /** What the page shows. */
    record View(
            String returnPath,
            String name,
            Optional<String> error,
            boolean demo,
            List<String> demoNames,
            String demoPassword) {}

    @CheckedTemplate(basePath = "access")
    static class Templates {
        static native TemplateInstance signIn(View view);
    }
}
