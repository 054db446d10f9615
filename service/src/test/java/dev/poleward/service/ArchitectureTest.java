package dev.poleward.service;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;

/**
 * Who may know whom. The reasons are in the design; a rule that stands in the way of a better
 * design is changed here, in the open, and not walked around.
 */
@AnalyzeClasses(
    packages = "dev.poleward",
    importOptions = {
      ImportOption.DoNotIncludeTests.class,
      ArchitectureTest.DoNotIncludeTestJars.class
    })
class ArchitectureTest {

  private static final String DOMAIN = "dev.poleward.domain..";
  private static final String SERVICE = "dev.poleward.service..";
  private static final String HTTP = "dev.poleward.service.http..";
  private static final String JOURNAL = "dev.poleward.service.journal..";
  private static final String PROJECTION = "dev.poleward.service.projection..";
  private static final String RENDER = "dev.poleward.service.render..";

  /** The domain's tests come to us as a jar, which the stock option takes for production code. */
  static final class DoNotIncludeTestJars implements ImportOption {
    @Override
    public boolean includes(Location location) {
      return !location.contains("-tests.jar");
    }
  }

  @ArchTest
  static final ArchRule domainKnowsTheJdkAndMathematics =
      classes()
          .that()
          .resideInAPackage(DOMAIN)
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              DOMAIN,
              "java..",
              "org.jspecify..",
              "org.apache.commons.statistics..",
              "org.jgrapht..");

  @ArchTest
  static final ArchRule domainIsAFunctionOfWhatItIsGiven =
      noClasses()
          .that()
          .resideInAPackage(DOMAIN)
          .should()
          .accessTargetWhere(asksTheWorld())
          .because("the same events must give the same answer, on any machine and on any day");

  @ArchTest
  static final ArchRule journalAndProjectionDoNotKnowHttp =
      noClasses()
          .that()
          .resideInAnyPackage(JOURNAL, PROJECTION)
          .should()
          .dependOnClassesThat()
          .resideInAPackage(HTTP);

  @ArchTest
  static final ArchRule kafkaStaysWithTheJournalAndTheProjection =
      noClasses()
          .that()
          .resideOutsideOfPackages(JOURNAL, PROJECTION)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.kafka..", "kafka..");

  @ArchTest
  static final ArchRule rocksStaysWithTheProjection =
      noClasses()
          .that()
          .resideOutsideOfPackage(PROJECTION)
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.rocksdb..");

  @ArchTest
  static final ArchRule javalinStaysWithHttp =
      noClasses()
          .that()
          .resideOutsideOfPackage(HTTP)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "jakarta.servlet..");

  @ArchTest
  static final ArchRule drawingStaysWithRender =
      noClasses()
          .that()
          .resideOutsideOfPackage(RENDER)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.awt..", "javax.imageio..", "org.apache.fontbox..")
          .because("AWT is slow to wake and asks the machine for fonts, so it wakes in one room");

  @ArchTest
  static final ArchRule renderKnowsAnswersAndNotWhereTheyComeFrom =
      noClasses()
          .that()
          .resideInAPackage(RENDER)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              HTTP,
              JOURNAL,
              PROJECTION,
              "dev.poleward.service.access..",
              "dev.poleward.service.codec..",
              "dev.poleward.service.contract..");

  @ArchTest
  static final ArchRule partsDoNotKnowTheCompositionRoot =
      noClasses()
          .that()
          .resideInAPackage("dev.poleward.service.*..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("dev.poleward.service");

  @ArchTest
  static final ArchRule partsOfTheServiceAreFreeOfCycles =
      slices().matching("dev.poleward.service.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule partsOfTheDomainAreFreeOfCycles =
      slices().matching("dev.poleward.domain.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule namesSayWhatAThingIs =
      noClasses()
          .that()
          .resideInAnyPackage(DOMAIN, SERVICE)
          .should()
          .haveNameMatching(".*(Util|Utils|Manager|Impl|Helper)")
          .because("a name from the trade says what belongs inside, and what does not");

  private static DescribedPredicate<JavaAccess<?>> asksTheWorld() {
    return DescribedPredicate.describe(
        "asks a clock or draws without a seed", access -> asksTheWorld(access.getTarget()));
  }

  private static boolean asksTheWorld(AccessTarget target) {
    var owner = target.getOwner();
    var name = target.getName();
    if (owner.getPackageName().startsWith("java.time")) {
      return name.equals("now") || (owner.isEquivalentTo(Clock.class) && !name.equals("fixed"));
    }
    if (owner.isEquivalentTo(System.class)) {
      return Set.of("currentTimeMillis", "nanoTime").contains(name);
    }
    if (owner.isEquivalentTo(Random.class) || owner.isEquivalentTo(SplittableRandom.class)) {
      return target instanceof AccessTarget.CodeUnitAccessTarget made
          && name.equals("<init>")
          && made.getRawParameterTypes().isEmpty();
    }
    return owner.isEquivalentTo(ThreadLocalRandom.class)
        || owner.isEquivalentTo(SecureRandom.class)
        || (owner.isEquivalentTo(UUID.class) && name.equals("randomUUID"))
        || (owner.isEquivalentTo(Math.class) && name.equals("random"))
        || (owner.isEquivalentTo(StrictMath.class) && name.equals("random"));
  }
}
