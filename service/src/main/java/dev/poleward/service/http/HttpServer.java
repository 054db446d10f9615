package dev.poleward.service.http;

import dev.poleward.service.access.AccessKeys;
import dev.poleward.service.access.PersonKeys;
import dev.poleward.service.access.PersonalFields;
import dev.poleward.service.access.Randomness;
import dev.poleward.service.codec.EventCodec;
import dev.poleward.service.contract.Contract;
import dev.poleward.service.http.HttpSettings.Encryption;
import dev.poleward.service.journal.CannotStart;
import dev.poleward.service.journal.Journal;
import dev.poleward.service.projection.Applied;
import dev.poleward.service.projection.ClubReader;
import dev.poleward.service.render.Studio;
import io.javalin.Javalin;
import io.javalin.util.JavalinBindException;
import io.javalin.util.JavalinException;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Clock;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * The service's HTTP surface, open from start to close. For the thread that starts and stops it.
 */
public final class HttpServer implements AutoCloseable {

  /** What the routes work with. */
  public record Parts(
      Contract contract,
      EventCodec codec,
      Journal journal,
      Applied applied,
      ClubReader clubs,
      AccessKeys accessKeys,
      PersonKeys personKeys,
      Clock clock,
      Randomness randomness,
      PrometheusMeterRegistry metrics,
      BooleanSupplier ready) {}

  private final Javalin javalin;
  private final Routes routes;

  private HttpServer(Javalin javalin, Routes routes) {
    this.javalin = javalin;
    this.routes = routes;
  }

