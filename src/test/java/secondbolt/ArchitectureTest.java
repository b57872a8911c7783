package secondbolt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Holds the rooms of the house: who may use whom, which library lives where, what stays pure. */
class ArchitectureTest {
    private static final int CLASSES_AT_LEAST = 120;

    private static final JavaClasses HOUSE =
            new ClassFileImporter()
                    .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                    .importPackages("secondbolt");

    private static final Map<String, Set<String>> MAY_USE = mayUse();

    private static final Map<String, String> LIBRARY_ROOMS =
            Map.of(
                    "picocli", "app",
                    "freemarker", "notebook",
                    "org.commonmark", "notebook",
                    "org.apache.pdfbox", "draw.pdf",
                    "org.apache.fontbox", "draw.pdf",
                    "org.yaml", "file.source",
                    "org.locationtech", "shape");

    private static final Set<String> PURE =
            Set.of(
                    "measure",
                    "garment",
                    "shape",
                    "draw",
                    "draw.paper",
                    "block",
                    "figure",
                    "worksheet",
                    "topic",
                    "fit.size",
                    "cloth",
                    "fit",
                    "closure.spacing",
                    "closure",
                    "hem",
                    "cutting",
                    "effect",
                    "lay.placement",
                    "lay.nofit",
                    "lay.search",
                    "lay.plan",
                    "lay.piece",
                    "lay.stock",
                    "lay");

    private static Map<String, Set<String>> mayUse() {
        Map<String, Set<String>> rooms = new LinkedHashMap<>();
        rooms.put("measure", Set.of());
        rooms.put("shape", Set.of("measure"));
        rooms.put("file.source", Set.of());
        rooms.put("file", Set.of("file.source", "measure"));
        rooms.put("garment", Set.of("file", "file.source", "measure"));
        rooms.put("file.svg", Set.of("file.source", "shape", "measure"));
        rooms.put("draw", Set.of("shape", "measure"));
        rooms.put("draw.paper", Set.of("draw", "shape", "measure"));
        rooms.put("draw.svg", Set.of("draw", "shape", "measure"));
        rooms.put("draw.pdf", Set.of("draw.paper", "draw", "shape", "measure"));
        rooms.put("block", Set.of("draw", "shape", "measure"));
        rooms.put("figure", Set.of("shape", "measure"));
        rooms.put("worksheet", Set.of("block", "figure", "garment", "draw", "shape", "measure"));
        rooms.put("topic", Set.of("worksheet", "figure", "file", "file.source", "measure"));
        Set<String> underTopics =
                Set.of(
                        "topic",
                        "worksheet",
                        "block",
                        "figure",
                        "draw",
                        "garment",
                        "file",
                        "file.svg",
                        "file.source",
                        "shape",
                        "measure");
        rooms.put(
                "fit.size",
                Set.of(
                        "topic",
                        "worksheet",
                        "block",
                        "figure",
                        "garment",
                        "file",
                        "file.source",
                        "measure"));
        rooms.put("cloth", underTopics);
        rooms.put("fit", with(underTopics, "cloth", "fit.size"));
        rooms.put("closure.spacing", Set.of());
        rooms.put("closure", with(underTopics, "cloth", "fit", "fit.size", "closure.spacing"));
        rooms.put("hem", with(underTopics, "cloth", "fit", "closure"));
        rooms.put("cutting", with(underTopics, "cloth", "fit", "closure", "hem"));
        rooms.put("effect", Set.of("topic", "worksheet", "block", "figure", "file", "measure"));
        rooms.put("lay.placement", Set.of("shape"));
        rooms.put("lay.nofit", Set.of("lay.placement", "shape"));
        rooms.put("lay.search", Set.of("lay.nofit", "lay.placement", "shape"));
        rooms.put("lay.plan", with(underTopics, "lay.placement", "cloth", "fit"));
        Set<String> underLay = with(underTopics, "lay.placement", "cloth", "fit", "cutting");
        rooms.put("lay.piece", underLay);
        rooms.put("lay.stock", with(underLay, "lay.nofit", "lay.search", "lay.plan", "lay.piece"));
        rooms.put("lay", with(underLay, "lay.plan", "lay.piece", "lay.stock"));
        rooms.put(
                "project",
                with(
                        underTopics,
                        "effect",
                        "cloth",
                        "fit",
                        "fit.size",
                        "closure",
                        "hem",
                        "cutting",
                        "lay",
                        "lay.plan",
                        "lay.stock",
                        "draw.paper"));
        rooms.put("disk", Set.of());
        rooms.put("notebook.site", Set.of("disk", "file"));
        rooms.put(
                "notebook",
                with(
                        underTopics,
                        "project",
                        "notebook.site",
                        "draw.paper",
                        "draw.svg",
                        "draw.pdf"));
        rooms.put("app", with(rooms.keySet()));
        return rooms;
    }

