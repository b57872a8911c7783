package secondbolt.prepare.due;

import java.util.Optional;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.file.value.AcrossAlong;
import secondbolt.file.value.Answer;
import secondbolt.garment.Role;
import secondbolt.measure.Share;
import secondbolt.prepare.heat.Heat;
import secondbolt.prepare.wash.Washes;
import secondbolt.textile.Prewash;
import secondbolt.textile.Survey;
import secondbolt.textile.fibre.Fibre;
import secondbolt.textile.fibre.FibreKind;
import secondbolt.textile.state.CameWith;
import secondbolt.textile.state.State;
import secondbolt.worksheet.Subject;

/**
 * One cloth, and what is still to be done to it before it is cut.
 *
 * @param cloth what it yields
 * @param heat how hot it may get
 * @param washes what its washes did, if a square was marked on it
 * @param isCut whether a piece is cut of it already, so that nothing is to be done any more
 */
public record PreparedCloth(ClothResult cloth, Heat heat, Optional<Washes> washes, boolean isCut) {
    /** A cloth that has drawn in by this much in a wash has felted, if it is of wool. */
    private static final Share FELTED = Share.ofPercent(90);

    /** Works it out. */
    public static PreparedCloth of(ClothResult cloth, boolean isCut) {
        Optional<Washes> washes =
                cloth.cloth()
                        .prewash()
                        .filter(Prewash.Marked.class::isInstance)
                        .map(marked -> Washes.of((Prewash.Marked) marked));
        return new PreparedCloth(
                cloth, Heat.of(fibre(cloth), cloth.cloth().state().label()), washes, isCut);
    }

    private static Optional<Fibre> fibre(ClothResult cloth) {
        return cloth.cloth().textile().fibre().flatMap(Answer::toOptional);
    }

    /** The maker's name for it. */
    public String name() {
        return cloth.name();
    }

    /** The cloth as findings and sheets speak of it. */
    public Subject.Cloth subject() {
        return cloth.subject();
    }

    /** In what state it came. */
    public State state() {
        return cloth.cloth().state();
    }

    /** What it is made of, if that is known. */
    public Optional<Fibre> fibre() {
        return fibre(cloth);
    }

    /**
     * Whether its maker's leaflet says all of how it is washed and pressed: an iron or a hot wash
     * would set the glue of interfacing.
     */
    public boolean isLeftToItsLeaflet() {
        return cloth.cloth().textile().roleOrMain() == Role.INTERFACING;
    }

    /** Whether it is to be pressed before it is laid, if it is not cut yet. */
    public boolean isPressed() {
        return !isCut && !isLeftToItsLeaflet() && heat.iron().isPresent();
    }

    /** Whether wool or other hair is in it, which felts. */
    public boolean felts() {
        return fibre().filter(f -> f.hasAny(k -> k.family() == FibreKind.Family.HAIR)).isPresent();
    }

    /** Whether that came with it and is still to be dealt with. */
    public boolean has(CameWith thing) {
        return !isCut && state().has(thing);
    }

    /** Whether it is told that it has not been washed since it came, in so many words. */
    private boolean isUnwashed() {
        boolean isSaid =
                cloth.cloth().prewash().filter(Prewash.NotKnown.class::isInstance).isPresent();
        return isSaid || washes.filter(w -> !w.isMeasured()).isPresent();
    }

    /** Whether a first wash is due, whatever its label says of it. */
    public boolean isWashOpen() {
        return !isCut && !isLeftToItsLeaflet() && isUnwashed();
    }

    /** Whether it must not be washed, though a wash is due. */
    public boolean isWashForbidden() {
        return isWashOpen() && heat.wash().isEmpty();
    }

    /** Whether it is to be washed for the first time, or washed free of softener. */
    public boolean isWashDue() {
        return heat.wash().isPresent() && (isWashOpen() || has(CameWith.SOFTENER));
    }

    /**
     * Whether its last wash still drew it in, so that it is to be washed once more. Wool that has
     * begun to felt only felts on.
     */
    public boolean isWashDueAgain() {
        return !isCut
                && !isLeftToItsLeaflet()
                && !isFelted()
                && heat.wash().isPresent()
                && isMoving();
    }

    /** Whether its last wash changed it more than the mark. */
    public boolean isMoving() {
        return washes.filter(Washes::isMoving).isPresent();
    }

    /** Whether a square is to be marked on it before it is washed. */
    public boolean isSquareDue() {
        return isWashOpen() && heat.wash().isPresent() && !isMarked();
    }

    private boolean isMarked() {
        return cloth.cloth()
                .prewash()
                .map(Prewash::square)
                .filter(square -> square.across().isPresent() || square.along().isPresent())
                .isPresent();
    }

    /** Whether it is to get wet. */
    public boolean isWetDue() {
        return isWashDue() || isWashDueAgain();
    }

    /** Whether its mass is open, so that it is to be weighed. */
    public boolean isWeighingDue() {
        return !isCut && cloth.heaviness().mass().isEmpty();
    }

    /** Whether it is to be looked over, once more or for the first time. */
    public boolean isSurveyDue() {
        return !isCut && (isWetDue() || !isSurveyedAfterAWash());
    }

    /** Whether it was looked over after a wash. */
    public boolean isSurveyedAfterAWash() {
        return cloth.cloth()
                .condition()
                .survey()
                .flatMap(Survey::when)
                .filter(when -> when == Survey.When.AFTER)
                .isPresent();
    }

    /** Whether nothing is told of a wash. */
    public boolean isWashUntold() {
        return !isCut && cloth.cloth().prewash().isEmpty();
    }

    /** Whether it is of wool that drew in as only felted wool does. */
    public boolean isFelted() {
        AcrossAlong<Optional<Share>> left = cloth.left();
        return felts()
                && (left.across().filter(s -> s.compareTo(FELTED) <= 0).isPresent()
                        || left.along().filter(s -> s.compareTo(FELTED) <= 0).isPresent());
    }
}
