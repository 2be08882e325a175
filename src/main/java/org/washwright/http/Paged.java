package org.washwright.http;

import com.fasterxml.jackson.annotation.JsonIgnore;
import jakarta.ws.rs.core.Link;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * One page of a list.
 *
 * @param items the entries
 * @param page number of the page, from 0
 * @param size most entries of a page
 * @param total entries of the whole list
 */
public record Paged<T>(List<T> items, int page, int size, long total) {

    /** A page of a list. */
    public static <T> Paged<T> of(List<T> items, Slice slice, long total) {
        return new Paged<>(List.copyOf(items), slice.page(), slice.size(), total);
    }

    /** The same page with other entries. */
    public <R> Paged<R> map(Function<T, R> entry) {
        return new Paged<>(items.stream().map(entry).toList(), page, size, total);
    }

    /** Whether more follow. */
    @JsonIgnore
    public boolean hasNext() {
        return (page + 1L) * size < total;
    }

    /** Whether some come before. */
    @JsonIgnore
    public boolean hasPrevious() {
        return page > 0;
    }

    /** The answer with its links and its tag; 304 when the caller already holds it. */
    public Response answer(Request request, UriInfo uri) {
        Response.ResponseBuilder answer = Tags.answer(request, this);
        links(uri).forEach(answer::links);
        return answer.build();
    }

    private List<Link> links(UriInfo uri) {
        List<Link> links = new ArrayList<>();
        links.add(link(uri, 0, "first"));
        if (hasPrevious()) {
            links.add(link(uri, page - 1, "prev"));
        }
        if (hasNext()) {
            links.add(link(uri, page + 1, "next"));
        }
        links.add(link(uri, total == 0 ? 0 : (int) ((total - 1) / size), "last"));
        return links;
    }

    private Link link(UriInfo uri, int to, String relation) {
        return Link.fromUri(uri.getRequestUriBuilder()
                        .replaceQueryParam("page", to)
                        .replaceQueryParam("size", size)
                        .build())
                .rel(relation)
                .build();
    }
}
