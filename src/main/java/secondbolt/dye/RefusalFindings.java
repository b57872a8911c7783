package secondbolt.dye;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.dye.bath.Bathing;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.bath.DyeBatch.Refusal;
import secondbolt.dye.bath.DyedCloth;
import secondbolt.dye.guide.DyePrint;
import secondbolt.dye.plan.Depth;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.plan.DyePlan;
import secondbolt.dye.take.ClothUptake;
import secondbolt.dye.take.Uptake;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.measure.Volume;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Sentence;
import secondbolt.worksheet.Subject;

/**
 * Why a colour is not dyed as it is written, with what would take instead.
 *
 * @param batch the colour
 * @param print puts amounts into words
 */
record RefusalFindings(DyeBatch batch, DyePrint print) {
    static final String VAT =
            "A vat is caustic and its reducing powder heats itself when damp, so no recipe for one"
                    + " stands here: follow the leaflet of your kit, gloves and goggles on, windows"
                    + " open, all acids and bleaches out of the room. The cloth is dipped, aired and"
                    + " dipped again; the air fixes the colour.";

    private static final String NO_DYE =
            "No dye for the home takes on it: keep its colour, and write `dye: none` if nothing else"
                    + " is dyed.";

    List<Finding> all() {
        List<Finding> all = new ArrayList<>();
        batch.cloths().forEach(cloth -> all.addAll(of(cloth)));
        if (batch.refusals().contains(Refusal.BY_LEAFLET_ONLY)) {
            all.add(byLeaflet());
        }
        if (batch.refusals().contains(Refusal.FRONT_LOADER)) {
            all.add(frontLoader());
        }
        batch.bathing().tooLarge().map(this::vessel).ifPresent(all::add);
        return all;
    }

    private String dye() {
        return batch.plan().dye().kind().map(DyeClass::dye).orElse("the dye");
    }

    private List<Finding> of(DyedCloth cloth) {
        List<Finding> all = new ArrayList<>();
        if (cloth.uptake().isEmpty()) {
            return all;
        }
        ClothUptake uptake = cloth.uptake().get();
        if (uptake.harms()) {
            all.add(
                    stop(
                            "dye-harms",
                            cloth,
                            Sentence.capital(dye())
                                    + " harms a fibre of "
                                    + cloth.name()
                                    + ": "
                                    + uptake.why(u -> u.grade() == Uptake.Grade.HARMS)
                                    + ".",
                            instead(uptake)));
        } else if (uptake.takesNowhere()) {
            all.add(
                    stop(
                            "dye-takes-nowhere",
                            cloth,
                            Sentence.capital(dye())
                                    + " does not colour "
                                    + cloth.name()
                                    + ": "
                                    + uptake.why(u -> true)
                                    + ".",
                            instead(uptake)));
        } else {
            neverDark(cloth, uptake).ifPresent(all::add);
            polyester(cloth).ifPresent(all::add);
        }
        return all;
    }

    private static String instead(ClothUptake uptake) {
        Optional<DyeClass> better = ClothUptake.better(uptake.fibre());
        if (better.isEmpty()) {
            return NO_DYE;
        }
        ClothUptake other = ClothUptake.of(better.get(), uptake.fibre());
        return "Write `class: "
                + better.get().word()
                + "` under `dye`, and get such a dye: it takes on "
                + (other.taking().equals(Share.WHOLE)
                        ? "all of it"
                        : other.taking().percent(1) + " of it")
                + (other.hasCondition()
                        ? ", under a condition: " + other.why(u -> !u.words().isEmpty())
                        : "")
                + ".";
    }

    private Optional<Finding> neverDark(DyedCloth cloth, ClothUptake uptake) {
        boolean isDeep = batch.plan().dye().depth().filter(Depth::isDeep).isPresent();
        return isDeep && uptake.seen().isNeverDark()
                ? Optional.of(
                        stop(
                                "dye-never-dark",
                                cloth,
                                "Only "
                                        + uptake.taking().percent(1)
                                        + " of "
                                        + cloth.name()
                                        + " takes this dye, and the rest stays as it is: it comes out "
                                        + uptake.seen().words()
                                        + ", never "
                                        + batch.plan().dye().depth().map(Depth::word).orElse("")
                                        + ", however much dye goes in (common practice, no source).",
                                "Write `depth: pale` under `dye` if that will do, or keep its"
                                        + " colour."))
                : Optional.empty();
    }