    private static Set<String> with(Set<String> rooms, String... more) {
        Set<String> all = new TreeSet<>(rooms);
        all.addAll(List.of(more));
        return all;
    }

    private static String room(JavaClass type) {
        return type.getPackageName().replaceFirst("^secondbolt\\.?", "");
    }

    private static List<String> wrongDependencies(Predicate<Dependency> wrong) {
        return HOUSE.stream()
                .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
                .filter(wrong)
                .map(d -> d.getOriginClass().getName() + " uses " + d.getTargetClass().getName())
                .distinct()
                .sorted()
                .toList();
    }

    @Test
    void seesTheWholeHouse() {
        assertTrue(HOUSE.size() > CLASSES_AT_LEAST, "classes seen: " + HOUSE.size());
        Set<String> rooms = HOUSE.stream().map(ArchitectureTest::room).collect(Collectors.toSet());
        rooms.remove("");
        assertEquals(new TreeSet<>(MAY_USE.keySet()), new TreeSet<>(rooms));
    }

    @Test
    void letsARoomUseOnlyRoomsBelowIt() {
        assertEquals(
                List.of(),
                wrongDependencies(
                        d -> {
                            String from = room(d.getOriginClass());
                            String to = room(d.getTargetClass());
                            return d.getTargetClass().getPackageName().startsWith("secondbolt")
                                    && !from.equals(to)
                                    && !MAY_USE.getOrDefault(from, Set.of()).contains(to);
                        }));
    }

    @Test
    void keepsTheTableFreeOfCircles() {
        Set<String> seen = new TreeSet<>();
        MAY_USE.forEach(
                (room, below) -> {
                    assertTrue(seen.containsAll(below), room + " uses a room listed after it");
                    seen.add(room);
                });
    }

    @Test
    void keepsEachLibraryInItsRoom() {
        LIBRARY_ROOMS.forEach(
                (library, home) ->
                        assertEquals(
                                List.of(),
                                wrongDependencies(
                                        d ->
                                                d.getTargetClass()
                                                                .getPackageName()
                                                                .startsWith(library)
                                                        && !room(d.getOriginClass()).equals(home)),
                                library));
    }

    @Test
    void printsAndExitsOnlyInTheCommands() {
        List<String> printing =
                HOUSE.stream()
                        .filter(type -> !room(type).equals("app"))
                        .flatMap(type -> type.getFieldAccessesFromSelf().stream())
                        .filter(access -> access.getTargetOwner().isEquivalentTo(System.class))
                        .map(Object::toString)
                        .toList();
        assertEquals(List.of(), printing);
        assertEquals(List.of(), callsOutsideApp(System.class, "exit"));
    }

    private static List<String> callsOutsideApp(Class<?> owner, String method) {
        return HOUSE.stream()
                .filter(type -> !room(type).equals("app"))
                .flatMap(type -> type.getMethodCallsFromSelf().stream())
                .filter(call -> call.getTargetOwner().isEquivalentTo(owner))
                .filter(call -> call.getName().equals(method))
                .map(Object::toString)
                .toList();
    }

    @Test
    void readsTheClockOnlyInTheCommands() {
        assertEquals(List.of(), callsOutsideApp(System.class, "nanoTime"));
        assertEquals(List.of(), callsOutsideApp(System.class, "currentTimeMillis"));
    }

    @Test
    void keepsFilesClockAndChanceOutOfPureRooms() {
        Set<String> barred =
                Set.of(
                        "java.util.Random",
                        "java.time.Clock",
                        "java.util.Locale",
                        "java.util.concurrent.ThreadLocalRandom",
                        "java.util.logging.Logger");
        assertEquals(
                List.of(),
                wrongDependencies(
                        d ->
                                PURE.contains(room(d.getOriginClass()))
                                        && (d.getTargetClass()
                                                        .getPackageName()
                                                        .startsWith("java.io")
                                                || d.getTargetClass()
                                                        .getPackageName()
                                                        .startsWith("java.nio.file")
                                                || (barred.contains(d.getTargetClass().getName())
                                                        && !isRootLocale(d)))));
    }

    /** The root locale is the one that depends on no machine. */
    private static boolean isRootLocale(Dependency dependency) {
        return dependency.getDescription().contains("Locale.ROOT")
                || dependency.getDescription().contains("java.util.Locale)");
    }

    /** A search may keep score in a class of its own; what other rooms can see never changes. */
    @Test
    void keepsWhatPureRoomsShowFinal() {
        List<String> open =
                HOUSE.stream()
                        .filter(type -> PURE.contains(room(type)))
                        .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
                        .flatMap(type -> type.getFields().stream())
                        .filter(field -> !field.getModifiers().contains(JavaModifier.FINAL))
                        .filter(field -> !field.getModifiers().contains(JavaModifier.SYNTHETIC))
                        .map(field -> field.getFullName())
                        .sorted()
                        .toList();
        assertEquals(List.of(), open);
    }
}
