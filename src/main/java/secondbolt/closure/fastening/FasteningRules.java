package secondbolt.closure.fastening;

import java.util.ArrayList;
import java.util.List;
import secondbolt.file.Rule;

/** What the keys of a closure ask of each other, in JSON Schema. */
public final class FasteningRules {
    private static final String GAP = "largest gap";

    private FasteningRules() {}

    /** All that {@link FasteningKeys}, {@link SpreadKeys} and {@link OverlapKeys} hold. */
    public static List<Rule> all() {
        List<Rule> rules = new ArrayList<>();
        rules.add(Rule.one("length", "on"));
        for (Fastening.Kind kind : Fastening.Kind.values()) {
            rules.add(Rule.when(isOf(kind), rules(kind)));
        }
        return rules;
    }

    /** By its word; without one by what is counted, and buttons if nothing is. */
    private static Rule isOf(Fastening.Kind kind) {
        Rule unsaid = Rule.not(Rule.has("kind"));
        Rule counted =
                kind == Fastening.Kind.BUTTONS
                        ? Rule.not(Rule.some("snaps", "hooks", "ties"))
                        : Rule.has(kind.word());
        return Rule.any(Rule.is("kind", kind.word()), Rule.both(unsaid, counted));
    }

    private static Rule rules(Fastening.Kind kind) {
        List<Rule> rules = new ArrayList<>();
        for (Fastening.Kind other : Fastening.Kind.values()) {
            if (other != kind) {
                rules.add(Rule.not(Rule.has(other.word())));
            }
        }
        rules.add(Rule.some(kind.word(), GAP));
        rules.add(Rule.any(Rule.has("last"), isOne(kind)));
        if (kind == Fastening.Kind.BUTTONS) {
            rules.add(Rule.has("button", "holes"));
            rules.add(Rule.not(Rule.has("wide")));
        } else {
            rules.add(Rule.not(Rule.some("button", "holes", "working ease")));
        }
        if (kind == Fastening.Kind.BUTTONS || kind == Fastening.Kind.SNAPS) {
            rules.add(Rule.has("extension", "laps"));
        }
        return Rule.both(rules);
    }

    private static Rule isOne(Fastening.Kind kind) {
        return Rule.both(
                Rule.any(Rule.is(kind.word(), 1), Rule.is(kind.word(), "1")),
                Rule.not(Rule.has(GAP)));
    }
}
