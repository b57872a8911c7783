package secondbolt.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.file.Spelling;
import secondbolt.measure.Tape;
import secondbolt.supply.list.Shopping;
import secondbolt.supply.plan.ItemName;
import secondbolt.supply.plan.Notion;
import secondbolt.supply.plan.Quantity;
import secondbolt.supply.plan.Supply;
import secondbolt.task.Need;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Subject;

/**
 * Names that nothing needs: like one that is needed, or of things without an amount.
 *
 * @param asked what was asked for
 * @param untold entries that nothing needs and that tell no amount
 * @param tape to print with
 */
record NameFindings(Shopping.Asked asked, List<String> untold, Tape tape) {
    private static final String SUPPLIES = "`supplies`";
    private static final int MOST_NAMED = 3;
    private static final int SHORTEST_WORD = 4;

    static List<Finding> of(SupplyResult result, Tape tape) {
        return new NameFindings(result.asked(), result.shopping().untold(), tape).all();
    }

    private List<Finding> all() {
        List<Finding> findings = new ArrayList<>();
        List<String> needed = asked.needs().stream().map(Need::item).toList();
        List<String> notions = asked.notions().stream().map(Notion::item).toList();
        for (String notion : notions) {
            Subject about = new Subject.Design(asked.design());
            like(notion, needed)
                    .map(near -> likeAnother(notion, near, "`notions`", about))
                    .or(() -> ofNothing(notion, "`notions`", about))
                    .ifPresent(findings::add);
        }
        List<String> known = Stream.concat(needed.stream(), notions.stream()).toList();
        for (Supply supply : asked.supplies()) {
            String item = supply.item().value();
            Subject about = new Subject.Supply(item);
            like(item, known)
                    .filter(near -> supply.purpose().isEmpty())
                    .map(near -> likeAnother(item, near, SUPPLIES, about))
                    .or(() -> ofNothing(item, SUPPLIES, about))
                    .ifPresent(findings::add);
        }
        return findings;
    }

    /** The thing that may be meant; figures tell sizes apart, and are never taken for a slip. */
    private static Optional<String> like(String item, List<String> known) {
        boolean isKnown = known.stream().map(ItemName::of).anyMatch(ItemName.of(item)::equals);
        return isKnown
                ? Optional.empty()
                : Spelling.nearest(item, known).filter(near -> figures(near).equals(figures(item)));
    }

    private static String figures(String text) {
        return text.codePoints()
                .filter(Character::isDigit)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private Finding likeAnother(String item, String near, String where, Subject about) {
        boolean isOwn = where.equals(SUPPLIES);
        boolean isThere =
                isOwn
                        && asked.supplies().stream()
                                .anyMatch(other -> other.name().equals(ItemName.of(near)));
        return new Finding(
                "supply-like-another",
                about,
                Finding.Level.CAUTION,
                "`"
                        + item
                        + "` under "
                        + where
                        + " is almost "
                        + near
                        + ", which is needed, and is taken for something else.",
                (isThere
                                ? "If it is the same, take it out: the other tells of it already"
                                : "If it is the same, write `" + line(near) + "`")
                        + (isOwn ? "; if not, say what it is for, as in `for: the cuffs`." : "."));
    }

    private Optional<Finding> ofNothing(String item, String where, Subject about) {
        return untold.contains(item)
                ? Optional.of(
                        new Finding(
                                "supply-of-nothing",
                                about,
                                Finding.Level.CAUTION,
                                "`"
                                        + item
                                        + "` under "
                                        + where
                                        + " is on no list: nothing needs it, and no amount of it"
                                        + " is told.",
                                meant(item)
                                        + "rite how many you want, as in `"
                                        + Quantity.Kind.COUNT.key()
                                        + ": "
                                        + Quantity.Kind.COUNT.example(tape)
                                        + "`, or take it out."))
                : Optional.empty();
    }

    /** Things on the list that share a word with it: a list's own name may be longer than hers. */
    private String meant(String item) {
        Set<String> hers = words(item);
        List<String> alike =
                asked.needs().stream()
                        .map(Need::item)
                        .distinct()
                        .filter(need -> words(need).stream().anyMatch(hers::contains))
                        .limit(MOST_NAMED)
                        .map(need -> "`" + line(need) + "`")
                        .toList();
        return alike.isEmpty()
                ? "W"
                : "If it is on the list under a longer name, write "
                        + String.join(" or ", alike)
                        + "; if not, w";
    }

    private static Set<String> words(String text) {
        String letters =
                ItemName.of(text)
                        .letters()
                        .codePoints()
                        .map(c -> Character.isLetter(c) ? c : ' ')
                        .collect(
                                StringBuilder::new,
                                StringBuilder::appendCodePoint,
                                StringBuilder::append)
                        .toString();
        return Stream.of(letters.split(" ", -1))
                .filter(word -> word.length() >= SHORTEST_WORD)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** As it can be written between others on one line, where a comma would end it. */
    private static String line(String item) {
        boolean isPlain = item.codePoints().allMatch(c -> Character.isLetterOrDigit(c) || c == ' ');
        return "item: "
                + (isPlain ? item : '"' + item.replace("\\", "\\\\").replace("\"", "\\\"") + '"');
    }
}
