package org.loomproof.pages.desk;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.loomproof.book.card.CardEvent;
import org.loomproof.book.card.CardId;
import org.loomproof.book.store.Attachments;
import org.loomproof.book.store.Customers;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.door.People;

/** Everything the shop keeps about a customer, as a file to hand over: {@code customer.json}, and beside it photos and papers. */
public final class Handover {

    private final OpenBook book;
    private final People people;
    private final ObjectMapper mapper = new ObjectMapper();

    public Handover(OpenBook book) {
        this.book = book;
        this.people = new People(book.cards());
    }

    /** The file, a ZIP archive. */
    public byte[] of(CardId customer) {
        List<Customers.Whole> all = book.customers().everything(customer);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            ArrayNode cards = mapper.createArrayNode();
            int number = 0;
            for (Customers.Whole whole : all) {
                ObjectNode card =
                        cards.addObject().put("kind", whole.card().kind().word());
                whole.card().entries().values().forEach(card.putObject("entries")::put);
                ArrayNode past = card.putArray("past");
                whole.events().forEach(event -> tell(past.addObject(), event));
                ArrayNode files = card.putArray("files");
                for (Attachments.Label label : whole.attachments()) {
                    number++;
                    String name = "%04d-%s".formatted(number, label.label().replaceAll("[^A-Za-z0-9.-]", "-"));
                    files.addObject().put("name", name).put("at", label.at().toString());
                    add(
                            zip,
                            name,
                            book.attachments()
                                    .open(whole.card().id(), label.id())
                                    .orElse(new byte[0]));
                }
            }
            add(zip, "customer.json", mapper.writerWithDefaultPrettyPrinter().writeValueAsBytes(cards));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private void tell(ObjectNode into, CardEvent event) {
        into.put("at", event.at().toString())
                .put("who", people.name(event.who()))
                .put("what", event.what());
        Map<String, String> changes = event.changes();
        changes.forEach(into.putObject("changes")::put);
    }

    private static void add(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(bytes);
        zip.closeEntry();
    }
}
