package org.loomproof.pages.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.security.GeneralSecurityException;
import java.security.cert.X509Certificate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import org.jspecify.annotations.Nullable;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.key.Stretching;
import org.loomproof.pages.bay.BayJobs;
import org.loomproof.pages.desk.Shop;
import org.loomproof.pages.door.Attempts;
import org.loomproof.pages.door.DoorLog;
import org.loomproof.pages.door.Picture;
import org.loomproof.pages.door.Right;
import org.loomproof.pages.door.Sessions;

/** The server: what it listens on, what every request passes, and every route there is. */
public final class Server implements AutoCloseable {

    private static final int MOST_UPLOADS = 8;
    private static final long MOST_REQUEST_BYTES = (long) MOST_UPLOADS * Picture.MOST_BYTES;

    /** Files that pages fetch, with their kinds. Nothing else can be fetched, whatever an address says. */
    private static final Map<String, String> FILES = Map.of(
            "pages.css", "text/css; charset=utf-8",
            "pages.js", "text/javascript; charset=utf-8",
            "bay.css", "text/css; charset=utf-8",
            "notes.css", "text/css; charset=utf-8",
            "bay.js", "text/javascript; charset=utf-8",
            "finished.css", "text/css; charset=utf-8",
            "night.js", "text/javascript; charset=utf-8");

    /** What keeps the pages of the bay for when there is no network; it serves what lies under its own place only. */
    private static final String WORKER = "bay-worker.js";

    private final Javalin javalin;
    private final Guard guard;
    private final DoorPages doors;
    private final CallPages calls = new CallPages();
    private final JobPages jobs;
    private final CheckInPages checkIns;
    private final PlanPages plans;
    private final ByHandPages byHand;
    private final PeoplePages people;
    private final AuthorityPages authority;
    private final OwnerPages owner;
    private final TryPages tries = new TryPages();
    private final FitPages fits;
    private final NotesPages notes = new NotesPages();
    private final FaultPages faults;
    private final TestPages tests;
    private final ComebackPages comebacks;
    private final BayPages bay;
    private final WorkPages work;
    private final SpentPages spent;
    private final JointPages joints;
    private final UnitsPages units;
    private final OneselfPages oneself;

    private Server(Shop shop, Listen listen, Stretching stretching) {
        Sessions sessions = new Sessions(shop.clock());
        DoorLog log = new DoorLog(shop.clock());
        this.guard = new Guard(shop, sessions, new Views(), listen, log);
        Attempts attempts = new Attempts(shop.clock());
        this.doors = new DoorPages(shop, guard, attempts, stretching, log);
        this.oneself = new OneselfPages(guard, sessions, attempts, log, shop);
        BayJobs bays = new BayJobs();
        SheetChecks checks = new SheetChecks(shop, bays);
        this.bay = new BayPages(bays);
        this.jobs = new JobPages(shop, checks);
        this.checkIns = new CheckInPages(shop);
        this.plans = new PlanPages(shop, bays, listen);
        this.byHand = new ByHandPages(shop);
        this.fits = new FitPages(shop);
        this.faults = new FaultPages(shop);
        this.units = new UnitsPages(listen);
        this.spent = new SpentPages(shop, bays);
        this.joints = new JointPages(bays);
        this.tests = new TestPages(shop, spent);
        this.comebacks = new ComebackPages(shop);
        this.work = new WorkPages(shop, checks);
        this.people = new PeoplePages(sessions, log);
        this.owner = new OwnerPages(stretching);
        this.authority = new AuthorityPages(listen.certificate().flatMap(Listen.Certificate::authority));
        this.javalin = Javalin.create(config -> configure(config, listen));
    }

    /**
     * Starts listening.
     *
     * @param stretching how the passphrase of a book that is made here is stretched
     * @throws IllegalArgumentException when it would be open to the network without TLS
     */
    public static Server start(Shop shop, Listen listen, Stretching stretching) {
        listen.refusal().ifPresent(why -> {
            throw new IllegalArgumentException(why);
        });
        Server server = new Server(shop, listen, stretching);
        server.javalin.start();
        return server;
    }

