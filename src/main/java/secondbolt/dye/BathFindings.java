package secondbolt.dye;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.bath.Load;
import secondbolt.dye.bath.PieceParts;
import secondbolt.dye.guide.DyeOrder;
import secondbolt.dye.guide.DyePrint;
import secondbolt.dye.plan.Depth;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.plan.DyePlan;
import secondbolt.dye.recipe.RecipeLine;
import secondbolt.dye.recipe.Substance;
import secondbolt.garment.Role;
import secondbolt.measure.Mass;
import secondbolt.measure.Tape;
import secondbolt.measure.Volume;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Sentence;
import secondbolt.worksheet.Subject;

/**
 * What a maker should know of the baths of a colour.
 *
 * @param batch the colour
 * @param pieces of the pattern, if there is one
 * @param print puts amounts into words
 */
record BathFindings(DyeBatch batch, PieceParts pieces, DyePrint print) {
    private static final Mass HALF_POUND = Mass.parse("8 oz").orThrow();

    List<Finding> all() {
        List<Finding> all = new ArrayList<>();
        if (batch.mayBegin()) {
            apart().ifPresent(all::add);
            several().ifPresent(all::add);
            heavy().ifPresent(all::add);
            differing().ifPresent(all::add);
            packets().ifPresent(all::add);
            if (!batch.isOf(DyeClass.DISPERSE)) {
                all.add(pale());
            }
        }
        all.addAll(LeafletFindings.of(batch, print));
        all.addAll(new LeafletClassFindings(batch, print).all());
        when().ifPresent(all::add);
        return all;
    }

    private Optional<Finding> apart() {
        if (batch.splitSeams().isEmpty()) {
            return Optional.empty();
        }
        String seams =
                batch.splitSeams().stream()
                        .map(PieceParts.Pair::words)
                        .collect(Collectors.joining("; "));
        return Optional.of(
                colour(
                        "dye-baths-meet-in-a-seam",
                        Level.WARNING,
                        "By the plan of cutting, pieces from cloths of different baths meet in a seam"
                                + " that is seen ("
                                + seams
                                + "), and no two baths come out quite alike.",
                        "Take one bath for all, as in `vessel: "
                                + enough()
                                + "` under `dye`, or keep the pieces of a seam on one cloth."));
    }

    private String enough() {
        Volume all = batch.bathing().bath().orElse(Volume.LITRE);
        return print.tape() == Tape.CENTIMETRE
                ? all.of(Volume.LITRE).roundedUp() + " l"
                : all.of(Volume.parse("1 gal").orThrow()).roundedUp() + " gal";
    }

    private Optional<Finding> several() {
        List<Load> loads = batch.bathing().loads();
        if (loads.size() < 2) {
            return Optional.empty();
        }
        return Optional.of(
                colour(
                        "dye-several-baths",
                        Level.CAUTION,
                        "The vessel does not hold all at once: "
                                + loads.size()
                                + " baths, as even by dry weight as the cloths allow.",
                        "Weigh all the dye first, as one stock, and share it out by what each load"
                                + " weighs; same water, heat and times (common practice, no"
                                + " source)."));
    }

    private Optional<Finding> heavy() {
        return batch.bathing().loads().stream()
                .max(Comparator.comparing(Load::weighs))
                .filter(load -> load.weighs().compareTo(DyeOrder.HEAVY) > 0)
                .map(
                        load ->
                                colour(
                                        "dye-bath-heavy",
                                        Level.CAUTION,
                                        "Bath and cloth together weigh about "
                                                + print.heavy(load.weighs())
                                                + ".",
                                        "Do not carry it: fill it where it stands, let it cool, and"
                                                + " ladle it out."));
    }

    /** Of what sources name different amounts. */
    private Optional<Finding> differing() {
        List<String> differ =
                batch.recipe().stream()
                        .flatMap(
                                recipe ->
                                        List.of(Substance.values()).stream()
                                                .filter(recipe::isDisputed))
                        .map(what -> what.word() + " (" + sides(what) + ")")
                        .toList();
        return differ.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        colour(
                                "dye-sources-differ",
                                Level.NOTE,
                                "Published amounts differ for "
                                        + String.join("; ", differ)
                                        + "; none is an average.",
                                "Your packet's leaflet comes first: write its figures under"
                                        + " `leaflet`; else try both on a strip."));
    }

    private String sides(Substance what) {
        return batch.recipe().orElseThrow().of(what).stream()
                .map(RecipeLine::rate)
                .collect(Collectors.joining(" against "));
    }

    /** A packet for a pound of cloth makes no black of a pound. */
    private Optional<Finding> packets() {
        boolean isHers =
                batch.plan()
                        .packet()
                        .filter(packet -> packet.dyes().compareTo(HALF_POUND) > 0)
                        .isPresent();
        boolean isDeep = batch.plan().dye().depth().filter(Depth::isDeep).isPresent();
        return batch.packets()
                .filter(packets -> isHers && isDeep && batch.isOf(DyeClass.BLEND))
                .map(
                        packets ->
                                colour(
                                        "dye-packets-for-black",
                                        Level.CAUTION,
                                        "By your packet it takes "
                                                + packets.words()
                                                + ", which is for the colour that the packet shows. A"
                                                + " packet to a pound makes pale to medium, and black"
                                                + " takes one to a half or a quarter pound (a dyer's"
                                                + " reference site, answers on household dye).",
                                        "Look what the packet asks for a deep colour, write that, as in"
                                                + " `packet: {dyes: "
                                                + (print.tape() == Tape.CENTIMETRE
                                                        ? "125 g"
                                                        : "4 oz")
                                                + "}`, and let the test strip decide."));
    }

    private Finding pale() {
        return colour(
                "dye-leaves-polyester-pale",
                Level.NOTE,
                "Polyester thread, labels, elastic, zip tape and buttons keep their colour in this"
                        + " dye (a theatre costume dyer's answer).",
                "Buy what is sewn on afterwards, to match the dry cloth.");
    }

    private Optional<Finding> when() {
        return switch (batch.plan().whenOrBefore()) {
            case BEFORE_CUTTING -> Optional.empty();
            case AFTER_CUTTING ->
                    Optional.of(
                            colour(
                                    "dye-after-cutting",
                                    Level.WARNING,
                                    "Cut pieces fray in the bath and draw in by what the wash has not"
                                            + " taken yet, each its own way.",
                                    "Dye first, `when: before cutting`; else neaten the edges, and"
                                            + " measure the pieces again before they are sewn."));
            case AFTER_SEWING -> Optional.of(sewn());
        };
    }

    private Finding sewn() {
        String fused =
                pieces.hasAnyOf(Role.INTERFACING)
                        ? " Its interfacing, if it is fused, comes off or bubbles in a hot bath."
                        : "";
        return colour(
                "dye-after-sewing",
                Level.WARNING,
                Sentence.capital(
                                "a sewn garment takes dye unevenly in its seams; polyester thread stays"
                                        + " pale, elastic and a zip suffer from heat.")
                        + fused,
                "Dye first, `when: before cutting`. It may be done afterwards if it is sewn with"
                        + " thread of the fibre that takes, nothing is fused and the cloth has shrunk"
                        + " all it will.");
    }

    private Finding colour(String code, Level level, String text, String remedy) {
        return new Finding(code, new Subject.Colour(name(batch.plan())), level, text, remedy);
    }

    private static String name(DyePlan plan) {
        return plan.name();
    }
}
