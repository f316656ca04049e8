package org.loomproof.pages.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The verdicts of a kept result, the gravest first.
 *
 * @param claims one by one
 * @param refusals wishes turned down, each with its reason and what would make it possible
 */
public record Verdicts(List<Claim> claims, List<Refused> refusals) {

    /**
     * One claim.
     *
     * @param verdict {@code broken}, {@code open}, {@code declared} or {@code holds}
     * @param statement the claim in words
     * @param because why it is open, or what the customer is told of a declared change
     * @param steps of the witness of a broken or declared one
     * @param seen what is to be seen then
     * @param settledBy readings that would decide an open one
     */
    public record Claim(
            String verdict,
            String statement,
            String because,
            List<String> steps,
            List<String> seen,
            List<String> settledBy) {}

    /** A wish turned down. */
    public record Refused(String wish, String because, String possibleIf) {}

    private static final String DECLARED = "declared";
    private static final List<String> GRAVEST_FIRST = List.of("broken", "open", DECLARED, "holds");

    /** What stands in a result as it was kept. */
    public static Verdicts in(byte[] json) {
        try {
            JsonNode root = new ObjectMapper().readTree(json);
            List<Claim> claims = new ArrayList<>();
            for (JsonNode claim : root.path("claims")) {
                List<String> seen = new ArrayList<>();
                claim.path("witness")
                        .path("seen")
                        .forEach(o -> seen.add(
                                o.path("at").asText() + ": " + o.path("reads").asText()));
                List<String> settledBy = new ArrayList<>();
                claim.path("settledBy")
                        .forEach(m -> settledBy.add(m.path("what").asText()));
                claims.add(new Claim(
                        claim.path("verdict").asText(),
                        claim.path("statement").asText(),
                        claim.path("because")
                                .asText(claim.path("change").path("told").asText()),
                        texts(claim.path("witness").path("steps")),
                        seen,
                        settledBy));
            }
            claims.sort(Comparator.comparingInt(claim -> GRAVEST_FIRST.indexOf(claim.verdict())));
            List<Refused> refusals = new ArrayList<>();
            for (JsonNode refusal : root.path("refusals")) {
                refusals.add(new Refused(
                        refusal.path("wish").asText(),
                        refusal.path("because").asText(),
                        refusal.path("possibleIf").asText()));
            }
            return new Verdicts(List.copyOf(claims), List.copyOf(refusals));
        } catch (IOException e) {
            throw new UncheckedIOException("a result of our own cannot be read", e);
        }
    }

    /** How many claims only hold with a change that the customer signs. */
    public long countDeclared() {
        return claims.stream().filter(claim -> claim.verdict().equals(DECLARED)).count();
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(node -> texts.add(node.asText()));
        return texts;
    }
}
