package org.loomproof.pages.web;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.security.cert.X509Certificate;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Where the server listens.
 *
 * @param host the address or name it listens on
 * @param port the port; 0 for any that is free
 * @param certificate the certificate with its key that TLS is spoken with
 * @param names further names it is called by on the shop's network
 */
public record Listen(String host, int port, Optional<Certificate> certificate, Set<String> names) {

    /**
     * A certificate with its key.
     *
     * @param file a PKCS #12 file
     * @param password of the file
     * @param authority the shop's own, when it is by that one and devices are to be told to trust it
     */
    public record Certificate(Path file, String password, Optional<X509Certificate> authority) {
        /** One that was given. */
        public Certificate(Path file, String password) {
            this(file, password, Optional.empty());
        }

        @Override
        public String toString() {
            return "Certificate in " + file;
        }
    }

    private static final Set<String> LOOPBACK = Set.of("127.0.0.1", "localhost", "[::1]", "::1");

    public Listen {
        names = Set.copyOf(names);
    }

    /** This machine only. */
    public static Listen onLoopback(int port) {
        return new Listen("127.0.0.1", port, Optional.empty(), Set.of());
    }

    /** True when nobody else's machine can reach it. A name that leads nowhere is not. */
    public boolean isLoopback() {
        try {
            return InetAddress.getByName(host).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }

    /** True when TLS is spoken. */
    public boolean isSecure() {
        return certificate.isPresent();
    }

    /** Why it must not be opened so; nothing when it may. */
    public Optional<String> refusal() {
        return isLoopback() || isSecure() ? Optional.empty() : Optional.of("pages.serve.needs-tls");
    }

    /** The name of the cookie that holds a session. Browsers hold cookies with this prefix to this host, path and TLS. */
    String sessionCookie() {
        return isSecure() ? "__Host-session" : "session";
    }

    /** The name of the cookie for the forms of somebody who is not signed in. */
    String formCookie() {
        return isSecure() ? "__Host-form" : "form";
    }

    /** True when a request's host is a name of ours; another one is a trick to read our pages from a foreign one. */
    boolean isMeant(String hostAndPort) {
        String name = nameIn(hostAndPort);
        Set<String> ours = new TreeSet<>(names);
        ours.add(host);
        return ours.contains(name) || (isLoopback() && LOOPBACK.contains(name));
    }

    /** What stands before every path of ours, asked for by this host and port. */
    String base(String hostAndPort) {
        return scheme() + hostAndPort;
    }

    private String scheme() {
        return isSecure() ? "https://" : "http://";
    }

    /** True when an origin is a page of ours. */
    boolean isOurs(String origin) {
        String scheme = scheme();
        return origin.startsWith(scheme) && isMeant(origin.substring(scheme.length()));
    }

    private static String nameIn(String hostAndPort) {
        String text = hostAndPort.toLowerCase(Locale.ROOT);
        int colon = text.lastIndexOf(':');
        return colon > text.lastIndexOf(']') ? text.substring(0, colon) : text;
    }
}
