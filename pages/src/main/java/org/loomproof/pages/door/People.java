package org.loomproof.pages.door;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.CardLine;
import org.loomproof.book.card.Listing;
import org.loomproof.book.key.PasswordHash;
import org.loomproof.book.store.Cards;

/** The people of a book, who are cards of it. */
public final class People {

    private static final int MOST = 500;

    /** Checked where there is nobody of the name, so that an answer takes as long. */
    private static final String NOBODY = PasswordHash.of("nobody has this one, whoever asks");

    private final Cards cards;

    public People(Cards cards) {
        this.cards = cards;
    }

    /** How adding somebody ended. */
    public enum Added {
        DONE,
        NAME_MISSING,
        SIGN_IN_TAKEN,
        PASSWORD_TOO_SHORT,
        PASSWORD_TOO_LONG;

        /** As it stands in message files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** Adds somebody, unless the name to sign in with is taken or the password will not do. */
    public Added add(Author who, String name, String signIn, String chosen, Role role) {
        String folded = folded(signIn);
        if (name.isBlank() || folded.isEmpty()) {
            return Added.NAME_MISSING;
        }
        Added password = judged(chosen);
        if (password != Added.DONE) {
            return password;
        }
        if (card(folded).isPresent()) {
            return Added.SIGN_IN_TAKEN;
        }
        cards.add(
                CardKind.PERSON,
                who,
                "person.added",
                Map.of(
                        "name", name.strip(),
                        "sign-in", folded,
                        "password", PasswordHash.of(chosen),
                        "role", role.word(),
                        "active", "yes"));
        return Added.DONE;
    }

    private static Added judged(String password) {
        if (password.codePointCount(0, password.length()) < PasswordHash.FEWEST_CHARACTERS) {
            return Added.PASSWORD_TOO_SHORT;
        }
        return password.length() > PasswordHash.MOST_CHARACTERS ? Added.PASSWORD_TOO_LONG : Added.DONE;
    }

    /** Gives somebody another password, unless it will not do; to end their sessions is for whoever asks. */
    public Added setPassword(CardId id, String password, Author who) {
        Added judged = judged(password);
        if (judged == Added.DONE) {
            Map<String, String> changes = Map.of("password", PasswordHash.of(password));
            cards.find(id)
                    .filter(card -> card.kind() == CardKind.PERSON)
                    .ifPresent(card -> cards.amend(card, who, "person.password", now -> changes));
        }
        return judged;
    }

    /** True when that is somebody's password. */
    public boolean isPassword(CardId id, String password) {
        return PasswordHash.matches(
                password, cards.find(id).map(card -> card.get("password")).orElse(NOBODY));
    }

    /** Whoever signs in with this name and password; nobody when either is wrong or the person has left. */
    public Optional<Person> signIn(String signIn, String password) {
        Optional<Card> card = card(folded(signIn));
        boolean right =
                PasswordHash.matches(password, card.map(c -> c.get("password")).orElse(NOBODY));
        return right ? card.flatMap(People::active) : Optional.empty();
    }

    /** The person, as long as they have not left. */
    public Optional<Person> find(CardId id) {
        return cards.find(id).filter(card -> card.kind() == CardKind.PERSON).flatMap(People::active);
    }

    /** Somebody's name, also after they have left; empty text for the console. */
    public String name(Author author) {
        return CardId.in(author.value())
                .flatMap(cards::find)
                .map(card -> card.get("name"))
                .orElse("");
    }

    /** Everybody, those who have left included. */
    public List<CardLine> list() {
        return cards.list(Listing.all(CardKind.PERSON, MOST));
    }

    /** Takes somebody's right to sign in, or gives it back. */
    public void setActive(CardId id, boolean active, Author who) {
        cards.find(id)
                .filter(card -> card.kind() == CardKind.PERSON)
                .ifPresent(card -> cards.change(
                        id,
                        card.version(),
                        who,
                        active ? "person.back" : "person.left",
                        Map.of("active", active ? "yes" : "no")));
    }

    private Optional<Card> card(String folded) {
        return cards.list(Listing.all(CardKind.PERSON, MOST).foundBy(folded)).stream()
                .flatMap(line -> cards.find(line.id()).stream())
                .filter(card -> card.get("sign-in").equals(folded))
                .findFirst();
    }

    private static Optional<Person> active(Card card) {
        return card.get("active").equals("yes")
                ? Role.in(card.get("role")).map(role -> new Person(card.id(), card.get("name"), role))
                : Optional.empty();
    }

    private static String folded(String signIn) {
        return signIn.strip().toLowerCase(Locale.ROOT);
    }
}
