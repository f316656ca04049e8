package org.loomproof.shop.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.loomproof.papers.ShopFacts;
import org.loomproof.papers.bay.ShopAddress;
import org.loomproof.papers.record.Photo;
import org.loomproof.papers.record.PhotoReader;
import org.loomproof.workshop.goods.price.History;
import org.loomproof.workshop.goods.price.HistoryReader;
import org.loomproof.workshop.goods.price.PriceList;
import org.loomproof.workshop.goods.price.PriceListReader;
import org.loomproof.workshop.goods.shelf.Stock;
import org.loomproof.workshop.goods.shelf.StockReader;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/**
 * Where a shop wrote down what the papers take from it.
 *
 * @param prices its price list
 * @param history how long its work took
 * @param stock what lies on its shelf
 * @param address where its pages are found, as typed
 * @param photos pictures of the work, files and folders of files
 * @param language of what the customer reads, as typed
 */
public record ShopFiles(
        Optional<Path> prices,
        Optional<Path> history,
        Optional<Path> stock,
        Optional<String> address,
        List<Path> photos,
        Optional<String> language) {

    public ShopFiles {
        photos = List.copyOf(photos);
    }

    /** Of a shop that wrote nothing down. */
    public static final ShopFiles NONE = ofPrices(Optional.empty());

    /** The same with this price list. */
    public static ShopFiles ofPrices(Path prices) {
        return ofPrices(Optional.of(prices));
    }

    private static ShopFiles ofPrices(Optional<Path> prices) {
        return new ShopFiles(prices, Optional.empty(), Optional.empty(), Optional.empty(), List.of(), Optional.empty());
    }

    /** What stands in them; every problem is added to those of other files. */
    ShopFacts read(List<Problem> problems) {
        Optional<PriceList> priceList =
                prices.flatMap(file -> PriceListReader.read(file).orTell(problems));
        Optional<History> timings =
                history.flatMap(file -> HistoryReader.read(file).orTell(problems));
        Optional<Stock> shelf = stock.flatMap(file -> StockReader.read(file).orTell(problems));
        Optional<ShopAddress> pages = address.flatMap(typed -> address(typed, problems));
        Optional<List<Photo>> pictures = PhotoReader.read(photos).orTell(problems);
        Locale customer = language.flatMap(typed -> language(typed, problems)).orElse(Locale.ENGLISH);
        return new ShopFacts(
                priceList, timings.orElse(History.NONE), shelf, pages, pictures.orElse(List.of()), customer);
    }

    /** A language that we have words in. */
    private static Optional<Locale> language(String typed, List<Problem> problems) {
        Optional<Locale> spoken = Messages.languages().stream()
                .filter(language -> language.getLanguage().equalsIgnoreCase(typed))
                .findFirst();
        if (spoken.isEmpty()) {
            List<String> words =
                    Messages.languages().stream().map(Locale::getLanguage).toList();
            problems.add(new Problem(
                    Place.nowhere("--language"),
                    ProblemKind.NOT_ONE_OF,
                    typed,
                    Phrase.of("problem.wanted.one-of", words),
                    Phrase.of("problem.hint.none")));
        }
        return spoken;
    }

    private static Optional<ShopAddress> address(String typed, List<Problem> problems) {
        Optional<ShopAddress> address = ShopAddress.in(typed);
        if (address.isEmpty()) {
            problems.add(new Problem(
                    Place.nowhere("--address"),
                    ProblemKind.WRONG_SHAPE,
                    typed,
                    Phrase.of("problem.wanted.address"),
                    Phrase.of("problem.hint.none")));
        }
        return address;
    }
}
