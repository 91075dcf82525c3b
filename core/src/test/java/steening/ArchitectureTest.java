package steening;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Method;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import steening.language.PlantedArrow;
import steening.planted.PlantedCalls;
import steening.planted.PlantedInnocence;
import steening.stage.leftplant.PlantedNeighbour;

/**
 * Holds the core to its arrows and to what runs alike in both worlds; {@link Arrows} and {@link Banned} are the
 * rules.
 */
class ArchitectureTest {
  private static final JavaClasses CORE =
      new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("steening");

  @Test
  void theCoreKeepsToItsArrows() {
    assertThat(CORE).as("classes read").isNotEmpty();
    assertThat(againstTheArrows(CORE)).isEmpty();
  }

  @Test
  void theCoreCallsNothingThatIsBanned() {
    assertThat(bannedCalls(CORE)).isEmpty();
  }

  @Test
  void everyPackageHasItsPlace() {
    TreeSet<String> unknown = new TreeSet<>();
    for (JavaClass type : CORE) if (!Arrows.knows(type.getPackageName())) unknown.add(type.getPackageName());
    assertThat(unknown).as("packages that Arrows does not name").isEmpty();
  }

  @Test
  void anArrowThatPointsBackIsSeen() {
    assertThat(againstTheArrows(read(PlantedArrow.class)))
        .anyMatch(sentence -> sentence.contains("steening.page.Reply"))
        .anyMatch(sentence -> sentence.contains("java.util.concurrent"))
        .anyMatch(sentence -> sentence.contains("java.io"))
        .anyMatch(sentence -> sentence.contains("org.hipparchus"));
  }

  @Test
  void aRoomThatLooksIntoTheNextIsSeen() {
    assertThat(againstTheArrows(read(PlantedNeighbour.class))).anyMatch(sentence -> sentence.contains("rightplant"));
  }

  @Test
  void everyPlantedCallIsSeen() {
    List<String> seen = bannedCalls(read(PlantedCalls.class));
    for (Method planted : PlantedCalls.class.getDeclaredMethods()) {
      if (planted.isSynthetic()) continue;
      String call = "PlantedCalls." + planted.getName() + "(";
      assertThat(seen).as(planted.getName()).anyMatch(sentence -> sentence.contains(call));
    }
  }

  @Test
  void whatIsAllowedIsLeftAlone() {
    assertThat(bannedCalls(read(PlantedInnocence.class))).isEmpty();
  }

  private static JavaClasses read(Class<?> type) {
    return new ClassFileImporter().importClasses(type);
  }

  private static List<String> againstTheArrows(JavaClasses classes) {
    return classes.stream()
        .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
        .filter(ArchitectureTest::pointsWrong)
        .map(Dependency::getDescription)
        .sorted()
        .toList();
  }

  private static boolean pointsWrong(Dependency arrow) {
    JavaClass target = arrow.getTargetClass().getBaseComponentType();
    String from = arrow.getOriginClass().getPackageName();
    return !target.isPrimitive() && !Arrows.allows(from, target.getPackageName(), target.getName());
  }

  private static List<String> bannedCalls(JavaClasses classes) {
    return classes.stream()
        .flatMap(type -> type.getAccessesFromSelf().stream())
        .flatMap(access -> complaint(access).stream())
        .sorted()
        .toList();
  }

  private static Optional<String> complaint(JavaAccess<?> access) {
    return Banned.reason(access.getOriginOwner().getName(), access.getTarget().getFullName())
        .map(reason -> access.getDescription() + ": " + reason);
  }
}
