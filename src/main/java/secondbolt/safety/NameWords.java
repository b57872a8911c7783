package secondbolt.safety;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Words that a name may hold.
 *
 * @param whole as a word by themselves
 * @param parts also inside a word, as in compounds
 */
record NameWords(Set<String> whole, Set<String> parts) {
    /** What ties: a cord is asked about by these. Common practice, no source. */
    static final NameWords CORDS =
            new NameWords(
                    Set.of(
                            "cord", "cords", "tie", "ties", "string", "strings", "sash", "sashes",
                            "ribbon", "ribbons", "lacing", "lacings", "lien", "liens", "lacet",
                            "lacets", "ruban", "rubans", "lazo", "lazos", "nastro", "nastri",
                            "lint", "strik"),
                    Set.of(
                            "drawstring",
                            "drawcord",
                            "shoestring",
                            "apronstring",
                            "necktie",
                            "bowtie",
                            "kordel",
                            "schnur",
                            "schnür",
                            "zugband",
                            "zugbänd",
                            "bindeband",
                            "bindebänd",
                            "bindegürtel",
                            "tunnelzug",
                            "kapuzenband",
                            "cordon",
                            "cordel",
                            "cordón",
                            "coulisse",
                            "laccio",
                            "lacci",
                            "koord",
                            "snöre",
                            "snodd",
                            "dragsko",
                            "sznur",
                            "troczek",
                            "tasiemk"));

    /**
     * What ties, in a sentence: of the words of one language alone those that mean nothing else in
     * another; likewise.
     */
    static final NameWords SPOKEN =
            new NameWords(
                    Set.of("cord", "cords", "tie", "ties", "string", "strings"), CORDS.parts());

    /** What goes round the neck in a loop, if its name says neck as well; likewise. */
    static final NameWords LOOPS =
            new NameWords(
                    Set.of("strap", "straps", "loop", "loops", "halter", "bretelle", "tirante"),
                    Set.of("träger", "schlaufe", "neckstrap", "neckloop"));

    /** What is slept in, by its name. Common practice, no source. */
    static final NameWords NIGHTWEAR =
            new NameWords(
                    Set.of("robe", "nightie"),
                    Set.of(
                            "nightdress",
                            "nightgown",
                            "nightshirt",
                            "nightwear",
                            "sleepwear",
                            "sleepsuit",
                            "pyjama",
                            "pajama",
                            "pigiama",
                            "pijama",
                            "bathrobe",
                            "nachthemd",
                            "schlafanzug",
                            "bademantel"));

    /** Copies the words. */
    NameWords {
        whole = Set.copyOf(whole);
        parts = Set.copyOf(parts);
    }

    /** Whether a name holds one of them, in letters of any size. */
    boolean isIn(String name) {
        return first(name).isPresent();
    }

    /** The first word of a text that is one of them, in small letters. */
    Optional<String> first(String text) {
        return Stream.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+", -1))
                .filter(word -> whole.contains(word) || parts.stream().anyMatch(word::contains))
                .findFirst();
    }
}
