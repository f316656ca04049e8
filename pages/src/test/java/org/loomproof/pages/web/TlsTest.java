package org.loomproof.pages.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.util.Optional;
import java.util.Set;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TlsTest {

    private static final String PASSWORD = "of the certificate";

    @TempDir
    private Path folder;

    @Test
    void underTlsCookiesAreHeldToThisHostAndBrowsersStayWithTls() throws Exception {
        Path file = certificate();
        Listen listen =
                new Listen("127.0.0.1", 0, Optional.of(new Listen.Certificate(file, PASSWORD)), Set.of("localhost"));
        try (TestShop shop = TestShop.open(folder);
                Server server = Server.start(shop.shop, listen, TestShop.QUICK);
                HttpClient trusting =
                        HttpClient.newBuilder().sslContext(trusting(file)).build();
                HttpClient strange = HttpClient.newHttpClient()) {
            HttpRequest request = HttpRequest.newBuilder(URI.create("https://localhost:" + server.port() + "/sign-in"))
                    .build();
            HttpResponse<String> answer = trusting.send(request, BodyHandlers.ofString());

            assertThat(answer.statusCode()).isEqualTo(200);
            assertThat(answer.sslSession().orElseThrow().getProtocol()).isEqualTo("TLSv1.3");
            assertThat(answer.headers().firstValue("Strict-Transport-Security").orElse(""))
                    .startsWith("max-age=");
            assertThat(answer.headers().firstValue("Set-Cookie").orElse(""))
                    .startsWith("__Host-form=")
                    .contains("Secure", "HttpOnly", "SameSite=Strict", "Path=/")
                    .doesNotContain("Domain");
            assertThat(answer.headers().firstValue("Server")).isEmpty();
            assertThatThrownBy(() -> strange.send(request, BodyHandlers.ofString()))
                    .isInstanceOf(SSLHandshakeException.class);
        }
    }

    /** By the keytool that comes with every JDK. */
    private Path certificate() throws Exception {
        Path file = folder.resolve("shop.p12");
        Process keytool = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "keytool")
                                .toString(),
                        "-genkeypair",
                        "-alias",
                        "shop",
                        "-keyalg",
                        "EC",
                        "-dname",
                        "CN=shop",
                        "-ext",
                        "san=dns:localhost",
                        "-validity",
                        "2",
                        "-storetype",
                        "PKCS12",
                        "-keystore",
                        file.toString(),
                        "-storepass",
                        PASSWORD)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        assertThat(keytool.waitFor()).isZero();
        return file;
    }

    private static SSLContext trusting(Path file) throws Exception {
        KeyStore store = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(file)) {
            store.load(in, PASSWORD.toCharArray());
        }
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry("shop", store.getCertificate("shop"));
        TrustManagerFactory factory = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        factory.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, factory.getTrustManagers(), null);
        return context;
    }
}
