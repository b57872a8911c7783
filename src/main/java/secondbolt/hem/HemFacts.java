package secondbolt.hem;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.block.Fact;
import secondbolt.hem.plan.Garment;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.turned.HemLevel;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Convention;

/**
 * The facts the page tells of a hem.
 *
 * @param result the hem
 * @param tape to print with
 */
record HemFacts(HemResult result, Tape tape) {
    /** How far the fold of a lining usually stands above the garment's. */
    private static final Convention USUAL_JUMP =
            Convention.common(Length.ofInches(1, 1), Length.ofMillimetres(25));

    List<Fact> all() {
        List<Fact> facts = new ArrayList<>();
        Hem hem = result.hem();
        boolean isFaced = hem.turned() == Hem.Turned.FACED;
        String depth = isFaced ? "Depth of the facing" : "Depth, finished";
        hem.depth().ifPresent(deep -> facts.add(Fact.of(depth, tape, deep)));
        usual().ifPresent(facts::add);
        facts.add(Fact.of("Turned", hem.turned().word()));
        if (!isFaced) {
            facts.add(Fact.of("Cloth turned up below the fold", tape, result.turnedUp()));
        }
        facts.add(Fact.of("Fold, all round", tape, result.foldAllRound()));
        if (!isFaced) {
            result.surplusAllRound().ifPresent(surplus -> facts.add(surplus(surplus)));
        }
        result.level().ifPresent(level -> facts.addAll(level(level)));
        facts.add(
                Fact.of(
                        "Hangs before it is levelled",
                        result.hang().first() ? result.hang().words() : "no"));
        hem.jump().ifPresent(jump -> facts.addAll(jump(jump)));
        return facts;
    }

    private Optional<Fact> usual() {
        return result.hem()
                .garment()
                .filter(garment -> !garment.usual().isEmpty())
                .map(garment -> Fact.of("Usual for a hem of this kind", usual(garment)));
    }

    private String usual(Garment garment) {
        String depths = garment.usual().stream().map(this::usual).collect(Collectors.joining("; "));
        return garment.word() + ": " + depths + " (" + garment.source() + ")";
    }

    private String usual(Garment.Usual usual) {
        String least = tape.print(usual.least().on(tape));
        String range =
                usual.least().equals(usual.most())
                        ? least
                        : least + " to " + tape.print(usual.most().on(tape));
        return usual.of().isEmpty() ? range : usual.of() + " " + range;
    }

    private Fact surplus(Length surplus) {
        String label =
                surplus.isNegative()
                        ? "Turned edge too short, all round"
                        : "Turned edge too long, all round";
        return Fact.of(label, tape, surplus.size());
    }

    private List<Fact> level(HemLevel level) {
        return List.of(
                Fact.of("Fold above the floor", tape, level.fold()),
                Fact.of(
                        "Level marks, all round",
                        level.marks() + ", one every " + tape.print(level.every())));
    }

    private List<Fact> jump(Length jump) {
        return List.of(
                Fact.of("Lining's fold above the garment's", tape, jump),
                Fact.of(
                        "Jump",
                        "the lining is cut to its outline and its fold sewn so much higher; that"
                                + " length falls in a pleat. Usual is "
                                + tape.print(USUAL_JUMP.on(tape))
                                + " ("
                                + USUAL_JUMP.source()
                                + ")"));
    }
}
