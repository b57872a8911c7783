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
    private static final int CLASSES_AT_LEAST = 600;
    private static final int MOST_TYPES = 15;

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
                    "closure.row",
                    "closure.strip",
                    "lay.kept",
                    "lay.picture",
                    "shape.cut",
                    "draw.sheet",
                    "textile.extent",
                    "textile",
                    "wearer",
                    "pattern.piece",
                    "pattern",
                    "fit.seam",
                    "fit.stretch",
                    "fit.alter",
                    "fit.cut",
                    "fit.result",
                    "fit.made",
                    "cloth.yields",
                    "hem.plan",
                    "hem.turned",
                    "hem.guide",
                    "closure.fastening",
                    "closure.placket",
                    "cutting.line",
                    "cutting.sketch",
                    "lay.log",
                    "lay.design",
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
                    "safety",
                    "cutting",
                    "effect",
                    "lay.placement",
                    "lay.near",
                    "lay.nofit",
                    "lay.search",
                    "lay.plan",
                    "lay.piece",
                    "lay.stock",
                    "lay");

    private static Map<String, Set<String>> mayUse() {
        Map<String, Set<String>> rooms = new LinkedHashMap<>();
        rooms.put("fault", Set.of());
        rooms.put("measure", Set.of());
        rooms.put("shape", Set.of());
        rooms.put("shape.cut", Set.of("shape"));
        rooms.put("disk", Set.of());
        rooms.put("file.source", Set.of("disk"));
        rooms.put("file.json", Set.of());
        rooms.put("file.value", Set.of("measure", "file.source"));
        rooms.put("file", Set.of("measure", "file.source", "file.json", "file.value", "fault"));
        rooms.put("file.form", Set.of("measure", "file.source", "file.value", "file"));
        rooms.put("garment", Set.of("file", "file.form"));
        rooms.put("file.svg", Set.of("measure", "shape", "file.source"));
        rooms.put("draw", Set.of("measure", "shape"));
        rooms.put("draw.paper", Set.of("measure", "shape", "draw"));
        rooms.put("draw.sheet", Set.of("measure", "shape", "draw", "draw.paper"));
        rooms.put("draw.svg", Set.of("shape", "draw"));
        rooms.put("draw.pdf", Set.of("measure", "shape", "draw", "draw.paper"));
        rooms.put("figure", Set.of("measure", "shape"));
        rooms.put("block", Set.of("measure", "draw"));
        rooms.put("worksheet", Set.of("measure", "garment", "draw", "figure", "block", "fault"));
        rooms.put(
                "topic",
                Set.of(
                        "measure",
                        "file.source",
                        "file.value",
                        "file",
                        "file.form",
                        "figure",
                        "worksheet",
                        "fault"));
        rooms.put(
                "textile.extent",
                Set.of(
                        "measure",
                        "shape",
                        "file.source",
                        "file.value",
                        "file",
                        "file.form",
                        "garment"));
        rooms.put(
                "textile",
                Set.of(
                        "measure",
                        "shape",
                        "file.source",
                        "file.value",
                        "file",
                        "file.form",
                        "garment",
                        "textile.extent"));
        rooms.put(
                "cloth.yields",
                Set.of(
                        "measure",
                        "shape",
                        "file.value",
                        "garment",
                        "worksheet",
                        "textile.extent",
                        "textile",
                        "fault"));
        rooms.put(
                "cloth",
                with(
                        Set.of(),
                        "measure",
                        "shape",
                        "file.value",
                        "file",
                        "garment",
                        "draw",
                        "figure",
                        "block",
                        "worksheet",
                        "topic",
                        "textile.extent",
                        "textile",
                        "cloth.yields"));
        rooms.put(
                "wearer",
                Set.of(
                        "measure",
                        "file.source",
                        "file.value",
                        "file",
                        "file.form",
                        "worksheet",
                        "topic"));
        rooms.put(
                "pattern.piece",
                Set.of(
                        "measure",
                        "shape",
                        "file.source",
                        "file.value",
                        "file",
                        "file.form",
                        "garment",
                        "file.svg"));
        rooms.put(
                "pattern",
                Set.of(
                        "measure",
                        "shape",
                        "file.source",
                        "file.value",
                        "file",
                        "file.form",
                        "garment",
                        "wearer",
                        "pattern.piece"));
        rooms.put(
                "fit.size",
                Set.of(
                        "measure",
                        "file.value",
                        "garment",
                        "figure",
                        "block",
                        "worksheet",
                        "wearer"));
        rooms.put(
                "fit.seam",
                Set.of(
                        "measure",
                        "shape",
                        "shape.cut",
                        "file.value",
                        "garment",
                        "worksheet",
                        "pattern.piece",
                        "pattern"));
        rooms.put(
                "fit.alter",
                Set.of(
                        "measure",
                        "shape",
                        "shape.cut",
                        "file.value",
                        "garment",
                        "pattern.piece",
                        "pattern"));
        rooms.put(
                "hem.plan",
                Set.of(
                        "measure",
                        "shape",
                        "file.source",
                        "file.value",
                        "file",
                        "file.form",
                        "garment",
                        "worksheet",
                        "pattern.piece",
                        "pattern"));
        rooms.put("closure.spacing", Set.of());
        rooms.put(
                "closure.fastening",
                Set.of(
                        "measure",
                        "file.source",
                        "file.value",
                        "file",
                        "file.form",
                        "garment",
                        "worksheet"));
        rooms.put("effect", Set.of("measure", "file", "figure", "block", "worksheet", "topic"));
        rooms.put("lay.placement", Set.of("shape"));
        rooms.put("lay.nofit", Set.of("shape", "lay.placement"));
        rooms.put(
                "lay.plan",
                with(
                        Set.of(),
                        "measure",
                        "shape",
                        "file.source",
                        "file.value",
                        "file",
                        "file.form",
                        "garment",
                        "textile.extent",
                        "textile",
                        "pattern.piece",
                        "pattern",
                        "lay.placement"));
        rooms.put("notebook.site", Set.of("file.json", "disk", "file.source"));
        rooms.put("fit.cut", Set.of("pattern.piece", "pattern", "fit.alter"));
        rooms.put(
                "fit.result",
                Set.of(
                        "measure",
                        "shape",
                        "shape.cut",
                        "file.source",
                        "file.value",
                        "garment",
                        "worksheet",
                        "pattern.piece",
                        "pattern",
                        "fit.seam",
                        "fit.alter",
                        "fit.cut",
                        "fault"));
        rooms.put(
                "closure.placket",
                with(
                        Set.of(),
                        "measure",
                        "shape",
                        "file.source",
                        "file.value",
                        "file",
                        "file.form",
                        "garment",
                        "worksheet",
                        "topic",
                        "pattern.piece",
                        "pattern",
                        "hem.plan",
                        "closure.fastening",
                        "fit.result"));
        rooms.put(
                "closure.row",
                Set.of(
                        "measure",
                        "file.value",
                        "worksheet",
                        "pattern",
                        "closure.spacing",
                        "closure.fastening",
                        "fit.result",
                        "closure.placket",
                        "fault"));
        rooms.put(
                "closure.strip",
                Set.of(
                        "measure",
                        "shape",
                        "garment",
                        "draw",
                        "worksheet",
                        "closure.fastening",
                        "closure.placket",
                        "closure.row"));
        rooms.put(
                "hem.turned",
                Set.of(
                        "measure",
                        "shape",
                        "shape.cut",
                        "garment",
                        "worksheet",
                        "pattern.piece",
                        "pattern",
                        "hem.plan",
                        "fit.result",
                        "fault"));
        rooms.put(
                "hem.guide",
                Set.of(
                        "measure",
                        "shape",
                        "shape.cut",
                        "garment",
                        "draw",
                        "worksheet",
                        "pattern.piece",
                        "hem.plan",
                        "hem.turned"));
        rooms.put(
                "cutting.line",
                Set.of(
                        "measure",
                        "shape",
                        "shape.cut",
                        "garment",
                        "block",
                        "worksheet",
                        "pattern.piece",
                        "pattern",
                        "hem.plan",
                        "fit.cut",
                        "fit.result",
                        "fault"));
        rooms.put(
                "cutting.sketch",
                Set.of("measure", "shape", "shape.cut", "draw", "pattern.piece", "cutting.line"));
        rooms.put(
                "lay.piece",
                with(
                        Set.of(),
                        "measure",
                        "shape",
                        "garment",
                        "pattern.piece",
                        "lay.placement",
                        "lay.plan",
                        "cutting.line"));
        rooms.put(
                "fit.made",
                Set.of(
                        "closure.placket",
                        "measure",
                        "shape",
                        "shape.cut",
                        "file.value",
                        "garment",
                        "pattern.piece",
                        "pattern",
                        "fit.seam",
                        "fit.alter",
                        "fit.cut",
                        "fit.size",
                        "wearer",
                        "worksheet",
                        "fit.result"));
        rooms.put(
                "fit.stretch",
                Set.of(
                        "measure",
                        "shape",
                        "file",
                        "garment",
                        "topic",
                        "textile",
                        "pattern.piece",
                        "pattern",
                        "fit.seam"));
        rooms.put(
                "fit",
                with(
                        Set.of(),
                        "measure",
                        "shape",
                        "file.source",
                        "file.value",
                        "file",
                        "garment",
                        "figure",
                        "block",
                        "worksheet",
                        "topic",
                        "wearer",
                        "pattern.piece",
                        "pattern",
                        "fit.size",
                        "fit.seam",
                        "fit.alter",
                        "hem.plan",
                        "closure.placket",
                        "lay.plan",
                        "fit.cut",
                        "fit.result",
                        "fit.made",
                        "fit.stretch"));
        rooms.put(
                "closure",
                with(
                        Set.of(),
                        "measure",
                        "file.source",
                        "file.value",
                        "file",
                        "garment",
                        "draw",
                        "figure",
                        "block",
                        "worksheet",
                        "topic",
                        "wearer",
                        "pattern",
                        "hem.plan",
                        "closure.fastening",
                        "fit.result",
                        "closure.placket",
                        "closure.row",
                        "closure.strip",
                        "fit"));
        rooms.put(
                "hem",
                with(
                        Set.of(),
                        "measure",
                        "shape",
                        "shape.cut",
                        "file.source",
                        "file.value",
                        "file",
                        "garment",
                        "draw",
                        "figure",
                        "block",
                        "worksheet",
                        "topic",
                        "textile.extent",
                        "textile",
                        "pattern.piece",
                        "pattern",
                        "hem.plan",
                        "fit.result",
                        "hem.turned",
                        "hem.guide",
                        "fit"));
        rooms.put(
                "cutting",
                with(
                        Set.of(),
                        "measure",
                        "shape",
                        "file",
                        "garment",
                        "draw",
                        "figure",
                        "block",
                        "worksheet",
                        "topic",
                        "pattern.piece",
                        "pattern",
                        "hem.plan",
                        "fit.result",
                        "cutting.line",
                        "cutting.sketch",
                        "fit"));
        rooms.put("parallel", Set.of());
        rooms.put("lay.near", Set.of());
        rooms.put(
                "lay.search",
                Set.of("shape", "lay.placement", "lay.near", "lay.nofit", "parallel"));
        rooms.put("lay.kept", Set.of("shape", "lay.placement", "lay.nofit", "lay.search"));
        rooms.put(
                "lay.stock",
                with(
                        Set.of(),
                        "measure",
                        "shape",
                        "file.value",
                        "garment",
                        "textile",
                        "cloth.yields",
                        "pattern.piece",
                        "lay.placement",
                        "lay.plan",
                        "cutting.line",
                        "lay.piece",
                        "lay.kept"));
        rooms.put(
                "lay.log",
                with(
                        Set.of(),
                        "measure",
                        "shape",
                        "file.value",
                        "garment",
                        "worksheet",
                        "textile.extent",
                        "textile",
                        "cloth.yields",
                        "pattern.piece",
                        "lay.plan",
                        "lay.piece",
                        "lay.stock"));
        rooms.put(
                "lay.design",
                with(
                        Set.of(),
                        "measure",
                        "shape",
                        "file.value",
                        "garment",
                        "worksheet",
                        "textile",
                        "cloth.yields",
                        "pattern.piece",
                        "lay.placement",
                        "lay.plan",
                        "cutting.line",
                        "lay.piece",
                        "lay.kept",
                        "lay.stock",
                        "lay.log"));
        rooms.put(
                "lay.picture",
                with(
                        Set.of(),
                        "measure",
                        "shape",
                        "draw",
                        "worksheet",
                        "lay.plan",
                        "lay.piece",
                        "lay.stock",
                        "lay.design"));
        rooms.put(
                "lay",
                with(
                        Set.of(),
                        "measure",
                        "shape",
                        "file.source",
                        "file.value",
                        "file",
                        "garment",
                        "draw",
                        "figure",
                        "block",
                        "worksheet",
                        "topic",
                        "textile",
                        "cloth.yields",
                        "cloth",
                        "pattern.piece",
                        "pattern",
                        "lay.placement",
                        "lay.plan",
                        "cutting.line",
                        "lay.piece",
                        "cutting",
                        "lay.kept",
                        "lay.stock",
                        "lay.design",
                        "lay.picture"));
        rooms.put(
                "safety",
                with(
                        Set.of(),
                        "measure",
                        "file.source",
                        "file.value",
                        "file",
                        "file.form",
                        "garment",
                        "figure",
                        "block",
                        "worksheet",
                        "topic",
                        "wearer",
                        "pattern.piece",
                        "pattern",
                        "hem.plan",
                        "closure.fastening",
                        "fit.result",
                        "closure.placket",
                        "fit"));
        rooms.put(
                "project",
                with(
                        Set.of(),
                        "disk",
                        "measure",
                        "file.source",
                        "file.value",
                        "file",
                        "file.form",
                        "draw.paper",
                        "worksheet",
                        "topic",
                        "cloth",
                        "wearer",
                        "pattern",
                        "effect",
                        "lay.plan",
                        "fit.stretch",
                        "closure.placket",
                        "fit",
                        "closure",
                        "hem",
                        "cutting",
                        "lay.kept",
                        "lay",
                        "safety"));
        rooms.put(
                "notebook.paper",
                Set.of(
                        "measure",
                        "draw",
                        "draw.paper",
                        "draw.sheet",
                        "block",
                        "worksheet",
                        "project"));
        rooms.put(
                "notebook",
                Set.of(
                        "measure",
                        "shape",
                        "file.json",
                        "file",
                        "draw",
                        "draw.paper",
                        "draw.sheet",
                        "draw.svg",
                        "draw.pdf",
                        "figure",
                        "block",
                        "worksheet",
                        "notebook.site",
                        "parallel",
                        "project",
                        "notebook.paper",
                        "fault",
                        "disk",
                        "file.source"));
        rooms.put("app.kept", with(Set.of(), "disk", "notebook.site", "lay.kept"));
        rooms.put(
                "lay.pin",
                with(
                        Set.of(),
                        "measure",
                        "shape",
                        "file.source",
                        "file.value",
                        "pattern.piece",
                        "pattern",
                        "lay.placement",
                        "lay.plan",
                        "lay.piece",
                        "lay.stock",
                        "lay.design"));
        rooms.put("app.run", Set.of("lay.search"));
        rooms.put("app.terminal", Set.of("file.source"));
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

    /** More than a reader takes in at a glance is split by concept. */
    @Test
    void keepsEveryRoomToFifteenTypes() {
        Map<String, Long> crowded =
                HOUSE.stream()
                        .filter(type -> type.getSimpleName().length() > 0)
                        .filter(type -> !type.isNestedClass() && !type.isAnonymousClass())
                        .filter(type -> !type.getSimpleName().equals("package-info"))
                        .collect(
                                Collectors.groupingBy(
                                        ArchitectureTest::room, Collectors.counting()));
        crowded.values().removeIf(types -> types <= MOST_TYPES);
        assertEquals(Map.of(), crowded);
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
                        .filter(type -> !room(type).equals("app") && !room(type).startsWith("app."))
                        .flatMap(type -> type.getFieldAccessesFromSelf().stream())
                        .filter(access -> access.getTargetOwner().isEquivalentTo(System.class))
                        .map(Object::toString)
                        .toList();
        assertEquals(List.of(), printing);
        assertEquals(List.of(), callsOutsideApp(System.class, "exit"));
    }

    private static List<String> callsOutsideApp(Class<?> owner, String method) {
        return HOUSE.stream()
                .filter(type -> !room(type).equals("app") && !room(type).startsWith("app."))
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
