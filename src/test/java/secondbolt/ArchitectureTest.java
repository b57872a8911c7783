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
        rooms.put("file.value", Set.of("file.source", "measure"));
        rooms.put("file", Set.of("fault", "file.json", "file.source", "file.value", "measure"));
        rooms.put("file.form", Set.of("file", "file.source", "file.value", "measure"));
        rooms.put("garment", Set.of("file", "file.form"));
        rooms.put("file.svg", Set.of("file.source", "measure", "shape"));
        rooms.put("draw", Set.of("measure", "shape"));
        rooms.put("draw.paper", Set.of("draw", "measure", "shape"));
        rooms.put("draw.sheet", Set.of("draw", "draw.paper", "measure", "shape"));
        rooms.put("draw.svg", Set.of("draw", "shape"));
        rooms.put("draw.pdf", Set.of("draw", "draw.paper", "measure", "shape"));
        rooms.put("figure", Set.of("measure", "shape"));
        rooms.put("block", Set.of("draw", "measure"));
        rooms.put(
                "textile.extent",
                Set.of(
                        "file",
                        "file.form",
                        "file.source",
                        "file.value",
                        "garment",
                        "measure",
                        "shape"));
        rooms.put(
                "pattern.piece",
                Set.of(
                        "file",
                        "file.form",
                        "file.source",
                        "file.svg",
                        "file.value",
                        "garment",
                        "measure",
                        "shape"));
        rooms.put("closure.spacing", Set.of());
        rooms.put("lay.placement", Set.of("shape"));
        rooms.put("lay.nofit", Set.of("lay.placement", "shape"));
        rooms.put("notebook.site", Set.of("disk", "file.json", "file.source"));
        rooms.put("parallel", Set.of());
        rooms.put("lay.near", Set.of());
        rooms.put(
                "lay.search",
                Set.of("lay.near", "lay.nofit", "lay.placement", "parallel", "shape"));
        rooms.put("lay.kept", Set.of("lay.nofit", "lay.placement", "lay.search", "shape"));
        rooms.put("app.kept", Set.of("disk", "lay.kept", "notebook.site"));
        rooms.put("app.run", Set.of("lay.search"));
        rooms.put("app.terminal", Set.of("file.source"));
        rooms.put("task", Set.of("measure"));
        rooms.put(
                "worksheet",
                Set.of("block", "draw", "fault", "figure", "garment", "measure", "shape", "task"));
        rooms.put(
                "topic",
                Set.of(
                        "fault",
                        "figure",
                        "file",
                        "file.form",
                        "file.source",
                        "file.value",
                        "measure",
                        "worksheet"));
        rooms.put(
                "wearer",
                Set.of(
                        "file",
                        "file.form",
                        "file.source",
                        "file.value",
                        "measure",
                        "topic",
                        "worksheet"));
        rooms.put(
                "pattern",
                Set.of(
                        "file",
                        "file.form",
                        "file.source",
                        "file.value",
                        "garment",
                        "measure",
                        "pattern.piece",
                        "shape",
                        "wearer"));
        rooms.put(
                "fit.size",
                Set.of(
                        "block",
                        "figure",
                        "file.value",
                        "garment",
                        "measure",
                        "wearer",
                        "worksheet"));
        rooms.put(
                "fit.seam",
                Set.of(
                        "file.value",
                        "garment",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape",
                        "shape.cut",
                        "worksheet"));
        rooms.put(
                "fit.alter",
                Set.of(
                        "file.value",
                        "garment",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape",
                        "shape.cut"));
        rooms.put(
                "hem.plan",
                Set.of(
                        "file",
                        "file.form",
                        "file.source",
                        "file.value",
                        "garment",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape",
                        "worksheet"));
        rooms.put(
                "closure.fastening",
                Set.of(
                        "file",
                        "file.form",
                        "file.source",
                        "file.value",
                        "garment",
                        "measure",
                        "worksheet"));
        rooms.put("effect", Set.of("block", "figure", "file", "measure", "topic", "worksheet"));
        rooms.put("fit.cut", Set.of("fit.alter", "pattern", "pattern.piece"));
        rooms.put(
                "fit.result",
                with(
                        Set.of(),
                        "fault",
                        "file.source",
                        "file.value",
                        "fit.alter",
                        "fit.cut",
                        "fit.seam",
                        "garment",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape",
                        "shape.cut",
                        "worksheet"));
        rooms.put(
                "closure.placket",
                with(
                        Set.of(),
                        "closure.fastening",
                        "file",
                        "file.form",
                        "file.source",
                        "file.value",
                        "fit.result",
                        "garment",
                        "hem.plan",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape",
                        "topic",
                        "worksheet"));
        rooms.put(
                "closure.row",
                Set.of(
                        "closure.fastening",
                        "closure.placket",
                        "closure.spacing",
                        "fault",
                        "file.value",
                        "fit.result",
                        "measure",
                        "pattern",
                        "worksheet"));
        rooms.put(
                "closure.strip",
                Set.of(
                        "closure.fastening",
                        "closure.placket",
                        "closure.row",
                        "draw",
                        "garment",
                        "measure",
                        "shape",
                        "worksheet"));
        rooms.put(
                "cutting.line",
                with(
                        Set.of(),
                        "block",
                        "fault",
                        "fit.cut",
                        "fit.result",
                        "garment",
                        "hem.plan",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape",
                        "shape.cut",
                        "worksheet"));
        rooms.put(
                "cutting.sketch",
                Set.of("cutting.line", "draw", "measure", "pattern.piece", "shape", "shape.cut"));
        rooms.put(
                "fit.made",
                with(
                        Set.of(),
                        "closure.placket",
                        "file.value",
                        "fit.alter",
                        "fit.cut",
                        "fit.result",
                        "fit.seam",
                        "fit.size",
                        "garment",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape",
                        "shape.cut",
                        "wearer",
                        "worksheet"));
        rooms.put("textile.fibre", Set.of("file", "measure"));
        rooms.put("work.order", Set.of("task"));
        rooms.put("measure.kitchen", Set.of("measure"));
        rooms.put(
                "bleach.plan", Set.of("file", "file.form", "file.source", "file.value", "measure"));
        rooms.put(
                "closure.giving",
                Set.of(
                        "closure.fastening",
                        "closure.placket",
                        "closure.row",
                        "measure",
                        "task",
                        "worksheet"));
        rooms.put(
                "dye.plan",
                Set.of("file", "file.form", "file.source", "file.value", "measure", "task"));
        rooms.put("dye.take", Set.of("dye.plan", "measure", "textile.fibre"));
        rooms.put(
                "dye.recipe",
                Set.of("dye.plan", "dye.take", "file.value", "measure", "textile.fibre"));
        rooms.put(
                "sewing.plan",
                Set.of(
                        "file",
                        "file.form",
                        "file.source",
                        "file.value",
                        "garment",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "worksheet"));
        rooms.put(
                "supply.plan",
                Set.of("file", "file.form", "file.source", "file.value", "measure", "task"));
        rooms.put(
                "supply.list",
                Set.of("file.source", "file.value", "measure", "supply.plan", "task"));
        rooms.put(
                "supply.cost",
                Set.of("file.value", "measure", "supply.list", "supply.plan", "task"));
        rooms.put("textile.state", Set.of("file", "file.form"));
        rooms.put(
                "textile",
                Set.of(
                        "file",
                        "file.form",
                        "file.source",
                        "file.value",
                        "garment",
                        "measure",
                        "shape",
                        "textile.extent",
                        "textile.fibre",
                        "textile.state"));
        rooms.put(
                "hem.turned",
                with(
                        Set.of(),
                        "fault",
                        "file.value",
                        "fit.result",
                        "garment",
                        "hem.plan",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape",
                        "shape.cut",
                        "textile",
                        "textile.extent",
                        "worksheet"));
        rooms.put(
                "hem.guide",
                Set.of(
                        "draw",
                        "garment",
                        "hem.plan",
                        "hem.turned",
                        "measure",
                        "pattern.piece",
                        "shape",
                        "shape.cut",
                        "worksheet"));
        rooms.put(
                "cloth.yields",
                Set.of(
                        "fault",
                        "file.value",
                        "garment",
                        "measure",
                        "shape",
                        "textile",
                        "textile.extent",
                        "worksheet"));
        rooms.put(
                "cloth",
                with(
                        Set.of(),
                        "block",
                        "cloth.yields",
                        "draw",
                        "figure",
                        "file",
                        "file.value",
                        "garment",
                        "measure",
                        "shape",
                        "textile",
                        "textile.extent",
                        "textile.fibre",
                        "topic",
                        "worksheet"));
        rooms.put(
                "lay.plan",
                with(
                        Set.of(),
                        "file",
                        "file.form",
                        "file.source",
                        "file.value",
                        "garment",
                        "lay.placement",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape",
                        "supply.plan",
                        "textile",
                        "textile.extent"));
        rooms.put(
                "lay.piece",
                Set.of(
                        "cutting.line",
                        "garment",
                        "lay.placement",
                        "lay.plan",
                        "measure",
                        "pattern.piece",
                        "shape"));
        rooms.put(
                "fit.stretch",
                Set.of(
                        "file",
                        "fit.seam",
                        "garment",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape",
                        "textile",
                        "topic"));
        rooms.put(
                "lay.stock",
                with(
                        Set.of(),
                        "cloth.yields",
                        "cutting.line",
                        "file.value",
                        "garment",
                        "lay.kept",
                        "lay.piece",
                        "lay.placement",
                        "lay.plan",
                        "measure",
                        "pattern.piece",
                        "shape",
                        "textile"));
        rooms.put(
                "lay.log",
                with(
                        Set.of(),
                        "cloth.yields",
                        "file.value",
                        "garment",
                        "lay.piece",
                        "lay.plan",
                        "lay.stock",
                        "measure",
                        "pattern.piece",
                        "shape",
                        "textile",
                        "textile.extent",
                        "worksheet"));
        rooms.put(
                "lay.design",
                with(
                        Set.of(),
                        "cloth.yields",
                        "cutting.line",
                        "file.value",
                        "garment",
                        "lay.kept",
                        "lay.log",
                        "lay.piece",
                        "lay.placement",
                        "lay.plan",
                        "lay.stock",
                        "measure",
                        "pattern.piece",
                        "shape",
                        "textile",
                        "worksheet"));
        rooms.put(
                "lay.picture",
                Set.of(
                        "draw",
                        "lay.design",
                        "lay.piece",
                        "lay.plan",
                        "lay.stock",
                        "measure",
                        "shape",
                        "worksheet"));
        rooms.put(
                "lay.pin",
                with(
                        Set.of(),
                        "file.source",
                        "file.value",
                        "lay.design",
                        "lay.piece",
                        "lay.placement",
                        "lay.plan",
                        "lay.stock",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape"));
        rooms.put(
                "bleach.recipe",
                Set.of(
                        "bleach.plan",
                        "cloth.yields",
                        "file.value",
                        "measure",
                        "textile",
                        "textile.fibre",
                        "textile.state"));
        rooms.put(
                "hem.giving",
                with(
                        Set.of(),
                        "file.value",
                        "garment",
                        "hem.plan",
                        "hem.turned",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape",
                        "shape.cut",
                        "task",
                        "worksheet"));
        rooms.put(
                "dye.bath",
                with(
                        Set.of(),
                        "cloth.yields",
                        "cutting.line",
                        "dye.plan",
                        "dye.recipe",
                        "dye.take",
                        "file.value",
                        "garment",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape",
                        "task",
                        "textile",
                        "textile.fibre"));
        rooms.put("prepare.heat", Set.of("measure", "textile.fibre", "textile.state"));
        rooms.put(
                "bleach",
                with(
                        Set.of(),
                        "bleach.plan",
                        "bleach.recipe",
                        "block",
                        "cloth",
                        "cloth.yields",
                        "figure",
                        "file",
                        "file.source",
                        "file.value",
                        "measure",
                        "measure.kitchen",
                        "prepare.heat",
                        "task",
                        "textile",
                        "textile.fibre",
                        "textile.state",
                        "topic",
                        "worksheet"));
        rooms.put(
                "dye.guide",
                with(
                        Set.of(),
                        "block",
                        "cloth.yields",
                        "dye.bath",
                        "dye.plan",
                        "dye.recipe",
                        "dye.take",
                        "measure",
                        "measure.kitchen",
                        "prepare.heat",
                        "task",
                        "textile",
                        "textile.fibre",
                        "textile.state"));
        rooms.put("prepare.wash", Set.of("file.value", "measure", "textile"));
        rooms.put(
                "sewing.seam",
                with(
                        Set.of(),
                        "cutting.line",
                        "file.value",
                        "fit.result",
                        "fit.seam",
                        "garment",
                        "hem.plan",
                        "hem.turned",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "sewing.plan",
                        "shape",
                        "worksheet"));
        rooms.put(
                "sewing.advice",
                Set.of(
                        "cloth.yields",
                        "file.value",
                        "garment",
                        "measure",
                        "sewing.plan",
                        "sewing.seam",
                        "textile",
                        "textile.fibre",
                        "worksheet"));
        rooms.put(
                "sewing.thread",
                Set.of(
                        "closure.fastening",
                        "closure.placket",
                        "closure.row",
                        "garment",
                        "measure",
                        "sewing.plan",
                        "sewing.seam",
                        "worksheet"));
        rooms.put(
                "supply.left",
                Set.of(
                        "garment",
                        "lay.design",
                        "lay.piece",
                        "lay.stock",
                        "measure",
                        "shape",
                        "worksheet"));
        rooms.put(
                "trim.fused",
                with(
                        Set.of(),
                        "cloth.yields",
                        "cutting.line",
                        "file.value",
                        "garment",
                        "lay.design",
                        "lay.plan",
                        "measure",
                        "pattern.piece",
                        "prepare.heat",
                        "shape",
                        "textile",
                        "textile.fibre",
                        "textile.state",
                        "worksheet"));
        rooms.put(
                "trim.plan",
                Set.of(
                        "file",
                        "file.form",
                        "file.source",
                        "file.value",
                        "garment",
                        "hem.plan",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "wearer"));
        rooms.put(
                "trim.gathered",
                with(
                        Set.of(),
                        "cutting.line",
                        "file.value",
                        "fit.result",
                        "garment",
                        "hem.plan",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "trim.plan",
                        "wearer",
                        "worksheet"));
        rooms.put("trim.strip", Set.of("measure", "shape", "worksheet"));
        rooms.put(
                "trim.bound",
                with(
                        Set.of(),
                        "cutting.line",
                        "file.value",
                        "fit.result",
                        "fit.seam",
                        "garment",
                        "lay.design",
                        "lay.stock",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape",
                        "trim.plan",
                        "trim.strip",
                        "worksheet"));
        rooms.put(
                "trim.guide",
                Set.of(
                        "garment",
                        "lay.plan",
                        "measure",
                        "prepare.heat",
                        "trim.fused",
                        "trim.plan",
                        "trim.strip"));
        rooms.put(
                "work.kind",
                Set.of("file.value", "garment", "measure", "pattern", "pattern.piece", "task"));
        rooms.put("work.plan", Set.of("file", "file.form", "file.source", "file.value", "garment"));
        rooms.put(
                "cutting.giving",
                Set.of("cutting.line", "measure", "pattern.piece", "task", "worksheet"));
        rooms.put(
                "fit.giving",
                Set.of(
                        "fit.result",
                        "fit.size",
                        "garment",
                        "measure",
                        "pattern.piece",
                        "task",
                        "wearer",
                        "worksheet"));
        rooms.put(
                "fit",
                with(
                        Set.of(),
                        "block",
                        "closure.placket",
                        "figure",
                        "file",
                        "file.source",
                        "file.value",
                        "fit.alter",
                        "fit.cut",
                        "fit.giving",
                        "fit.made",
                        "fit.result",
                        "fit.seam",
                        "fit.size",
                        "fit.stretch",
                        "garment",
                        "hem.plan",
                        "lay.plan",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape",
                        "topic",
                        "wearer",
                        "worksheet"));
        rooms.put(
                "cutting",
                with(
                        Set.of(),
                        "block",
                        "cutting.giving",
                        "cutting.line",
                        "cutting.sketch",
                        "draw",
                        "figure",
                        "file",
                        "fit",
                        "fit.result",
                        "garment",
                        "hem.plan",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape",
                        "topic",
                        "worksheet"));
        rooms.put(
                "safety",
                with(
                        Set.of(),
                        "block",
                        "closure.fastening",
                        "closure.placket",
                        "figure",
                        "file",
                        "file.form",
                        "file.source",
                        "file.value",
                        "fit",
                        "fit.result",
                        "garment",
                        "hem.plan",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "task",
                        "topic",
                        "wearer",
                        "worksheet"));
        rooms.put(
                "closure",
                with(
                        Set.of(),
                        "block",
                        "closure.fastening",
                        "closure.giving",
                        "closure.placket",
                        "closure.row",
                        "closure.strip",
                        "draw",
                        "figure",
                        "file",
                        "file.source",
                        "file.value",
                        "fit",
                        "fit.result",
                        "garment",
                        "hem.plan",
                        "measure",
                        "pattern",
                        "topic",
                        "wearer",
                        "worksheet"));
        rooms.put(
                "hem",
                with(
                        Set.of(),
                        "block",
                        "draw",
                        "figure",
                        "file",
                        "file.source",
                        "file.value",
                        "fit",
                        "fit.result",
                        "garment",
                        "hem.giving",
                        "hem.guide",
                        "hem.plan",
                        "hem.turned",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape",
                        "shape.cut",
                        "textile",
                        "textile.fibre",
                        "topic",
                        "worksheet"));
        rooms.put(
                "sewing",
                with(
                        Set.of(),
                        "block",
                        "closure",
                        "cloth",
                        "cutting",
                        "cutting.line",
                        "figure",
                        "file",
                        "file.value",
                        "fit",
                        "fit.result",
                        "garment",
                        "hem",
                        "measure",
                        "pattern",
                        "sewing.advice",
                        "sewing.plan",
                        "sewing.seam",
                        "sewing.thread",
                        "task",
                        "topic",
                        "worksheet"));
        rooms.put(
                "lay.giving",
                with(
                        Set.of(),
                        "cloth.yields",
                        "cutting.line",
                        "garment",
                        "lay.design",
                        "lay.piece",
                        "lay.plan",
                        "lay.stock",
                        "measure",
                        "pattern.piece",
                        "task",
                        "textile",
                        "textile.extent",
                        "worksheet"));
        rooms.put(
                "lay",
                with(
                        Set.of(),
                        "block",
                        "cloth",
                        "cloth.yields",
                        "cutting",
                        "cutting.line",
                        "draw",
                        "figure",
                        "file",
                        "file.source",
                        "file.value",
                        "garment",
                        "lay.design",
                        "lay.giving",
                        "lay.kept",
                        "lay.picture",
                        "lay.piece",
                        "lay.placement",
                        "lay.plan",
                        "lay.stock",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "shape",
                        "textile",
                        "topic",
                        "worksheet"));
        rooms.put(
                "dye",
                with(
                        Set.of(),
                        "block",
                        "cloth",
                        "cloth.yields",
                        "cutting",
                        "cutting.line",
                        "dye.bath",
                        "dye.guide",
                        "dye.plan",
                        "dye.recipe",
                        "dye.take",
                        "fault",
                        "figure",
                        "file",
                        "file.source",
                        "file.value",
                        "garment",
                        "lay",
                        "lay.design",
                        "lay.piece",
                        "lay.plan",
                        "lay.stock",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "task",
                        "textile",
                        "textile.extent",
                        "textile.fibre",
                        "textile.state",
                        "topic",
                        "worksheet"));
        rooms.put(
                "supply",
                with(
                        Set.of(),
                        "block",
                        "figure",
                        "file",
                        "file.value",
                        "lay",
                        "lay.design",
                        "lay.plan",
                        "measure",
                        "shape",
                        "supply.cost",
                        "supply.left",
                        "supply.list",
                        "supply.plan",
                        "task",
                        "topic",
                        "worksheet"));
        rooms.put(
                "trim",
                with(
                        Set.of(),
                        "block",
                        "cloth",
                        "cutting",
                        "cutting.line",
                        "figure",
                        "file",
                        "file.source",
                        "file.value",
                        "fit",
                        "fit.result",
                        "garment",
                        "hem.plan",
                        "lay",
                        "lay.design",
                        "lay.plan",
                        "measure",
                        "pattern",
                        "pattern.piece",
                        "prepare.heat",
                        "shape",
                        "task",
                        "textile",
                        "textile.fibre",
                        "topic",
                        "trim.bound",
                        "trim.fused",
                        "trim.gathered",
                        "trim.guide",
                        "trim.plan",
                        "trim.strip",
                        "wearer",
                        "worksheet"));
        rooms.put(
                "prepare.due",
                Set.of(
                        "cloth.yields",
                        "file.value",
                        "garment",
                        "measure",
                        "prepare.heat",
                        "prepare.wash",
                        "textile",
                        "textile.fibre",
                        "textile.state",
                        "worksheet"));
        rooms.put(
                "prepare.step",
                Set.of(
                        "cloth.yields",
                        "measure",
                        "prepare.due",
                        "prepare.heat",
                        "task",
                        "textile",
                        "textile.fibre",
                        "textile.state",
                        "worksheet"));
        rooms.put(
                "prepare",
                with(
                        Set.of(),
                        "block",
                        "cloth",
                        "cloth.yields",
                        "figure",
                        "file",
                        "file.value",
                        "lay.plan",
                        "measure",
                        "prepare.due",
                        "prepare.heat",
                        "prepare.step",
                        "prepare.wash",
                        "task",
                        "textile",
                        "textile.state",
                        "topic",
                        "worksheet"));
        rooms.put(
                "prepare.due",
                Set.of(
                        "cloth.yields",
                        "file.value",
                        "garment",
                        "measure",
                        "prepare.heat",
                        "prepare.wash",
                        "textile",
                        "textile.fibre",
                        "textile.state",
                        "worksheet"));
        rooms.put(
                "prepare.step",
                Set.of(
                        "cloth.yields",
                        "measure",
                        "prepare.due",
                        "prepare.heat",
                        "task",
                        "textile",
                        "textile.fibre",
                        "textile.state",
                        "worksheet"));
        rooms.put(
                "prepare",
                with(
                        Set.of(),
                        "block",
                        "cloth",
                        "cloth.yields",
                        "figure",
                        "file",
                        "file.value",
                        "lay.plan",
                        "measure",
                        "prepare.due",
                        "prepare.heat",
                        "prepare.step",
                        "prepare.wash",
                        "task",
                        "textile",
                        "textile.state",
                        "topic",
                        "worksheet"));
        rooms.put(
                "work",
                with(
                        Set.of(),
                        "bleach",
                        "block",
                        "closure",
                        "cutting",
                        "dye",
                        "figure",
                        "file",
                        "file.source",
                        "file.value",
                        "fit",
                        "fit.result",
                        "hem",
                        "lay",
                        "measure",
                        "pattern",
                        "prepare",
                        "sewing",
                        "supply",
                        "task",
                        "topic",
                        "trim",
                        "wearer",
                        "work.kind",
                        "work.order",
                        "work.plan",
                        "worksheet"));
        rooms.put(
                "project",
                with(
                        Set.of(),
                        "bleach",
                        "closure",
                        "closure.placket",
                        "cloth",
                        "cutting",
                        "disk",
                        "draw.paper",
                        "dye",
                        "effect",
                        "file",
                        "file.form",
                        "file.source",
                        "file.value",
                        "fit",
                        "fit.stretch",
                        "hem",
                        "lay",
                        "lay.kept",
                        "lay.plan",
                        "measure",
                        "pattern",
                        "prepare",
                        "safety",
                        "sewing",
                        "supply",
                        "topic",
                        "trim",
                        "wearer",
                        "work",
                        "worksheet"));
        rooms.put(
                "notebook.paper",
                Set.of(
                        "block",
                        "draw",
                        "draw.paper",
                        "draw.sheet",
                        "measure",
                        "project",
                        "worksheet"));
        rooms.put(
                "notebook",
                with(
                        Set.of(),
                        "block",
                        "disk",
                        "draw",
                        "draw.paper",
                        "draw.pdf",
                        "draw.sheet",
                        "draw.svg",
                        "fault",
                        "figure",
                        "file",
                        "file.json",
                        "file.source",
                        "measure",
                        "notebook.paper",
                        "notebook.site",
                        "parallel",
                        "project",
                        "shape",
                        "worksheet"));
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
