package secondbolt.hem;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.file.value.Answer;
import secondbolt.garment.Role;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.turned.HeavyCloth;
import secondbolt.measure.Length;
import secondbolt.textile.Cloth;
import secondbolt.textile.fibre.FibreKind;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;

/** Whether a hem suits the cloth it is turned of. */
final class HemClothFindings {
    /**
     * Source: T. Johnson, It's Fun to Sew a Cotton School Dress, 4-H bulletin L-87: heavy wool or
     * cotton 2 in or less.
     */
    private static final Length DEEPEST_HEAVY = Length.ofInches(2, 1);

    private final AboutHem about;
    private final Hem hem;

    private HemClothFindings(AboutHem about) {
        this.about = about;
        this.hem = about.result().hem();
    }

    /**
     * The findings for each cloth the hem's pieces are cut of.
     *
     * @param cloths by name
     */
    static Stream<Finding> of(AboutHem about, Map<String, Cloth> cloths) {
        HemClothFindings all = new HemClothFindings(about);
        return cloths.entrySet().stream()
                .filter(cloth -> all.isCutOf(cloth.getValue()))
                .flatMap(
                        cloth ->
                                Stream.of(
                                        all.ridge(cloth.getKey(), cloth.getValue()),
                                        all.deep(cloth.getKey(), cloth.getValue())))
                .flatMap(Optional::stream);
    }

    private Optional<Finding> ridge(String name, Cloth cloth) {
        boolean twice = hem.turned() == Hem.Turned.TWICE || hem.turned() == Hem.Turned.NARROW;
        boolean woolly = isWoolly(cloth);
        if (!twice || (!woolly && !HeavyCloth.is(cloth))) {
            return Optional.empty();
        }
        return Optional.of(
                about.finding(
                        "hem-ridge",
                        Level.CAUTION,
                        "Turned twice, "
                                + name
                                + " makes a thick ridge: "
                                + (woolly
                                        ? "hems of wool flannel are not folded twice (Watson,"
                                                + " Textiles and Clothing, 1907)."
                                        : "it is heavy."),
                        "Bind or overcast the raw edge and turn it once: `turned: blind`."));
    }

    private Optional<Finding> deep(String name, Cloth cloth) {
        boolean deep = hem.depth().filter(DEEPEST_HEAVY::isShorterThan).isPresent();
        if (!deep || !HeavyCloth.is(cloth)) {
            return Optional.empty();
        }
        return Optional.of(
                about.finding(
                        "hem-deep-on-heavy",
                        Level.NOTE,
                        name + " is heavy, and the hem deep.",
                        about.tape().print(DEEPEST_HEAVY)
                                + " or less is usual for heavy wool or cotton (4-H bulletin"
                                + " L-87)."));
    }

    private boolean isCutOf(Cloth cloth) {
        Role role = cloth.textile().roleOrMain();
        return about.result().edges().stream().anyMatch(e -> e.piece().copies(role) > 0);
    }

    private static boolean isWoolly(Cloth cloth) {
        return cloth.textile()
                .fibre()
                .flatMap(Answer::toOptional)
                .filter(f -> f.hasAny(kind -> kind.family() == FibreKind.Family.HAIR))
                .isPresent();
    }
}