    private Optional<Finding> polyester(DyedCloth cloth) {
        return batch.refusals().contains(Refusal.NO_POLYESTER_PACKET)
                ? Optional.of(
                        stop(
                                "dye-polyester-by-the-stove",
                                cloth,
                                "Disperse dye takes on "
                                        + cloth.name()
                                        + " only with what mills have, pressure, dry heat or a"
                                        + " carrier that irritates the skin; at home only a packet"
                                        + " made for this fibre does it, hot, by its own leaflet.",
                                "Get such a packet and write what it is for, as in `packet: {dyes:"
                                        + " 250 g}` under `dye`; else keep the colour."))
                : Optional.empty();
    }

    private Finding byLeaflet() {
        return batch.isOf(DyeClass.VAT)
                ? colour("dye-vat-by-its-kit", Level.CAUTION, VAT, "")
                : colour(
                        "dye-by-its-leaflet-only",
                        Level.CAUTION,
                        "No recipe for basic dye at home was found, so none is told.",
                        "Write what your packet is for, as in `packet: {dyes: 250 g}` under `dye`,"
                                + " and follow its leaflet.");
    }

    private Finding frontLoader() {
        return stop(
                "dye-front-loader",
                batch.plan().name()
                        + ": a front loader takes 3 to 8 times the cloth's weight in"
                        + " water, as it wills, so no recipe by the litre carries over to it"
                        + " (consumer figures on machines, copied; derived).",
                "Dye in a vessel, or use only a packet whose leaflet names such a machine, and write"
                        + " that: `packet: {dyes: 250 g, for machine: yes}` under `dye`.");
    }

    private Finding vessel(Bathing.TooLarge tooLarge) {
        return stop(
                "dye-vessel-too-small",
                Sentence.capital(tooLarge.part().name())
                        + " weighs "
                        + print.both(tooLarge.part().dry())
                        + " dry and must lie in one bath, which at "
                        + times(batch.bathing().ratio())
                        + " times its weight is "
                        + print.both(tooLarge.needs())
                        + ": the vessel that is written is smaller, and cramped cloth comes out in"
                        + " patches.",
                larger(tooLarge) + "dye it in smaller parts that meet in no seam that is seen.");
    }

    private String larger(Bathing.TooLarge tooLarge) {
        return Volume.parse(enough(tooLarge)).orThrow().compareTo(DyePlan.Bath.LARGEST) > 0
                ? "No vessel of a home takes that: keep its colour, or "
                : "Take a larger one, as in `vessel: " + enough(tooLarge) + "` under `dye`, or ";
    }

    /** A whole number of times: {@code 20}. */
    static int times(Share ratio) {
        return ratio.roundedUp();
    }

    /** A volume that is enough for the largest part, whole litres or half gallons, rounded up. */
    private String enough(Bathing.TooLarge tooLarge) {
        if (print.tape() == Tape.CENTIMETRE) {
            return tooLarge.needs().of(Volume.LITRE).roundedUp() + " l";
        }
        int halves = tooLarge.needs().of(Volume.parse("0.5 gal").orThrow()).roundedUp();
        return halves / 2 + (halves % 2 == 0 ? "" : ".5") + " gal";
    }

    private Finding stop(String code, DyedCloth cloth, String text, String remedy) {
        return new Finding(code, cloth.cloth().subject(), Level.STOP, text, remedy);
    }

    private Finding stop(String code, String text, String remedy) {
        Subject about =
                batch.cloths().stream()
                        .findFirst()
                        .<Subject>map(cloth -> cloth.cloth().subject())
                        .orElse(new Subject.Colour(batch.plan().name()));
        return new Finding(code, about, Level.STOP, text, remedy);
    }

    private Finding colour(String code, Level level, String text, String remedy) {
        return new Finding(code, new Subject.Colour(batch.plan().name()), level, text, remedy);
    }
}
