package secondbolt.work.kind;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * By which words in its name a small piece is known, in a few languages: common practice, no
 * source. A piece of another name is listed by its seams, or with those that no seam joins.
 *
 * @param part what it belongs to
 * @param whole words that stand alone
 * @param within letters inside a longer word
 */
record PieceWords(Part part, Set<String> whole, Set<String> within) {
    private static final List<PieceWords> ALL =
            List.of(
                    new PieceWords(
                            Part.POCKETS,
                            Set.of("welt", "poche", "tasca", "bolsillo"),
                            Set.of("pocket", "tasche", "ポケット")),
                    new PieceWords(
                            Part.SLITS,
                            Set.of("placket", "slit"),
                            Set.of("schlitz", "sleeve slit")),
                    new PieceWords(
                            Part.CUFFS,
                            Set.of("poignet", "polsino", "puño"),
                            Set.of("cuff", "manschette", "カフス")),
                    new PieceWords(
                            Part.COLLAR,
                            Set.of("col", "cuello", "colletto", "stand"),
                            Set.of("collar", "kragen", "襟", "衿")),
                    new PieceWords(
                            Part.BIB, Set.of("bib", "latz", "bavette", "pettorina"), Set.of()),
                    new PieceWords(
                            Part.STRAPS,
                            Set.of(
                                    "strap", "straps", "handle", "handles", "tie", "ties", "loop",
                                    "lien", "liens", "cordon", "cordons", "correa", "asa"),
                            Set.of(
                                    "träger",
                                    "henkel",
                                    "bindeband",
                                    "bindebänder",
                                    "bretelle",
                                    "anse",
                                    "持ち手",
                                    "紐",
                                    "ひも")),
                    new PieceWords(
                            Part.BAND,
                            Set.of("bund", "ceinture", "cinturilla", "pretina", "cinturino"),
                            Set.of(
                                    "waistband",
                                    "hosenbund",
                                    "rockbund",
                                    "taillenbund",
                                    "ウエストバンド")));

    PieceWords {
        whole = Set.copyOf(whole);
        within = Set.copyOf(within);
    }

    /** The edge it finishes decides where it belongs, not its own name. */
    private static final PieceWords FACINGS =
            new PieceWords(
                    Part.OPENING_EDGES,
                    Set.of(),
                    Set.of("facing", "beleg", "besatz", "parementure", "見返し"));

    /** Whether a piece of this name faces an edge. */
    static boolean isFacing(String name) {
        return FACINGS.isIn(name.toLowerCase(Locale.ROOT));
    }

    /** What a piece of this name belongs to, if its name says it. */
    static Optional<Part> of(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        return ALL.stream().filter(words -> words.isIn(small)).map(PieceWords::part).findFirst();
    }

    private boolean isIn(String name) {
        return within.stream().anyMatch(name::contains)
                || Stream.of(name.split("[\\s_-]+", -1)).anyMatch(whole::contains);
    }
}