    /** By what people compare a certificate. */
    public static String fingerprint(X509Certificate certificate) {
        try {
            return AuthorityPages.fingerprint(certificate);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** The port it listens on. */
    public int port() {
        return javalin.port();
    }

    private void configure(JavalinConfig config, Listen listen) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.concurrency.useVirtualThreads = true;
        config.http.maxRequestSize = 4_000_000L;
        config.http.generateEtags = false;
        config.jetty.multipartConfig.maxFileSize(Picture.MOST_BYTES, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxTotalRequestSize(MOST_REQUEST_BYTES, SizeUnit.BYTES);
        config.jetty.addConnector((server, http) -> connector(server, http, listen));
        routes(config.routes);
    }

    private static Connector connector(org.eclipse.jetty.server.Server server, HttpConfiguration http, Listen listen) {
        http.setSendServerVersion(false);
        http.setSendXPoweredBy(false);
        HttpConnectionFactory plain = new HttpConnectionFactory(http);
        ServerConnector connector = listen.certificate()
                .map(certificate -> {
                    http.addCustomizer(new SecureRequestCustomizer(false)); // Guard knows which hosts are meant
                    SslContextFactory.Server tls = new SslContextFactory.Server();
                    tls.setKeyStorePath(certificate.file().toString());
                    tls.setKeyStoreType("PKCS12");
                    tls.setKeyStorePassword(certificate.password());
                    tls.setIncludeProtocols("TLSv1.3", "TLSv1.2");
                    return new ServerConnector(server, new SslConnectionFactory(tls, "http/1.1"), plain);
                })
                .orElseGet(() -> new ServerConnector(server, plain));
        connector.setHost(listen.host());
        connector.setPort(listen.port());
        return connector;
    }

    /** Every route there is, with the right it asks for. */
    private void routes(RoutesConfig routes) {
        routes.before(guard::head);
        routes.beforeMatched(guard::door);

        routes.get("/files/{file}", Server::file, Right.ANYONE);
        routes.get("/authority", authority::show, Right.ANYONE);
        routes.get("/authority.crt", authority::certificate, Right.ANYONE);
        routes.get("/begin", doors::begin, Right.ANYONE);
        routes.post("/begin", doors::make, Right.ANYONE);
        routes.get("/unlock", doors::locked, Right.ANYONE);
        routes.post("/unlock", doors::unlock, Right.ANYONE);
        routes.get("/sign-in", doors::askWho, Right.ANYONE);
        routes.post("/sign-in", doors::signIn, Right.ANYONE);
        routes.post("/sign-out", doors::signOut, Right.ONESELF);
        routes.get("/password", oneself::show, Right.ONESELF);
        routes.post("/password", oneself::changePassword, Right.ONESELF);
        routes.post("/password/sessions/end", oneself::endSession, Right.ONESELF);
        routes.get("/password/second-step", oneself::askSecondStep, Right.JOBS);
        routes.post("/password/second-step", oneself::beginSecondStep, Right.JOBS);
        routes.post("/password/second-step/end", oneself::endSecondStep, Right.JOBS);
        routes.post("/units", units::choose, Right.JOBS);

        routes.get("/jobs/" + WORKER, context -> file(context, WORKER, "text/javascript; charset=utf-8"), Right.ANYONE);
        routes.get("/", jobs::list, Right.JOBS);
        routes.get("/call", calls::ask, Right.JOBS);
        routes.post("/call", calls::answer, Right.JOBS);
        routes.get("/jobs/{id}", jobs::show, Right.JOBS);
        routes.get("/jobs/{id}/vehicle", jobs::vehicle, Right.JOBS);
        routes.post("/jobs/{id}/vehicle", jobs::saveVehicle, Right.JOBS);
        routes.get("/jobs/{id}/check-in", checkIns::show, Right.JOBS);
        routes.post("/jobs/{id}/check-in", checkIns::save, Right.JOBS);
        routes.get("/jobs/{id}/pictures/{picture}", checkIns::picture, Right.JOBS);
        routes.get("/jobs/{id}/texts/{text}", plans::text, Right.WORK);
        routes.post("/jobs/{id}/texts/{text}", plans::saveText, Right.WORK);
        routes.get("/jobs/{id}/notes", notes::show, Right.WORK);
        routes.post("/jobs/{id}/notes", notes::read, Right.WORK);
        routes.post("/jobs/{id}/notes/right", notes::putRight, Right.WORK);
        routes.post("/jobs/{id}/notes/vehicle", notes::tell, Right.WORK);
        routes.post("/jobs/{id}/notes/take", notes::take, Right.WORK);
        routes.get("/jobs/{id}/plan", plans::plan, Right.WORK);
        routes.post("/jobs/{id}/plan", plans::begin, Right.WORK);
        routes.post("/jobs/{id}/plan/stop", plans::stop, Right.WORK);
        routes.get("/jobs/{id}/plan/by-hand", byHand::show, Right.WORK);
        routes.post("/jobs/{id}/plan/by-hand", byHand::save, Right.WORK);
        routes.get("/jobs/{id}/plan/progress", plans::progress, Right.WORK);
        routes.get("/jobs/{id}/papers/{paper}", plans::paper, Right.WORK);
        routes.get("/mark", work::mark, Right.WORK);
        routes.post("/jobs/{id}/work", work::note, Right.WORK);
        routes.get("/jobs/{id}/bench", bay::bench, Right.WORK);
        routes.get("/jobs/{id}/bay", bay::list, Right.WORK);
        routes.get("/jobs/{id}/bay/{place}", bay::step, Right.WORK);
        routes.get("/jobs/{id}/joints", joints::show, Right.WORK);
        routes.post("/jobs/{id}/joints", joints::add, Right.WORK);
        routes.get("/jobs/{id}/joints/{picture}", joints::picture, Right.WORK);
        routes.post("/jobs/{id}/joints/drop", joints::drop, Right.WORK);
        routes.get("/jobs/{id}/try", tries::show, Right.WORK);
        routes.get("/jobs/{id}/faults", faults::show, Right.WORK);
        routes.post("/jobs/{id}/faults", faults::begin, Right.WORK);
        routes.get("/jobs/{id}/test", tests::show, Right.WORK);
        routes.post("/jobs/{id}/test", tests::note, Right.WORK);
        routes.post("/jobs/{id}/test/passed", tests::pass, Right.WORK);
        routes.post("/jobs/{id}/hand-over", tests::handOver, Right.WORK);
        routes.get("/jobs/{id}/comeback", comebacks::show, Right.WORK);
        routes.post("/jobs/{id}/comeback/complaint", comebacks::complain, Right.WORK);
        routes.post("/jobs/{id}/comeback/reading", comebacks::read, Right.WORK);
        routes.post("/jobs/{id}/comeback/undo", comebacks::undo, Right.WORK);
        routes.post("/jobs/{id}/comeback/cause", comebacks::found, Right.WORK);
        routes.post("/jobs/{id}/said/{step}", jobs::said, Right.WORK);
        routes.post("/jobs/{id}/parts", jobs::parts, Right.WORK);
        routes.get("/jobs/{id}/spent", spent::show, Right.WORK);
        routes.post("/jobs/{id}/spent/minutes", spent::noteMinutes, Right.WORK);
        routes.post("/jobs/{id}/spent/part", spent::notePart, Right.WORK);
        routes.post("/jobs/{id}/spent/undo", spent::undo, Right.WORK);

        routes.post("/jobs/{id}/texts/{text}/taken", SharedPages::taken, Right.WORK);
        routes.post("/jobs/{id}/texts/{text}/given", SharedPages::given, Right.WORK);
        routes.get("/jobs/{id}/changes", plans::changes, Right.WORK);
        for (CardKind kind : List.of(CardKind.JOB, CardKind.SHEET, CardKind.KIT)) {
            routes.get(SharedPages.path(kind) + "/{id}/past", PastPages::all, Right.WORK);
            routes.get(SharedPages.path(kind) + "/{id}/past/{version}", PastPages::one, Right.WORK);
        }
        for (CardKind kind : List.of(CardKind.SHEET, CardKind.KIT)) {
            SharedPages shared = new SharedPages(kind);
            String path = SharedPages.path(kind);
            routes.get(path, shared::list, Right.WORK);
            routes.post(path, shared::add, Right.WORK);
            routes.get(path + "/new", shared::begin, Right.WORK);
            routes.get(path + "/{id}", shared::show, Right.WORK);
            routes.post(path + "/{id}", shared::save, Right.WORK);
        }
        routes.get("/fits", fits::all, Right.WORK);
        routes.post("/fits", fits::begin, Right.WORK);
        routes.get("/fits/{id}", fits::one, Right.WORK);
        routes.get("/prices", PartsPages::show, Right.WORK);
        routes.post("/prices", PartsPages::save, Right.WORK);
        routes.get("/book", owner::book, Right.PEOPLE);
        routes.post("/book/passphrase", owner::changePassphrase, Right.PEOPLE);
        routes.get("/jobs/{id}/customer", owner::customer, Right.PEOPLE);
        routes.get("/jobs/{id}/customer/export", owner::export, Right.PEOPLE);
        routes.post("/jobs/{id}/customer/erase", owner::erase, Right.PEOPLE);
        routes.get("/people", people::list, Right.PEOPLE);
        routes.post("/people", people::add, Right.PEOPLE);
        routes.post("/people/{id}/active", people::setActive, Right.PEOPLE);
        routes.post("/people/{id}/password", people::setPassword, Right.PEOPLE);
        routes.post("/people/{id}/second-step/end", people::endSecondStep, Right.PEOPLE);

        routes.exception(HttpResponseException.class, (e, context) -> refuse(context, e.getStatus()));
        routes.exception(Exception.class, Server::ourFault);
        routes.error(404, context -> refuse(context, 404));
    }

    private static void file(Context context) throws IOException {
        String name = context.pathParam("file");
        String kind = FILES.get(name);
        if (kind == null) {
            refuse(context, 404);
            return;
        }
        file(context, name, kind);
    }

    private static void file(Context context, String name, String kind) throws IOException {
        try (InputStream in = Server.class.getResourceAsStream("/org/loomproof/pages/files/" + name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the jar");
            }
            context.header("Cache-Control", "no-cache").contentType(kind).result(in.readAllBytes());
        }
    }

    private static void refuse(Context context, int status) {
        Optional<Visit> visit = Optional.ofNullable(context.attribute("visit"));
        visit.ifPresentOrElse(
                v -> v.refuse(HttpStatus.forStatus(status)),
                () -> context.status(status).result(""));
    }

    /** The reader learns that it was our fault, and a number; the log has the rest, and of the request only its method. */
    private static void ourFault(Exception e, Context context) {
        if (context.isMultipart() && isBadMessage(e)) {
            refuse(context, 413); // the server stopped reading: more than it takes, or no parts at all
            return;
        }
        String number = Long.toString(System.nanoTime(), 36);
        System.getLogger(Server.class.getName())
                .log(System.Logger.Level.ERROR, "fault " + number + " in a " + context.method() + " request", e);
        Optional<Visit> visit = Optional.ofNullable(context.attribute("visit"));
        visit.ifPresentOrElse(v -> v.fault(number), () -> refuse(context, 500));
    }

    private static boolean isBadMessage(@Nullable Throwable e) {
        return e != null && (e instanceof HttpException || isBadMessage(e.getCause()));
    }

    @Override
    public void close() {
        javalin.stop();
    }
}
