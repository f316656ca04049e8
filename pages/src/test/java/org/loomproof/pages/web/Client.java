package org.loomproof.pages.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.HttpCookie;
import java.net.InetAddress;
import java.net.URI;
import java.net.URLEncoder;
import java.net.UnknownHostException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;

/** Somebody's client that is no browser, with cookies of its own. */
final class Client {
    private final CookieManager cookies = new CookieManager();
    private final HttpClient http;
    private final TestShop shop;

    Client(TestShop shop) {
        this(shop, "127.0.0.1");
    }

    /** One whose requests come from an address. */
    Client(TestShop shop, String address) {
        this.shop = shop;
        try {
            http = HttpClient.newBuilder()
                    .cookieHandler(cookies)
                    .followRedirects(HttpClient.Redirect.NEVER)
                    .localAddress(InetAddress.getByName(address))
                    .build();
        } catch (UnknownHostException e) {
            throw new UncheckedIOException(e);
        }
    }

    HttpResponse<String> get(String path) {
        return send(HttpRequest.newBuilder(URI.create(shop.address() + path)).build());
    }

    HttpResponse<String> post(String path, Map<String, String> fields, String... headers) {
        String body = fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(shop.address() + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(body));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return send(request.build());
    }

    private HttpResponse<String> send(HttpRequest request) {
        try {
            return http.send(request, BodyHandlers.ofString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The mark of the forms on a page. */
    String mark(String path) {
        String page = get(path).body();
        int at = page.indexOf("name=\"mark\" value=\"") + 19;
        return page.substring(at, page.indexOf('"', at));
    }

    HttpResponse<String> signIn(String name, String password) {
        return post("/sign-in", Map.of("mark", mark("/sign-in"), "sign-in", name, "password", password));
    }

    /** Puts a session's cookie into its jar, as somebody might who gets at the browser before. */
    void plantSession(String value) {
        HttpCookie planted = new HttpCookie("session", value);
        planted.setPath("/");
        planted.setVersion(0);
        cookies.getCookieStore().add(URI.create(shop.address()), planted);
    }

    String session() {
        return cookies.getCookieStore().getCookies().stream()
                .filter(cookie -> cookie.getName().equals("session"))
                .map(HttpCookie::getValue)
                .findFirst()
                .orElse("");
    }

    HttpResponse<String> upload(String path, Map<String, String> fields, String file, byte[] bytes) {
        String border = "border-of-parts";
        StringBuilder head = new StringBuilder();
        fields.forEach((name, value) -> head.append(
                "--%s\r\nContent-Disposition: form-data; name=\"%s\"\r\n\r\n%s\r\n".formatted(border, name, value)));
        head.append(
                "--%s\r\nContent-Disposition: form-data; name=\"photos\"; filename=\"%s\"\r\nContent-Type: image/png\r\n\r\n"
                        .formatted(border, file));
        HttpRequest request = HttpRequest.newBuilder(URI.create(shop.address() + path))
                .header("Content-Type", "multipart/form-data; boundary=" + border)
                .POST(BodyPublishers.concat(
                        BodyPublishers.ofString(head.toString()),
                        BodyPublishers.ofByteArray(bytes),
                        BodyPublishers.ofString("\r\n--" + border + "--\r\n")))
                .build();
        return send(request);
    }
}
