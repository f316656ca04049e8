package org.loomproof.pages;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.key.Stretching;
import org.loomproof.book.place.Refusal;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.door.Authority;
import org.loomproof.pages.web.Listen;
import org.loomproof.pages.web.Server;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Opens the job book in browsers. */
@Command(name = "serve", mixinStandardHelpOptions = true)
final class ServeCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private BookOption book;

    @Option(names = "--host", paramLabel = "HOST", defaultValue = "127.0.0.1", descriptionKey = "host")
    private String host;

    @Option(names = "--port", paramLabel = "PORT", defaultValue = "8412", descriptionKey = "port")
    private int port;

    @Option(names = "--called", paramLabel = "NAME", descriptionKey = "called")
    private Set<String> names;

    @Option(names = "--certificate", paramLabel = "FILE", descriptionKey = "certificate")
    private Optional<Path> certificate;

    @Option(names = "--own-authority", descriptionKey = "own-authority")
    private boolean authority;

    @Option(names = "--key-file", paramLabel = "FILE", descriptionKey = "key-file")
    private Optional<Path> keyFile;

    private final Messages messages;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before it calls the command
    ServeCommand(Messages messages) {
        this.messages = messages;
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Listen given = new Listen(
                host,
                port,
                certificate.map(file -> new Listen.Certificate(file, password())),
                names == null ? Set.of() : names);
        Listen listen = given.refusal().isPresent() && authority ? ofOurOwn(given) : given;
        if (listen.refusal().isPresent()) {
            err.println(messages.text(listen.refusal().orElseThrow()));
            return Main.BAD_INPUT;
        }
        try (Shop shop = new Shop(book.place(), Clock.systemUTC())) {
            if (keyFile.isPresent()) {
                Optional<Refusal> refusal = shop.unlock(Passphrase.inFile(keyFile.orElseThrow()));
                if (refusal.isPresent()) {
                    err.println(
                            messages.text(refusal.orElseThrow().at(book.place().toString())));
                    return Main.BAD_INPUT;
                }
            }
            try (Server server = Server.start(shop, listen, Stretching.STANDARD)) {
                String address = (listen.isSecure() ? "https://" : "http://") + host + ":" + server.port() + "/";
                out.println(messages.text("pages.serve.at", address));
                listen.certificate().flatMap(Listen.Certificate::authority).ifPresent(trusted -> {
                    out.println(messages.text("pages.serve.authority", address + "authority"));
                    out.println(Server.fingerprint(trusted));
                });
                out.println(messages.text("pages.serve.book", book.place().toString()));
                out.flush();
                new CountDownLatch(1).await();
            }
        }
        return 0;
    }

    /** TLS by the shop's own authority. */
    private Listen ofOurOwn(Listen given) {
        Set<String> called = new TreeSet<>(given.names());
        called.add(given.host());
        Authority.Issued issued = Authority.forServer(book.folder().resolve("tls"), called, Clock.systemUTC());
        return new Listen(
                given.host(),
                given.port(),
                Optional.of(new Listen.Certificate(issued.file(), Authority.PASSWORD, Optional.of(issued.authority()))),
                given.names());
    }

    /** From the environment, so that it stands in no list of processes. */
    private static String password() {
        return Optional.ofNullable(System.getenv("LOOMPROOF_CERTIFICATE_PASSWORD"))
                .orElse("");
    }
}
