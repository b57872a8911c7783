package secondbolt.dye;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.guide.DyePrint;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.plan.Heat;
import secondbolt.dye.plan.Leaflet;
import secondbolt.dye.plan.Rate;
import secondbolt.dye.take.ClothUptake;
import secondbolt.measure.Share;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/**
 * Where the figures of her leaflet are none for the class of dye that she wrote.
 *
 * @param batch the colour
 * @param print puts amounts into words
 */
record LeafletClassFindings(DyeBatch batch, DyePrint print) {
    /** Cool water at least; source: fixing temperatures of reactive dye, from memory. */
    private static final Heat REACTIVE = Heat.ofCelsius(60);

    /** Source: F. Beech, The Dyeing of Cotton Fabrics, 1901: enough for pale shades. */
    private static final Heat DIRECT = Heat.ofCelsius(77);

    /** Source: F. Beech, The Dyeing of Woollen Fabrics, 1902: in at 66 °C, then hotter. */
    private static final Heat ACID = Heat.ofCelsius(66);

    /** Source: F. Beech, 1901, laboratory note: 20 and up; less is our own mark, no source. */
    private static final Share CRAMPED = Share.ofRatio(15, 1);

    private static final String LOOK =
            "Read the leaflet again: correct the figure under `leaflet`, or leave it out there, and the"
                    + " published ones stand in.";

    List<Finding> all() {
        List<Finding> all = new ArrayList<>();
        batch.plan().dye().kind().filter(kind -> hasRecipe()).ifPresent(kind -> of(kind, all));
        cramped().ifPresent(all::add);
        return all;
    }

    private boolean hasRecipe() {
        return batch.recipe().isPresent();
    }

    private void of(DyeClass kind, List<Finding> all) {
        Leaflet leaflet = batch.plan().leaflet();
        switch (kind) {
            case REACTIVE -> {
                if (isNone(leaflet.amounts().soda())) {
                    all.add(
                            against(
                                    "no soda ash",
                                    "reactive dye bonds in alkali only, and washes out again without"
                                            + " it, unless it lies in the packet",
                                    DyeClass.DIRECT));
                }
                if (isSome(leaflet.amounts().acid())) {
                    all.add(
                            against(
                                    "acid",
                                    "reactive dye bonds in alkali, which acid uses up",
                                    DyeClass.ACID));
                }
                leaflet.heat()
                        .filter(heat -> heat.isAbove(REACTIVE))
                        .ifPresent(
                                heat ->
                                        all.add(
                                                against(
                                                        words(heat),
                                                        "reactive dye for the home is fixed at 30 to 60"
                                                                + " °C (86 to 140 °F) (from memory)",
                                                        DyeClass.DIRECT)));
            }
            case DIRECT -> {
                if (isSome(leaflet.amounts().acid())) {
                    all.add(
                            against(
                                    "acid",
                                    "direct dye on plant fibres needs none (F. Beech, 1901)",
                                    DyeClass.ACID));
                }
                cool(leaflet, DIRECT, DyeClass.REACTIVE).ifPresent(all::add);
            }
            case ACID -> {
                if (isNone(leaflet.amounts().acid())) {
                    all.add(
                            against(
                                    "no acid",
                                    "acid dye takes in an acid bath only",
                                    DyeClass.REACTIVE));
                }
                cool(leaflet, ACID, DyeClass.REACTIVE).ifPresent(all::add);
            }
            case BLEND, DISPERSE, VAT, BASIC -> {}
        }
    }

    private Optional<Finding> cool(Leaflet leaflet, Heat least, DyeClass other) {
        return leaflet.heat()
                .filter(least::isAbove)
                .map(
                        heat ->
                                against(
                                        words(heat),
                                        "this dye takes in a hot bath, of "
                                                + words(least)
                                                + " at least (F. Beech, 1901 and 1902)",
                                        other));
    }

    private Optional<Finding> cramped() {
        boolean isInMachine = batch.plan().bath().machine().isPresent();
        return batch.plan()
                .leaflet()
                .ratio()
                .or(() -> batch.plan().bath().ratio())
                .filter(ratio -> !isInMachine && ratio.compareTo(CRAMPED) < 0)
                .map(
                        ratio ->
                                finding(
                                        "dye-bath-cramped",
                                        "A bath of "
                                                + ratio.roundedUp()
                                                + " times the dry cloth's weight leaves it no room to"
                                                + " move, and it comes out in patches; published are"
                                                + " 20 to 30 times for a vessel (dyer's instruction"
                                                + " sheet; F. Beech, 1901).",
                                        "If your leaflet means a machine, follow it there; for a vessel"
                                                + " write `ratio: 20` under "
                                                + where()
                                                + ", and look at what salt and soda"
                                                + " ash by the litre come to."));
    }

    private String where() {
        return batch.plan().leaflet().ratio().isPresent() ? "`leaflet`" : "`dye`";
    }

    private static boolean isNone(Optional<Rate> rate) {
        return rate.filter(Rate::isNothing).isPresent();
    }

    private static boolean isSome(Optional<Rate> rate) {
        return rate.filter(r -> !r.isNothing()).isPresent();
    }

    private String words(Heat heat) {
        return heat.words(print.tape());
    }

    private Finding against(String what, String why, DyeClass other) {
        return finding(
                "dye-leaflet-and-class",
                "The leaflet as it is written has " + what + ", but " + why + ".",
                LOOK + instead(other));
    }

    /** Another class only if it takes on these fibres; a household blend takes on most. */
    private String instead(DyeClass other) {
        return Stream.of(other, DyeClass.BLEND)
                .filter(this::takes)
                .findFirst()
                .map(
                        kind ->
                                " If the packet is of another class, write that, as in `class: "
                                        + kind.word()
                                        + "` under `dye`.")
                .orElse("");
    }

    private boolean takes(DyeClass kind) {
        return batch.uptakes().stream()
                .map(uptake -> ClothUptake.of(kind, uptake.fibre()))
                .noneMatch(uptake -> uptake.harms() || uptake.takesNowhere());
    }

    private Finding finding(String code, String text, String remedy) {
        return new Finding(
                code, new Subject.Colour(batch.plan().name()), Level.WARNING, text, remedy);
    }
}
