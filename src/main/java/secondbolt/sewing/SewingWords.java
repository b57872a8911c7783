package secondbolt.sewing;

import java.util.List;
import secondbolt.block.Both;
import secondbolt.measure.Length;
import secondbolt.measure.Plural;
import secondbolt.measure.Tape;
import secondbolt.sewing.plan.ThreadFibre;
import secondbolt.sewing.plan.ThreadPlan;
import secondbolt.sewing.thread.ThreadTotal;

/** How thread is told. */
final class SewingWords {
    private SewingWords() {}

    /** Thread in metres or yards, as it is sold. */
    static Both thread(Tape tape, Length length) {
        return Both.of(tape, t -> t.printShop(length));
    }

    /** What the thread of a total is called, as the maker prices it. */
    static String item(ThreadTotal total, ThreadPlan plan) {
        String kind = total.isOnCones() ? "overlock thread" : "thread";
        String fibre = plan.fibre().orElse(ThreadFibre.POLYESTER).word();
        return kind + ", " + fibre + (total.colour().isEmpty() ? "" : ", " + total.colour());
    }

    /** What one of it is, such as {@code spool of 100 m}. */
    static String each(ThreadTotal total, Tape tape) {
        return (total.isOnCones() ? "cone of " : "spool of ") + tape.printShop(total.each());
    }

    /** How many of what: {@code 3 cones of 1000 m}. */
    static String count(ThreadTotal total, Tape tape) {
        String of = " of " + tape.printShop(total.each());
        return Plural.of(total.count(), total.isOnCones() ? "cone" : "spool") + of;
    }

    /** Names in a row: {@code a, b and c}, of many only the first ones. */
    static String listed(List<String> names, int most) {
        if (names.size() > most) {
            int more = names.size() - most + 1;
            return String.join(", ", names.subList(0, most - 1)) + " and " + more + " more";
        }
        return names.size() < 2
                ? String.join("", names)
                : String.join(", ", names.subList(0, names.size() - 1))
                        + " and "
                        + names.get(names.size() - 1);
    }
}
