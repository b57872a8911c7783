package secondbolt.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.closure.Closure;
import secondbolt.closure.Machine;
import secondbolt.draw.Drawing;
import secondbolt.effect.AlterationEffects.Change;
import secondbolt.fit.FitResult;
import secondbolt.hem.Hem;
import secondbolt.measure.Area;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Figures;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Worksheet;

/** What follows from each alteration, so that nothing further down is forgotten. */
public final class EffectWorksheet implements Worksheet {
    private final List<AlterationEffects> effects;
    private final Tape tape;

    private EffectWorksheet(List<AlterationEffects> effects, Tape tape) {
        this.effects = effects;
        this.tape = tape;
    }

    /**
     * The page of a pattern's alterations.
     *
     * @param fit the altered pattern
     * @param closures by name; none if they are not told
     * @param machine the maker's
     * @param hems by name; none if they are not told
     */
    public static Worksheet of(
            FitResult fit,
            Map<String, Closure> closures,
            Machine machine,
            Map<String, Hem> hems,
            Tape tape) {
        return new EffectWorksheet(
                EffectCalculation.work(fit, closures, machine, hems, tape), tape);
    }

    @Override
    public String name() {
        return "effects";
    }

    @Override
    public String title() {
        return "What follows from the alterations";
    }

    @Override
    public Object view() {
        return new EffectView(effects.stream().map(this::view).toList());
    }

    private EffectView.One view(AlterationEffects one) {
        List<EffectView.Row> rows = new ArrayList<>();
        one.lengths().stream().filter(this::shows).forEach(change -> rows.add(row(change)));
        one.cloth().stream()
                .filter(c -> !tape.print(c.before()).equals(tape.print(c.after())))
                .forEach(change -> rows.add(cloth(change)));
        return new EffectView.One(one.alteration().words(), rows);
    }

    /** Whether the tape shows the difference. */
    private boolean shows(Change<Length> change) {
        Length more = change.after().minus(change.before());
        return more.size().roundedTo(tape.mark()).isPositive();
    }

    private EffectView.Row row(Change<Length> change) {
        Tape other = tape.other();
        Length more = change.after().minus(change.before());
        return new EffectView.Row(
                change.what(),
                tape.print(change.before()),
                tape.print(change.after()),
                other.print(change.before()) + " to " + other.print(change.after()),
                signed(more.isNegative(), tape.print(more.size())));
    }

    private EffectView.Row cloth(Change<Area> change) {
        Tape other = tape.other();
        boolean less = change.after().compareTo(change.before()) < 0;
        Area more =
                less
                        ? change.before().minus(change.after())
                        : change.after().minus(change.before());
        return new EffectView.Row(
                "Cloth in all pieces cut of " + change.what(),
                tape.print(change.before()),
                tape.print(change.after()),
                other.print(change.before()) + " to " + other.print(change.after()),
                signed(less, tape.print(more)));
    }

    private static String signed(boolean less, String amount) {
        return (less ? "−" : "+") + amount;
    }

    @Override
    public Map<String, Drawing> pictures() {
        return Map.of();
    }

    @Override
    public List<Sheet> sheets() {
        return List.of();
    }

    @Override
    public List<Finding> findings() {
        return List.of();
    }

    @Override
    public List<Assumed> assumed() {
        return List.of();
    }

    @Override
    public List<Open> open() {
        return List.of();
    }

    @Override
    public Figures figures() {
        return new Figures().list("alterations", effects.stream().map(this::figures).toList());
    }

    private Figures figures(AlterationEffects one) {
        return new Figures()
                .text("alteration", one.alteration().words())
                .list("followers", one.lengths().stream().map(EffectWorksheet::length).toList())
                .list("cloth", one.cloth().stream().map(EffectWorksheet::area).toList());
    }

    private static Figures length(Change<Length> change) {
        return new Figures()
                .text("what", change.what())
                .length("before", change.before())
                .length("after", change.after());
    }

    private static Figures area(Change<Area> change) {
        return new Figures()
                .text("what", change.what())
                .area("before", Optional.of(change.before()))
                .area("after", Optional.of(change.after()));
    }
}
