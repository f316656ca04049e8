package org.loomproof.pages.door;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
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

    /** 80 bits. */
    private static final int SPARE_CHARACTERS = 16;

    /** Checked where there is nobody of the name, so that an answer takes as long. */
    private static final String NOBODY = PasswordHash.of("nobody has this one, whoever asks");

    private static final String PASSWORD = "password";

    /** Set while somebody's password is one that another person told them. */
    private static final String TOLD = "password-told";

    /** What a phone's codes are drawn from; empty without a second step. */
    private static final String PHONE = "phone-secret";

    /** The hash of the one code that takes a lost phone's place. */
    private static final String SPARE = "spare-code";

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
        PASSWORD_TOO_LONG,
        PASSWORD_TOO_EASY,
        PASSWORD_AS_BEFORE;

        /** As it stands in message files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** What is wrong with a password for somebody with these names; nothing when it will do. */
    public static Optional<Added> judged(String password, String name, String signIn) {
        return Optional.of(Passwords.judged(password, name, folded(signIn))).filter(added -> added != Added.DONE);
    }

    /** Adds somebody, unless the name to sign in with is taken or the password will not do. */
    public Added add(Author who, String name, String signIn, String chosen, Role role) {
        String folded = folded(signIn);
        if (name.isBlank() || folded.isEmpty()) {
            return Added.NAME_MISSING;
        }
        Added password = Passwords.judged(chosen, name, folded);
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
                        "name",
                        name.strip(),
                        "sign-in",
                        folded,
                        PASSWORD,
                        PasswordHash.of(chosen),
                        TOLD,
                        who.equals(Author.CONSOLE) ? "" : "yes",
                        "role",
                        role.word(),
                        "active",
                        "yes"));
        return Added.DONE;
    }

    /**
     * Gives somebody another password, unless it will not do; to end their sessions is for whoever asks. One that somebody else was
     * told has to be changed by the person before anything else.
     */
    public Added setPassword(CardId id, String password, Author who) {
        Optional<Card> found = card(id);
        if (found.isEmpty()) {
            return Added.NAME_MISSING;
        }
        Card card = found.orElseThrow();
        Added judged = PasswordHash.matches(password, card.get(PASSWORD))
                ? Added.PASSWORD_AS_BEFORE
                : Passwords.judged(password, card.get("name"), card.get("sign-in"));
        if (judged == Added.DONE) {
            String told = who.equals(Author.of(id)) ? "" : "yes";
            Map<String, String> changes = Map.of(PASSWORD, PasswordHash.of(password), TOLD, told);
            cards.amend(card, who, "person.password", now -> changes);
        }
        return judged;
    }

    /** True when that is somebody's password. */
    public boolean isPassword(CardId id, String password) {
        return PasswordHash.matches(
                password, card(id).map(card -> card.get(PASSWORD)).orElse(NOBODY));
    }

    /**
     * Whoever signs in with this name and password and, where they have a second step, the code of their phone; nobody when one of
     * them is wrong or the person has left. The spare code takes the phone's place once, and ends the second step.
     *
     * @param codes which codes were used, none of which does twice
     */
    public Optional<Person> signIn(String signIn, String password, String code, UsedCodes codes) {
        Optional<Card> card = card(folded(signIn));
        boolean right =
                PasswordHash.matches(password, card.map(c -> c.get(PASSWORD)).orElse(NOBODY));
        return card.filter(found -> right && (!hasSecondStep(found) || isCode(found, code, codes)))
                .flatMap(People::active);
    }

    private boolean isCode(Card card, String code, UsedCodes codes) {
        OptionalLong step = new PhoneCode(card.get(PHONE)).step(code, codes.now());
        if (step.isPresent()) {
            return codes.use(card.id(), step.orElseThrow());
        }
        if (PasswordHash.matches(folded(code), card.get(SPARE))) {
            endSecondStep(card.id(), Author.of(card.id()));
            return true;
        }
        return false;
    }

    /** True when somebody signs in with a code of their phone as well. */
    public boolean hasSecondStep(CardId id) {
        return card(id).filter(People::hasSecondStep).isPresent();
    }

    /** True where the sign-in page asks for a code; told of the shop, never of a name that a stranger typed. */
    public boolean someHaveSecondStep() {
        return list().stream().anyMatch(line -> hasSecondStep(line.id()));
    }

    private static boolean hasSecondStep(Card card) {
        return !card.get(PHONE).isEmpty();
    }

    /** From now on the person signs in with codes by the secret as well; what is returned takes a lost phone's place, once. */
    public String beginSecondStep(CardId id, String secret, Author who) {
        String spare = CardId.fresh().value().substring(0, SPARE_CHARACTERS);
        Map<String, String> changes = Map.of(PHONE, secret, SPARE, PasswordHash.of(spare));
        card(id).ifPresent(card -> cards.amend(card, who, "person.second-step", now -> changes));
        return spare;
    }

    /** From now on the password alone does. */
    public void endSecondStep(CardId id, Author who) {
        Map<String, String> changes = Map.of(PHONE, "", SPARE, "");
        card(id).filter(People::hasSecondStep)
                .ifPresent(card -> cards.amend(card, who, "person.one-step", now -> changes));
    }

    /** The name somebody signs in with. */
    public String signInOf(CardId id) {
        return card(id).map(card -> card.get("sign-in")).orElse("");
    }

    /** The person, as long as they have not left. */
    public Optional<Person> find(CardId id) {
        return card(id).flatMap(People::active);
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
        card(id).ifPresent(card -> cards.change(
                id,
                card.version(),
                who,
                active ? "person.back" : "person.left",
                Map.of("active", active ? "yes" : "no")));
    }

    private Optional<Card> card(CardId id) {
        return cards.find(id).filter(card -> card.kind() == CardKind.PERSON);
    }

    private Optional<Card> card(String folded) {
        return cards.list(Listing.all(CardKind.PERSON, MOST).foundBy(folded)).stream()
                .flatMap(line -> cards.find(line.id()).stream())
                .filter(card -> card.get("sign-in").equals(folded))
                .findFirst();
    }

    private static Optional<Person> active(Card card) {
        return card.get("active").equals("yes")
                ? Role.in(card.get("role"))
                        .map(role -> new Person(
                                card.id(),
                                card.get("name"),
                                role,
                                !card.get(TOLD).isEmpty()))
                : Optional.empty();
    }

    private static String folded(String signIn) {
        return signIn.strip().toLowerCase(Locale.ROOT);
    }
}
