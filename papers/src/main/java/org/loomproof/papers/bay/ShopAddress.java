package org.loomproof.papers.bay;

import java.net.URI;
import java.net.URISyntaxException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.sheet.CircuitId;

/**
 * Where a shop's own pages are found. A step of a job is at {@code /jobs/JOB/bay/CIRCUIT} under it. What the shop calls the
 * job may hold a customer's name, so that a short sum of it stands in its place.
 *
 * @param base such as {@code https://bench.example:8443}, without a slash at its end
 */
public record ShopAddress(String base) {

    private static final Set<String> SCHEMES = Set.of("http", "https");
    private static final int BYTES_OF_THE_SUM = 6;

    /** The address in a text from outside, when it is one: of a host, without a user, a query or a fragment. */
    public static Optional<ShopAddress> in(String text) {
        try {
            URI uri = new URI(text.strip());
            boolean plain = uri.getScheme() != null
                    && SCHEMES.contains(uri.getScheme())
                    && uri.getHost() != null
                    && uri.getUserInfo() == null
                    && uri.getQuery() == null
                    && uri.getFragment() == null;
            return plain ? Optional.of(new ShopAddress(uri.toString().replaceAll("/+$", ""))) : Optional.empty();
        } catch (URISyntaxException e) {
            return Optional.empty();
        }
    }

    /** The address of a job, by what the order calls it. */
    public String job(Order order) {
        return job(sum(order.job()));
    }

    /** The address of a job that the shop knows by this name. */
    public String job(String name) {
        return base + "/jobs/" + name;
    }

    /** The name of the step at a circuit inside its job. */
    public static String stepId(CircuitId circuit) {
        return stepId(circuit.value());
    }

    /** The name of a step inside its job, by the name of its place. */
    public static String stepId(String place) {
        return "bay/" + URLEncoder.encode(place, StandardCharsets.UTF_8).replace("+", "%20");
    }

    /** What stands for a text that is not to be read: the first bytes of its SHA-256, in small hexadecimal digits. */
    public static String sum(String text) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(sum, 0, BYTES_OF_THE_SUM);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java library has it", e);
        }
    }
}