  /** Begins to answer. */
  public static HttpServer start(HttpSettings settings, Parts parts) {
    Routes routes = routes(parts);
    Javalin javalin =
        Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              config.startup.showOldJavalinVersionWarning = false;
              config.concurrency.useVirtualThreads = true;
              config.http.prefer405over404 = true;
              config.http.maxRequestSize = Call.BODY_BYTES_MAX + 1L;
              Listening.configure(config.jetty, settings);
              config.jetty.modifyServer(
                  server -> server.setErrorHandler(new ProblemErrorHandler()));
              routes.addTo(config);
            });
    try {
      return new HttpServer(javalin.start(), routes);
    } catch (JavalinBindException e) {
      throw new CannotStart(
          "Port %d of %s cannot be listened on: it is in use, or not for this user. Choose another with --port."
              .formatted(settings.port(), settings.host()),
          e);
    } catch (JavalinException e) {
      throw new CannotStart(
          "Port %d of %s cannot be listened on%s: %s"
              .formatted(settings.port(), settings.host(), withKeys(settings), lastCause(e)),
          e);
    }
  }

  private static String withKeys(HttpSettings settings) {
    return settings.encryption() instanceof Encryption.Here here
        ? " with the certificate in " + here.keyStore()
        : "";
  }

  private static String lastCause(Throwable why) {
    Throwable last = why;
    while (last.getCause() != null) {
      last = last.getCause();
    }
    return last.getMessage() == null ? last.getClass().getSimpleName() : last.getMessage();
  }

  /** The port it listens on. */
  public int port() {
    return javalin.port();
  }

  /** Every route as {@code GET /v1/clubs/{club}}, to be compared with the contract. */
  public List<String> routes() {
    return routes.all().stream().map(each -> each.method() + " " + each.path()).toList();
  }

  /** All that these parts can answer. */
  static Routes routes(Parts parts) {
    PersonalFields personal = new PersonalFields(parts.personKeys());
    Gate gate = new Gate(parts.accessKeys(), parts.ready());
    ClubReads reads = new ClubReads(gate, parts.clubs(), personal);
    PendingEvents pending = new PendingEvents();
    Intake intake =
        new Intake(
            parts.journal(),
            parts.applied(),
            parts.clubs(),
            personal,
            parts.codec(),
            parts.clock(),
            pending);
    Bodies bodies = new Bodies(parts.contract());
    OwnEvents own = new OwnEvents(parts.codec(), parts.randomness());
    RegistryShapes shapes = new RegistryShapes(parts.codec());
    RepShape repShape = new RepShape();

    Routes routes = new Routes(new Metrics(parts.metrics()));
    addService(routes, new ServiceRoutes(parts.contract(), parts.metrics(), parts.ready()));
    addDocs(routes, new DocsRoutes());
    addWrites(routes, parts, gate, reads, bodies, intake, own);
    addRecord(
        routes, new RecordRoutes(reads, new FeedShape(parts.codec()), new FateShape(), pending));
    addRegistry(routes, new RegistryRoutes(reads, shapes));
    PlacedReps placed = new PlacedReps();
    ClubsForgetting forgetting = new ClubsForgetting();
    RepList repList = new RepList(repShape);
    addTraining(
        routes,
        new SessionRoutes(reads, new SessionShape(shapes, repShape), repList),
        new RepRoutes(reads, placed, repShape, repList));
    routes.get(
        "/v1/clubs/{club}/suspected-duplicates", new SuspicionRoutes(reads)::suspectedDuplicates);
    LocalDays days = new LocalDays(parts.clock());
    Studio studio = new Studio();
    Papers papers = new Papers(studio);
    routes.post("/v1/layouts", LayoutRoutes.FORMS, new LayoutRoutes(gate, bodies, studio)::post);
    DogReads dogs = new DogReads(reads, placed, forgetting, days);
    addMastery(
        routes,
        new ProgressRoutes(dogs, new ProgressShape(), studio),
        new MasteryRoutes(reads, placed, days, new MasteryShape(), studio));
    addPlans(
        routes,
        new PlanRoutes(gate, bodies, intake, parts.clubs(), own, placed, forgetting),
        new PlanReads(reads, placed, papers));
    addOutlook(routes, new OutlookRoutes(dogs), new AimRoutes(dogs));
    addHabits(
        routes,
        new CareRoutes(dogs),
        new HabitRoutes(dogs, studio),
        new TimingRoutes(dogs, studio));
    addReports(routes, new ReportReads(reads, placed, forgetting, days), papers);
    routes.get(
        "/v1/clubs/{club}/field-pack",
        FieldPackRoutes.FORMS,
        new FieldPackRoutes(reads, placed, forgetting, days, papers)::fieldPack);
    routes.post(
        "/v1/clubs/{club}/classes/{class}/running-order",
        new RunningOrderRoutes(gate, bodies, reads, placed, forgetting, parts.clock())::post);
    return routes;
  }

  private static void addService(Routes routes, ServiceRoutes service) {
    routes
        .get("/health/live", service::live)
        .get("/health/ready", service::ready)
        .get("/metrics", List.of(ServiceRoutes.TEXT), service::metrics)
        .get("/openapi.yaml", List.of(ServiceRoutes.YAML), service::openapi)
        .get("/asyncapi.yaml", List.of(ServiceRoutes.YAML), service::asyncapi);
  }

  private static void addDocs(Routes routes, DocsRoutes docs) {
    routes
        .get("/docs", List.of(DocsRoutes.HTML), docs::page)
        .get("/docs/{file}", DocsRoutes.FILE_FORMS, docs::file);
  }

  private static void addWrites(
      Routes routes,
      Parts parts,
      Gate gate,
      ClubReads reads,
      Bodies bodies,
      Intake intake,
      OwnEvents own) {
    ClubDoor clubDoor =
        new ClubDoor(gate, bodies, intake, parts.clubs(), parts.accessKeys(), parts.codec(), own);
    Admission admission = new Admission(parts.clubs(), parts.clock());
    EventReception reception = new EventReception(gate, parts.clubs(), admission, intake);
    EventDoor eventDoor = new EventDoor(parts.contract(), bodies, reception, admission, intake);
    AccessRoutes access =
        new AccessRoutes(gate, reads, bodies, intake, parts.clubs(), parts.accessKeys(), own);
    ForgettingDoor forgetting =
        new ForgettingDoor(gate, intake, parts.clubs(), parts.personKeys(), own);
    new ResourceDoors(parts.contract(), bodies, reception).addTo(routes);
    routes
        .post("/v1/clubs", clubDoor::post)
        .post("/v1/clubs/{club}/events", eventDoor::post)
        .post("/v1/clubs/{club}/access-keys", access::post)
        .get("/v1/clubs/{club}/access-keys", access::list)
        .delete("/v1/clubs/{club}/access-keys/{key}", access::revoke)
        .delete("/v1/clubs/{club}/handlers/{handler}/personal-data", forgetting::delete);
  }

  private static void addRecord(Routes routes, RecordRoutes record) {
    routes
        .get("/v1/clubs/{club}/events", List.of(Answer.JSON, RecordRoutes.NDJSON), record::feed)
        .get("/v1/clubs/{club}/events/{event}", record::fate)
        .get("/v1/clubs/{club}/digest", record::digest)
        .get("/v1/clubs/{club}/waiting", record::waiting);
  }

  private static void addRegistry(Routes routes, RegistryRoutes registry) {
    routes
        .get("/v1/clubs/{club}", registry::club)
        .get("/v1/clubs/{club}/dogs", registry::dogs)
        .get("/v1/clubs/{club}/dogs/{dog}", registry::dog)
        .get("/v1/clubs/{club}/handlers", registry::handlers)
        .get("/v1/clubs/{club}/handlers/{handler}", registry::handler)
        .get("/v1/clubs/{club}/grounds", registry::grounds)
        .get("/v1/clubs/{club}/grounds/{ground}", registry::ground)
        .get("/v1/clubs/{club}/classes", registry::classes)
        .get("/v1/clubs/{club}/classes/{class}", registry::group)
        .get("/v1/clubs/{club}/classes/{class}/members", registry::members)
        .get("/v1/clubs/{club}/programmes", registry::programmes)
        .get("/v1/clubs/{club}/programmes/{programme}", registry::programme)
        .get("/v1/clubs/{club}/devices", registry::devices)
        .get("/v1/clubs/{club}/devices/{device}", registry::device);
  }

  private static void addTraining(Routes routes, SessionRoutes sessions, RepRoutes reps) {
    routes
        .get("/v1/clubs/{club}/sessions", sessions::sessions)
        .get("/v1/clubs/{club}/sessions/{session}", sessions::session)
        .get("/v1/clubs/{club}/sessions/{session}/setups", sessions::setups)
        .get("/v1/clubs/{club}/sessions/{session}/attendance", sessions::attendance)
        .get("/v1/clubs/{club}/sessions/{session}/reps", RepList.FORMS, sessions::reps)
        .get("/v1/clubs/{club}/dogs/{dog}/reps", RepList.FORMS, reps::ofDog)
        .get("/v1/clubs/{club}/reps/{rep}", reps::rep);
  }

  private static void addMastery(Routes routes, ProgressRoutes progress, MasteryRoutes mastery) {
    routes
        .get("/v1/clubs/{club}/dogs/{dog}/progress", ProgressRoutes.FORMS, progress::progress)
        .get(
            "/v1/clubs/{club}/dogs/{dog}/angle-mastery",
            MasteryRoutes.FORMS,
            mastery::angleMastery);
  }

  private static void addPlans(Routes routes, PlanRoutes plans, PlanReads reads) {
    routes
        .post("/v1/clubs/{club}/dogs/{dog}/plans", plans::post)
        .get("/v1/clubs/{club}/plans/{plan}", PlanReads.FORMS, reads::plan);
  }

  private static void addHabits(
      Routes routes, CareRoutes care, HabitRoutes habits, TimingRoutes timing) {
    routes
        .get("/v1/clubs/{club}/dogs/{dog}/care", care::care)
        .get("/v1/clubs/{club}/dogs/{dog}/faults", habits::faults)
        .get("/v1/clubs/{club}/dogs/{dog}/reward-fade", HabitRoutes.FADE_FORMS, habits::rewardFade)
        .get("/v1/clubs/{club}/dogs/{dog}/timing", TimingRoutes.FORMS, timing::timing);
  }

  private static void addReports(Routes routes, ReportReads reports, Papers papers) {
    routes
        .get(
            "/v1/clubs/{club}/classes/{class}/report",
            ClassReportRoutes.FORMS,
            new ClassReportRoutes(reports, papers)::report)
        .get("/v1/clubs/{club}/overview", new OverviewRoutes(reports)::overview);
  }

  private static void addOutlook(Routes routes, OutlookRoutes outlook, AimRoutes aims) {
    routes
        .get("/v1/clubs/{club}/dogs/{dog}/outlook", outlook::outlook)
        .get("/v1/clubs/{club}/dogs/{dog}/starting-stage", outlook::startingStage)
        .get("/v1/clubs/{club}/dogs/{dog}/goals", outlook::goals)
        .get("/v1/clubs/{club}/dogs/{dog}/homework", aims::homework)
        .get("/v1/clubs/{club}/dogs/{dog}/trials", aims::trials)
        .get("/v1/clubs/{club}/dogs/{dog}/season", AimRoutes.SEASON_FORMS, aims::season);
  }

  /** Takes no more requests and ends those under way. */
  @Override
  public void close() {
    routes.stop();
    javalin.stop();
  }
}
