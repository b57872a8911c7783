package secondbolt.closure.giving;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import secondbolt.closure.fastening.Button;
import secondbolt.closure.fastening.Fastening;
import secondbolt.task.Amount;
import secondbolt.task.Need;
import secondbolt.worksheet.Convention;

/** Fasteners to buy: as many as are sewn on, not one more; that one is kept to spare is said. */
final class FastenerNeeds {
    private FastenerNeeds() {}

    /** What a closure needs; nothing while nobody knows how many. */
    static Stream<Need> of(GivenClosure closure) {
        return closure.toSewOn().stream().map(count -> need(closure, count));
    }

    private static Need need(GivenClosure closure, int count) {
        Need need =
                Need.of(item(closure), new Amount.Pieces(count, ""), closure.name() + why(closure));
        return closure.fastening().kind() == Fastening.Kind.BUTTONS
                ? need.boughtAfter(
                        "dry",
                        "Dyed cloth comes out otherwise than the packet shows: choose buttons beside"
                                + " it, dry.")
                : need;
    }

    /**
     * What it is called in a shop, the same for all closures that take the same, so that they add
     * up.
     */
    static String item(GivenClosure closure) {
        Fastening fastening = closure.fastening();
        return switch (fastening.kind()) {
            case BUTTONS -> button(closure, fastening.button().orElseThrow());
            case SNAPS -> "snaps" + across(closure);
            case HOOKS -> "hooks and eyes" + across(closure);
            case TIES -> "pairs of ties";
        };
    }

    private static String button(GivenClosure closure, Button button) {
        List<String> words = new ArrayList<>();
        if (button.shape() != Button.Shape.FLAT) {
            words.add(button.shape().word());
        }
        if (button.attached() == Button.Attached.SHANK) {
            words.add("shank");
        }
        words.add("buttons");
        return String.join(" ", words)
                + button.across()
                        .map(across -> " " + closure.tape().printSmall(across) + " across")
                        .or(
                                () ->
                                        button.girth()
                                                .map(
                                                        girth ->
                                                                " "
                                                                        + closure.tape()
                                                                                .printSmall(girth)
                                                                        + " round"))
                        .orElse("");
    }

    private static String across(GivenClosure closure) {
        return closure.fastening()
                .width()
                .map(width -> " " + closure.tape().printSmall(width) + " wide")
                .orElse("");
    }

    private static String why(GivenClosure closure) {
        String rows =
                closure.hasTwoRows()
                        ? closure.count().map(c -> ", two rows of " + c).orElse("")
                        : closure.isOnOneCuff() ? ", one cuff: double it for two" : "";
        return closure.fastening().kind() == Fastening.Kind.TIES
                ? rows + "; nothing to buy if you cut them of the cloth"
                : rows + "; one to spare is not counted (" + Convention.COMMON_PRACTICE + ")";
    }
}
