package secondbolt.bleach;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.bleach.plan.DyedWith;
import secondbolt.bleach.recipe.RemoverBath;
import secondbolt.bleach.recipe.Sources;
import secondbolt.bleach.recipe.Treatment;
import secondbolt.measure.Tape;
import secondbolt.measure.Volume;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/**
 * What to look twice at before the colour of a cloth is taken out.
 *
 * @param treatment of the cloth, with a remover, not refused
 * @param tape to print with
 */
record RemoverFindings(Treatment treatment, Tape tape) {
    /** What the key of the vessel takes at most. */
    private static final int LARGEST_VESSEL_L = 200;

    List<Finding> all() {
        return Stream.of(nothingToTake(), hard(), untold(), vessel())
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Finding> nothingToTake() {
        return BleachWork.hasNoColour(treatment)
                ? Optional.of(
                        finding(
                                "remover-without-dye",
                                Level.CAUTION,
                                treatment.name()
                                        + " was never dyed: a colour remover takes out dye, and"
                                        + " hardly any stain.",
                                "Yellowed cloth is whitened with a bleach that its fibres bear; the"
                                        + " page compares them."))
                : Optional.empty();
    }

    private Optional<Finding> hard() {
        return treatment.plan().evidence().dyedWith().flatMap(this::hard);
    }

    private Optional<Finding> hard(DyedWith dye) {
        return switch (dye) {
            case REACTIVE ->
                    Optional.of(
                            hard(
                                    "reactive dye is bound to the fibre, comes out badly, and"
                                            + " stripping it costs strength.",
                                    Sources.STRIPPING));
            case DISPERSE ->
                    Optional.of(hard("disperse dye in polyester hardly changes.", Sources.MEMORY));
            case VAT ->
                    Optional.of(
                            hard(
                                    "vat dye is only dissolved, and turns back as it meets air.",
                                    Sources.MEMORY));
            case PIGMENT ->
                    Optional.of(
                            hard(
                                    "a pigment is glued on, and a remover does not take it.",
                                    Sources.MEMORY));
            case DIRECT, ACID -> Optional.empty();
        };
    }

    private Finding hard(String why, String source) {
        return finding(
                        "remover-dye-stays",
                        Level.WARNING,
                        "The colour of " + treatment.name() + " will hardly go: " + why,
                        "Put an offcut through the whole of it first; or dye darker over what there"
                                + " is.")
                .citing(List.of(source));
    }

    private Optional<Finding> untold() {
        return treatment.plan().evidence().dyedWith().isPresent()
                        || BleachWork.hasNoColour(treatment)
                ? Optional.empty()
                : Optional.of(
                        finding(
                                        "remover-dye-untold",
                                        Level.NOTE,
                                        "What "
                                                + treatment.name()
                                                + " was dyed with is not told; reactive and disperse"
                                                + " dyes hardly come out.",
                                        "An offcut put through the whole of it tells; the class, if"
                                                + " you know it, goes under `dyed with`.")
                                .citing(List.of(Sources.STRIPPING)));
    }

    private Optional<Finding> vessel() {
        Optional<Volume> vessel = treatment.plan().bath().vessel();
        return treatment
                .bath()
                .filter(bath -> bath.loads() > 1)
                .flatMap(bath -> vessel.map(v -> small(bath, v)));
    }

    private Finding small(RemoverBath bath, Volume vessel) {
        int litres = bath.water().of(Volume.LITRE).roundedUp();
        String larger =
                litres > LARGEST_VESSEL_L
                        ? "No vessel at home is large enough: cut"
                        : "Take one that holds all of it, `vessel: "
                                + litres
                                + " l` under `bleach`; or cut";
        return finding(
                        "remover-vessel-small",
                        Level.WARNING,
                        treatment.name()
                                + " needs "
                                + tape.print(bath.water())
                                + " of bath, and the vessel takes "
                                + tape.print(vessel)
                                + ", enough for "
                                + tape.print(RemoverBath.most(vessel))
                                + " of cloth: crammed in, it comes out in patches.",
                        larger
                                + " the cloth first and treat it in "
                                + bath.loads()
                                + " equal loads by weight, pieces that meet in a seam in the same.")
                .citing(List.of(Sources.REMOVER_SHEET));
    }

    private Finding finding(String code, Level level, String text, String remedy) {
        return new Finding(code, new Subject.Cloth(treatment.name()), level, text, remedy);
    }
}
