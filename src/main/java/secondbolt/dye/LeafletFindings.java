package secondbolt.dye;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.guide.DyePrint;
import secondbolt.dye.plan.Depth;
import secondbolt.dye.plan.DyePlan;
import secondbolt.dye.plan.Heat;
import secondbolt.dye.plan.Rate;
import secondbolt.dye.recipe.Recipe;
import secondbolt.dye.recipe.RecipeLine;
import secondbolt.dye.recipe.Substance;
import secondbolt.dye.recipe.Tender;
import secondbolt.dye.take.ClothUptake;
import secondbolt.measure.Share;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/** Where her own figures contradict the depth she wrote, or the fibre. */
final class LeafletFindings {
    private final DyeBatch batch;
    private final DyePlan plan;
    private final Tender tender;

    private LeafletFindings(DyeBatch batch) {
        this.batch = batch;
        this.plan = batch.plan();
        this.tender = Tender.of(batch.uptakes().stream().map(ClothUptake::fibre).toList());
    }

    static List<Finding> of(DyeBatch batch, DyePrint print) {
        LeafletFindings all = new LeafletFindings(batch);
        List<Finding> findings = new ArrayList<>();
        all.depth().ifPresent(findings::add);
        all.alkali().ifPresent(findings::add);
        all.tooHot(print).ifPresent(findings::add);
        return findings;
    }

    /** Her figure for the dye, as a share of the fibre. */
    private Optional<Share> hers() {
        return plan.leaflet()
                .amounts()
                .dye()
                .flatMap(Rate::share)
                .or(() -> plan.dye().shade().map(shade -> shade.value()));
    }

    private Optional<Finding> depth() {
        Optional<Depth> depth = plan.dye().depth();
        Optional<Share> hers = hers();
        List<RecipeLine> published =
                plan.dye().kind().stream()
                        .flatMap(
                                kind ->
                                        Recipe.published(depth, kind, tender)
                                                .of(Substance.DYE)
                                                .stream())
                        .toList();
        if (hers.isEmpty() || published.isEmpty()) {
            return Optional.empty();
        }
        boolean isBelow =
                published.stream()
                        .allMatch(l -> hers.get().compareTo(l.least().share().orElseThrow()) < 0);
        boolean isAbove =
                published.stream()
                        .allMatch(l -> hers.get().compareTo(l.most().share().orElseThrow()) > 0);
        return isBelow || isAbove
                ? Optional.of(
                        finding(
                                "dye-leaflet-and-depth",
                                Level.CAUTION,
                                "Your "
                                        + hers.get().percent(2)
                                        + " of dye is "
                                        + (isBelow ? "less" : "more")
                                        + " than is published for "
                                        + depth.map(Depth::word).orElse("")
                                        + " ("
                                        + String.join(
                                                "; ",
                                                published.stream().map(RecipeLine::rate).toList())
                                        + "). Yours is used: dyes differ in strength.",
                                "Let the test strip decide which of both you mean."))
                : Optional.empty();
    }

    private Optional<Finding> alkali() {
        boolean hasSoda =
                plan.leaflet().amounts().soda().filter(soda -> !soda.isNothing()).isPresent();
        return hasSoda && tender.isProtein()
                ? Optional.of(
                        finding(
                                "dye-leaflet-alkali",
                                Level.WARNING,
                                "The leaflet's soda ash is alkali, which harms "
                                        + (tender.hasHair() ? "wool" : "silk")
                                        + " (K. H. Watson, Textiles and Clothing, 1907).",
                                "Look whether the leaflet names this fibre; if it does not, take acid"
                                        + " dye, or write `soda: none` under `leaflet`."))
                : Optional.empty();
    }

    private Optional<Finding> tooHot(DyePrint print) {
        Optional<Heat> most = tender.ceiling();
        Optional<Heat> hers = plan.leaflet().heat();
        return most.isPresent() && hers.isPresent() && hers.get().isAbove(most.get())
                ? Optional.of(
                        finding(
                                "dye-leaflet-too-hot",
                                Level.WARNING,
                                "The leaflet's "
                                        + hers.get().words(print.tape())
                                        + " is hotter than "
                                        + (tender.hasSilk() ? "silk" : "wool")
                                        + " is dyed, "
                                        + most.get().words(print.tape())
                                        + " and never boiled (dyer's notes on acid dye, 2019).",
                                "Look whether the leaflet names this fibre, and stay below."))
                : Optional.empty();
    }

    private Finding finding(String code, Level level, String text, String remedy) {
        return new Finding(code, new Subject.Colour(batch.plan().name()), level, text, remedy);
    }
}
