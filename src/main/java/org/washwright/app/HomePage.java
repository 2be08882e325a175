package org.washwright.app;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.washwright.access.Roles;

/** The page a person starts from. */
@Path("/")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class HomePage {
    @GET
    public TemplateInstance show() {
        return Templates.home();
    }

    @CheckedTemplate(basePath = "app")
    static class Templates {
        static native TemplateInstance home();
    }
}
