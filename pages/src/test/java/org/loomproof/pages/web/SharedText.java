package org.loomproof.pages.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.store.OpenBook;

/** Texts of an example, as the shop's own sheets and kits. */
final class SharedText {

    private static final Path EXAMPLE = Path.of("..", "examples", "small-hatchback");

    private SharedText() {}

    static String of(String name) {
        try {
            return Files.readString(EXAMPLE.resolve(name + ".yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Card sheet(OpenBook book, String title) {
        return book.cards()
                .add(CardKind.SHEET, Author.CONSOLE, "sheet.changed", Map.of("title", title, "sheet", of("sheet")));
    }

    static Card kit(OpenBook book, String title, String order) {
        return book.cards()
                .add(
                        CardKind.KIT,
                        Author.CONSOLE,
                        "kit.changed",
                        Map.of("title", title, "kit", of("kit"), "order", order));
    }
}
