package org.loomproof.pages.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.loomproof.network.solve.Solver;
import org.loomproof.workshop.weigh.Weigher;

/** A sum of the program that plans and proves, with its tables: what was proven by another program is not proven by this one. */
final class ProgramSum {

    private static final class Once {
        private static final String SUM = of(List.of(Solver.class, Weigher.class));
    }

    private ProgramSum() {}

    /** Of this program, in hexadecimal digits. */
    static String own() {
        return Once.SUM;
    }

    /** Of some texts, in hexadecimal digits; each text's end counts, so that none can be mistaken for two. */
    static String of(Stream<String> texts) {
        MessageDigest digest = sha256();
        texts.forEach(text -> {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            digest.update((bytes.length + ":").getBytes(StandardCharsets.UTF_8));
            digest.update(bytes);
        });
        return HexFormat.of().formatHex(digest.digest());
    }

    private static String of(List<Class<?>> parts) {
        MessageDigest digest = sha256();
        for (Class<?> part : parts) {
            CodeSource source = part.getProtectionDomain().getCodeSource();
            try (Stream<Path> files = Files.walk(Path.of(source.getLocation().toURI()))) {
                for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                    digest.update(Files.readAllBytes(file));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (URISyntaxException e) {
                throw new IllegalStateException("the program lies nowhere", e);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
