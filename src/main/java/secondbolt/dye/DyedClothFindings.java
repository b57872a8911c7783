package secondbolt.dye;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.bath.DyedCloth;
import secondbolt.dye.take.ClothUptake;
import secondbolt.dye.take.SeenColour;
import secondbolt.textile.extent.Flaw;
import secondbolt.textile.fibre.FibreKind;
import secondbolt.textile.state.Finish;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Sentence;

/**
 * What a maker should know of a cloth before it is dyed.
 *
 * @param batch the colour
 * @param cloth one of its cloths
 */
record DyedClothFindings(DyeBatch batch, DyedCloth cloth) {
    private static final int MOST_NAMED = 5;

    /** No colour, as makers of several languages say it. */
    private static final List<String> WHITE =
            List.of(
                    "white",
                    "natural",
                    "undyed",
                    "ecru",
                    "écru",
                    "weiß",
                    "weiss",
                    "natur",
                    "roh",
                    "ungefärbt",
                    "blanc",
                    "blanche",
                    "naturel",
                    "blanco",
                    "bianco",
                    "wit",
                    "白");

    static List<Finding> of(DyeBatch batch) {
        return batch.cloths().stream()
                .flatMap(cloth -> new DyedClothFindings(batch, cloth).all())
                .toList();
    }

    private Stream<Finding> all() {
        List<Finding> all = new ArrayList<>();
        cloth.uptake()
                .filter(uptake -> !uptake.harms() && !uptake.takesNowhere())
                .ifPresent(uptake -> all.addAll(uptakes(uptake)));
        if (cloth.isGuessed()) {
            all.add(
                    finding(
                            "dye-fibre-guessed",
                            Level.CAUTION,
                            "What "
                                    + cloth.name()
                                    + " is made of is a guess, and the dye goes by it.",
                            "The test strip decides: dye a strip of it through the whole recipe"
                                    + " before the cloth goes in."));
        }
        finish().ifPresent(all::add);
        stains().ifPresent(all::add);
        existing().ifPresent(all::add);
        return all.stream();
    }

    private List<Finding> uptakes(ClothUptake uptake) {
        List<Finding> all = new ArrayList<>();
        if (uptake.hasCondition()) {
            all.add(
                    finding(
                            "dye-takes-partly",
                            Level.CAUTION,
                            "On "
                                    + cloth.name()
                                    + " it holds partly, or under a condition: "
                                    + uptake.why(u -> !u.words().isEmpty() && u.isColoured())
                                    + ".",
                            "Look whether your packet names the fibre, and trust the test strip."));
        }
        if (uptake.fibre().hasAny(kind -> kind.family() == FibreKind.Family.ELASTANE)) {
            all.add(
                    finding(
                            "dye-heat-and-elastane",
                            Level.CAUTION,
                            Sentence.capital(cloth.name())
                                    + " has elastane in it, which heat weakens (from memory).",
                            "Prefer a cool bath, such as reactive dye in cotton; stay below the heat"
                                    + " of its care label."));
        }
        lighter(uptake).ifPresent(all::add);
        return all;
    }

    private Optional<Finding> lighter(ClothUptake uptake) {
        SeenColour seen = uptake.seen();
        if (seen == SeenColour.FULL) {
            return Optional.empty();
        }
        String text =
                uptake.taking().percent(1)
                        + " of "
                        + cloth.name()
                        + " takes this dye and the rest stays as it is, so it comes out "
                        + seen.words()
                        + " (common practice, no source); the dye is weighed for the fibre that"
                        + " takes, not for the cloth.";
        return Optional.of(
                seen == SeenColour.TINT
                        ? finding(
                                "dye-tint-only",
                                Level.WARNING,
                                text,
                                "Better leave it undyed, or use it for what may be pale and"
                                        + " uneven.")
                        : finding(
                                "dye-blend-lighter",
                                Level.CAUTION,
                                text,
                                "Judge by the test strip, dry."));
    }

    /** Flaws keep off seen pieces in the plan of cutting, but for those good enough for hidden. */
    private Optional<Finding> stains() {
        List<String> flaws =
                cloth.cloth().cloth().condition().flaws().stream()
                        .filter(flaw -> flaw.kind() != Flaw.Kind.FEATURE)
                        .map(Flaw::what)
                        .distinct()
                        .toList();
        if (flaws.isEmpty()) {
            return Optional.empty();
        }
        String named = String.join(", ", flaws.subList(0, Math.min(MOST_NAMED, flaws.size())));
        boolean isHidden =
                cloth.cloth().cloth().condition().flaws().stream()
                        .anyMatch(flaw -> flaw.kind() == Flaw.Kind.HIDDEN_USE);
        return Optional.of(
                finding(
                        "dye-hides-no-stain",
                        Level.CAUTION,
                        "Dye hides no flaw of "
                                + cloth.name()
                                + " ("
                                + named
                                + (flaws.size() > MOST_NAMED ? ", …" : "")
                                + "): stains and old finishes keep it off, faded and bleached"
                                + " places take more, mends show (a dyer's reference site; F. Beech,"
                                + " 1901).",
                        (isHidden
                                        ? "Places good enough for hidden pieces stay so, and no seen"
                                                + " piece may lie there. "
                                        : "")
                                + "Mark them with thread before the bath, and look the cloth over"
                                + " again when it is dry."));
    }

    private Optional<Finding> finish() {
        List<String> keeping =
                cloth.cloth().cloth().state().finishes().stream()
                        .filter(finish -> finish != Finish.STARCH)
                        .map(Finish::word)
                        .toList();
        return keeping.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        finding(
                                "dye-finish-keeps-off",
                                Level.CAUTION,
                                "The finish of "
                                        + cloth.name()
                                        + " ("
                                        + String.join(", ", keeping)
                                        + ") may keep dye off: such cloth can take poorly or in"
                                        + " patches (a dyer's reference site; a public sheet on dyeing"
                                        + " polyester and cotton), and no finish is sure to outlast"
                                        + " the bath.",
                                "No stripping of a finish is for homes: put a strip through the whole"
                                        + " recipe, and if it stays pale, keep the colour."));
    }

    private Optional<Finding> existing() {
        Optional<String> over = batch.plan().over();
        if (over.filter(DyedClothFindings::isWhite).isPresent()) {
            return Optional.empty();
        }
        return Optional.of(
                finding(
                        "dye-adds-to-its-colour",
                        over.isPresent() ? Level.CAUTION : Level.NOTE,
                        "Dye adds to the colour that is there, blue on yellow comes out green, and"
                                + " nothing comes out lighter (from memory): "
                                + cloth.name()
                                + over.map(colour -> " is " + colour + " now.")
                                        .orElse(" has a colour that is not told."),
                        over.isPresent()
                                ? "The test strip shows what it comes to."
                                : "If it has none, write `over: white` under `dye`; else its colour,"
                                        + " and trust the test strip."));
    }

    private static boolean isWhite(String colour) {
        return WHITE.contains(colour.strip().toLowerCase(Locale.ROOT));
    }

    private Finding finding(String code, Level level, String text, String remedy) {
        return new Finding(code, cloth.cloth().subject(), level, text, remedy);
    }
}
