package org.loomproof.pages.door;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import org.jspecify.annotations.Nullable;

/**
 * The shop's own authority for certificates (X.509, RFC 5280). A device that trusts it trusts it for the names of this server and no
 * others: they stand in its certificate as name constraints, so that whoever stole its key could pass for this server, never for a bank.
 */
public final class Authority {

    /** Of the two files: they are kept from others by the file system, since TLS must be spoken before anybody gave a passphrase. */
    public static final String PASSWORD = "kept by the file system";

    private static final Duration OF_AUTHORITY = Duration.ofDays(3_650);

    /** Browsers take no more than 825 days from an authority that people installed. */
    private static final Duration OF_SERVER = Duration.ofDays(397);

    private static final Duration ANEW_BEFORE_END = Duration.ofDays(30);
    private static final Duration CLOCKS_DIFFER_BY = Duration.ofHours(24);
    private static final String NAME = "CN=Loomproof job book of this shop";
    private static final String ENTRY = "shop";
    private static final Pattern ADDRESS = Pattern.compile("[0-9.]+|.*:.*");

    private final Path folder;
    private final Clock clock;
    private final SortedSet<String> names;

    private Authority(Path folder, Collection<String> names, Clock clock) {
        this.folder = folder;
        this.clock = clock;
        this.names = new TreeSet<>(names);
    }

    /**
     * What a server speaks TLS with.
     *
     * @param file a PKCS #12 file with its key and certificate, under {@link #PASSWORD}
     * @param authority what devices are to trust
     */
    public record Issued(Path file, X509Certificate authority) {}

    /**
     * The certificate of a server, made where there is none, or it ends soon, or the server has other names than it says.
     *
     * @param folder where both are kept; only its owner can read them
     * @param names host names and addresses by which the server is called
     */
    public static Issued forServer(Path folder, Collection<String> names, Clock clock) {
        try {
            return new Authority(folder, names, clock).issued();
        } catch (GeneralSecurityException | OperatorCreationException e) {
            throw new IllegalStateException("certificates could not be made", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private record Held(
            PrivateKey key,
            X509Certificate certificate,
            @Nullable X509Certificate authority) {}

    private Issued issued() throws GeneralSecurityException, OperatorCreationException, IOException {
        Files.createDirectories(folder);
        Path ofAuthority = folder.resolve("authority.p12");
        Path ofServer = folder.resolve("server.p12");
        Optional<Held> kept = read(ofAuthority).filter(held -> isForTheseNames(held.certificate()));
        if (kept.isEmpty()) {
            kept = Optional.of(newAuthority());
            write(ofAuthority, kept.orElseThrow());
            Files.deleteIfExists(ofServer);
        }
        Held authority = kept.orElseThrow();
        if (read(ofServer)
                .filter(held -> authority.certificate().equals(held.authority()))
                .isEmpty()) {
            write(ofServer, newServer(authority));
        }
        return new Issued(ofServer, authority.certificate());
    }

    private Held newAuthority() throws GeneralSecurityException, OperatorCreationException, IOException {
        KeyPair pair = newPair();
        X509v3CertificateBuilder certificate = begun(new X500Name(NAME), new X500Name(NAME), pair, OF_AUTHORITY);
        certificate.addExtension(Extension.basicConstraints, true, new BasicConstraints(0));
        certificate.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign | KeyUsage.cRLSign));
        certificate.addExtension(
                Extension.subjectKeyIdentifier,
                false,
                new JcaX509ExtensionUtils().createSubjectKeyIdentifier(pair.getPublic()));
        GeneralSubtree[] permitted = names.stream()
                .map(name -> new GeneralSubtree(
                        isAddress(name)
                                ? new GeneralName(GeneralName.iPAddress, name + (name.contains(":") ? "/128" : "/32"))
                                : new GeneralName(GeneralName.dNSName, name)))
                .toArray(GeneralSubtree[]::new);
        certificate.addExtension(Extension.nameConstraints, true, new NameConstraints(permitted, null));
        return new Held(pair.getPrivate(), signed(certificate, pair.getPrivate()), null);
    }

    private Held newServer(Held authority) throws GeneralSecurityException, OperatorCreationException, IOException {
        KeyPair pair = newPair();
        X509v3CertificateBuilder certificate =
                begun(new X500Name(NAME), new X500Name("CN=" + names.first()), pair, OF_SERVER);
        certificate.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
        certificate.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature));
        certificate.addExtension(
                Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
        certificate.addExtension(
                Extension.authorityKeyIdentifier,
                false,
                new JcaX509ExtensionUtils()
                        .createAuthorityKeyIdentifier(authority.certificate().getPublicKey()));
        certificate.addExtension(
                Extension.subjectAlternativeName,
                false,
                new GeneralNames(names.stream()
                        .map(name ->
                                new GeneralName(isAddress(name) ? GeneralName.iPAddress : GeneralName.dNSName, name))
                        .toArray(GeneralName[]::new)));
        return new Held(pair.getPrivate(), signed(certificate, authority.key()), authority.certificate());
    }

