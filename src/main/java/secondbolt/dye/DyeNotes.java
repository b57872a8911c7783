package secondbolt.dye;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.bath.DyedCloth;
import secondbolt.dye.bath.PieceParts;
import secondbolt.dye.guide.DyePrint;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.plan.DyePlan;
import secondbolt.dye.recipe.RecipeLine;
import secondbolt.dye.recipe.Substance;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;

/** What a maker should read of her dyeing. */
final class DyeNotes {
    private final DyeBatch batch;
    private final DyePlan plan;

    private DyeNotes(DyeBatch batch) {
        this.batch = batch;
        this.plan = batch.plan();
    }

    static Notes of(List<DyeBatch> batches, PieceParts pieces, DyePrint print) {
        List<Finding> findings =
                batches.stream()
                        .flatMap(
                                batch ->
                                        Stream.of(
                                                        new RefusalFindings(batch, print).all(),
                                                        DyedClothFindings.of(batch),
                                                        new BathFindings(batch, pieces, print)
                                                                .all())
                                                .flatMap(List::stream))
                        .toList();
        return new Notes(
                findings,
                batches.stream().flatMap(batch -> new DyeNotes(batch).assumed()).toList(),
                batches.stream().flatMap(batch -> new DyeNotes(batch).open()).toList());
    }

    private Stream<Assumed> assumed() {
        List<Assumed> assumed = new ArrayList<>();
        if (plan.bath().ratio().isEmpty()
                && plan.leaflet().ratio().isEmpty()
                && !batch.bathing().loads().isEmpty()) {
            assumed.add(
                    new Assumed(
                            plan.name() + ": how much bath",
                            "20 times the dry cloth's weight",
                            "dyer's instruction sheet, cool-water reactive dye (20 to 30);"
                                    + " laboratory note on direct dye (20); write `ratio: 30` under"
                                    + " `dye` for more room"));
        }
        if (plan.when().isEmpty()) {
            assumed.add(
                    new Assumed(
                            plan.name() + ": when it is dyed",
                            "before cutting",
                            "common practice, no source; write `when: before cutting` under `dye` if"
                                    + " that is so"));
        }
        plan.bath()
                .vessel()
                .filter(vessel -> plan.bath().machine().isEmpty())
                .ifPresent(
                        vessel ->
                                assumed.add(
                                        new Assumed(
                                                plan.name() + ": the vessel as it is written",
                                                "what it takes with the cloth in it and room to"
                                                        + " stir, not what it holds to the rim",
                                                "common practice, no source")));
        if (plan.mass().isEmpty() && !batch.bathing().parts().isEmpty()) {
            batch.cloths().stream()
                    .filter(cloth -> cloth.mass().isPresent() && !cloth.isWeighed())
                    .forEach(cloth -> assumed.add(reckoned(cloth)));
        }
        return assumed.stream();
    }

    private Assumed reckoned(DyedCloth cloth) {
        return new Assumed(
                plan.name() + ": what " + cloth.name() + " weighs dry",
                "its weight by area times its size",
                "reckoned, not weighed; put it on the scale, washed and dry, and write it as `mass`"
                        + " under `dye`");
    }

    private Stream<Open> open() {
        List<Open> open = new ArrayList<>();
        String grams = "all amounts of " + plan.name() + ", which go by the dry fibre that takes";
        if (plan.dye().kind().isEmpty() && !plan.isOpen("class")) {
            open.add(
                    new Open(
                            plan.name() + ": the class of the dye",
                            "whether it takes at all, and all amounts, heats and times",
                            "Read the packet, which names it or the fibres it is for, and write it,"
                                    + " as in `class: direct` under `dye`."));
        }
        for (DyedCloth cloth : batch.cloths()) {
            if (cloth.fibre().isEmpty()) {
                open.add(
                        new Open(
                                plan.name() + ": what " + cloth.name() + " is made of",
                                "whether any dye takes on it, and " + grams,
                                "Look for a label, or burn a single thread with care; until then dye"
                                        + " only a strip of it."));
            }
        }
        if (batch.bathing().parts().isEmpty() && plan.mass().isEmpty() && isKnown()) {
            open.add(
                    new Open(
                            plan.name() + ": what it weighs dry",
                            grams + ", and how many baths",
                            "Put all of it on the kitchen scale, washed and dry, and write it, as in"
                                    + " `mass: 822 g` under `dye`."));
        }
        open.addAll(howMuch());
        return open.stream();
    }

    private boolean isKnown() {
        return !batch.cloths().isEmpty()
                && batch.cloths().stream().allMatch(cloth -> cloth.uptake().isPresent());
    }

    private List<Open> howMuch() {
        List<Open> open = new ArrayList<>();
        boolean isByRecipe =
                batch.isOf(DyeClass.REACTIVE)
                        || batch.isOf(DyeClass.DIRECT)
                        || batch.isOf(DyeClass.ACID);
        boolean hasDye =
                batch.recipe().filter(recipe -> recipe.has(Substance.DYE)).isPresent()
                        || batch.packets().isPresent();
        boolean isWithout = isByRecipe && batch.recipe().isPresent() && !hasDye;
        if (isWithout && plan.dye().depth().isPresent()) {
            open.add(
                    new Open(
                            plan.name() + ": what the packet says of this fibre",
                            "how much dye and what goes with it; the published recipe would harm"
                                    + " the fibre",
                            "Read the leaflet, and write its figures, as in `leaflet: {dye: 2 %}`"
                                    + " under `dye`; if it does not name the fibre, take another"
                                    + " dye."));
        } else if (isWithout && !plan.isOpen("depth")) {
            open.add(
                    new Open(
                            plan.name() + ": how deep",
                            "how much dye, salt and soda ash",
                            "Hold a swatch of what it shall go with beside it, and write it, as in"
                                    + " `depth: medium` under `dye`."));
        }
        boolean asksForPackets =
                batch.recipe().stream()
                        .flatMap(recipe -> recipe.lines().stream())
                        .anyMatch(line -> isByPacket(line));
        boolean isBlend = batch.isOf(DyeClass.BLEND) && batch.mayBegin();
        if ((asksForPackets || isBlend)
                && batch.packets().isEmpty()
                && batch.bathing().takes().isPresent()) {
            open.add(
                    new Open(
                            plan.name() + ": how much cloth a packet dyes",
                            "how many packets, and what goes in by the packet",
                            "Read it on the packet and write it, as in `packet: {dyes: 250 g}` under"
                                    + " `dye`."));
        }
        boolean isTop =
                plan.bath().machine().filter(DyePlan.Machine.TOP_LOADER::equals).isPresent();
        if (isTop && plan.bath().vessel().isEmpty()) {
            open.add(
                    new Open(
                            plan.name() + ": how much water the top loader takes",
                            "how much salt and soda ash, and how many loads",
                            "Fill it by the bucket once, and write it, as in `vessel: 45 l` under"
                                    + " `dye`."));
        }
        return open;
    }

    private static boolean isByPacket(RecipeLine line) {
        return line.most().words().endsWith("packet");
    }
}
