package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.cert.X509Certificate;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;

/** How a device comes to trust the shop's own authority. Shown to anybody: what it gives away is public by nature. */
final class AuthorityPages {

    private final Optional<X509Certificate> authority;

    AuthorityPages(Optional<X509Certificate> authority) {
        this.authority = authority;
    }

    void show(Context context) throws GeneralSecurityException {
        Visit visit = Visit.of(context);
        if (authority.isEmpty()) {
            visit.refuse(HttpStatus.NOT_FOUND);
        } else {
            visit.show("authority", Map.of("fingerprint", fingerprint(authority.orElseThrow())));
        }
    }

    void certificate(Context context) throws GeneralSecurityException {
        if (authority.isEmpty()) {
            Visit.of(context).refuse(HttpStatus.NOT_FOUND);
        } else {
            context.header("Content-Disposition", "attachment; filename=\"job-book.crt\"")
                    .contentType("application/x-x509-ca-cert")
                    .result(authority.orElseThrow().getEncoded());
        }
    }

    /** SHA-256 of a certificate, as devices show it: pairs of digits with colons between. */
    static String fingerprint(X509Certificate certificate) throws GeneralSecurityException {
        return HexFormat.ofDelimiter(":")
                .withUpperCase()
                .formatHex(MessageDigest.getInstance("SHA-256").digest(certificate.getEncoded()));
    }
}