    private X509v3CertificateBuilder begun(X500Name issuer, X500Name subject, KeyPair pair, Duration life) {
        Instant now = clock.instant();
        return new JcaX509v3CertificateBuilder(
                issuer,
                new BigInteger(159, new SecureRandom()).setBit(158),
                Date.from(now.minus(CLOCKS_DIFFER_BY)),
                Date.from(now.plus(life)),
                subject,
                pair.getPublic());
    }

    private static X509Certificate signed(X509v3CertificateBuilder certificate, PrivateKey key)
            throws GeneralSecurityException, OperatorCreationException {
        return new JcaX509CertificateConverter()
                .getCertificate(certificate.build(new JcaContentSignerBuilder("SHA256withECDSA").build(key)));
    }

    private static KeyPair newPair() throws GeneralSecurityException {
        KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
        generator.initialize(new ECGenParameterSpec("secp256r1"));
        return generator.generateKeyPair();
    }

    private static boolean isAddress(String name) {
        return ADDRESS.matcher(name).matches();
    }

    /** The names are read back from the certificate's own constraints, so that nothing else need be kept. */
    private boolean isForTheseNames(X509Certificate authority) {
        byte[] constraints = authority.getExtensionValue(Extension.nameConstraints.getId());
        if (constraints == null) {
            return false;
        }
        NameConstraints read = NameConstraints.getInstance(
                org.bouncycastle.asn1.ASN1OctetString.getInstance(constraints).getOctets());
        SortedSet<String> permitted = new TreeSet<>();
        Stream.of(read.getPermittedSubtrees())
                .map(tree -> GeneralSubtree.getInstance(tree).getBase())
                .forEach(name -> permitted.add(name.toString()));
        SortedSet<String> wanted = new TreeSet<>();
        names.forEach(name -> wanted.add(
                isAddress(name)
                        ? new GeneralName(GeneralName.iPAddress, name + (name.contains(":") ? "/128" : "/32"))
                                .toString()
                        : new GeneralName(GeneralName.dNSName, name).toString()));
        return permitted.equals(wanted);
    }

    /** What a file holds, unless it is missing or ends soon. */
    private Optional<Held> read(Path file) throws GeneralSecurityException, IOException {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        KeyStore store = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(file)) {
            store.load(in, PASSWORD.toCharArray());
        }
        List<Certificate> chain = List.of(store.getCertificateChain(ENTRY));
        X509Certificate certificate = (X509Certificate) chain.getFirst();
        return certificate.getNotAfter().toInstant().isBefore(clock.instant().plus(ANEW_BEFORE_END))
                ? Optional.empty()
                : Optional.of(new Held(
                        (PrivateKey) store.getKey(ENTRY, PASSWORD.toCharArray()),
                        certificate,
                        chain.size() > 1 ? (X509Certificate) chain.get(1) : null));
    }

    private void write(Path file, Held held) throws GeneralSecurityException, IOException {
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(null, null);
        X509Certificate authority = held.authority();
        store.setKeyEntry(
                ENTRY,
                held.key(),
                PASSWORD.toCharArray(),
                authority == null
                        ? new Certificate[] {held.certificate()}
                        : new Certificate[] {held.certificate(), authority});
        Files.deleteIfExists(file);
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.createFile(file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        } else {
            Files.createFile(file);
        }
        try (OutputStream out = Files.newOutputStream(file, StandardOpenOption.TRUNCATE_EXISTING)) {
            store.store(out, PASSWORD.toCharArray());
        }
    }
}
