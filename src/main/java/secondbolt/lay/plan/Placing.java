package secondbolt.lay.plan;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import secondbolt.file.value.Placed;
import secondbolt.pattern.Alteration;
import secondbolt.shape.Point;

/**
 * A copy of a piece where the maker says that it lies: it is cut there, or shall be.
 *
 * @param piece its name, with the place it is written at
 * @param copy which copy, from 1, the first of two that are cut at once; nothing if not told
 * @param cloth the cloth it lies on
 * @param at where the box round its cutting line begins, on the trimmed and washed cloth; where
 *     that is folded, from the fold
 * @param lies how it lies
 * @param isTurnedOver whether it is used with its wrong side out, as the other hand
 * @param isSpoilt whether it must be cut again, and smaller pieces may be cut from it
 * @param altered the alterations it had when it was cut; nothing if that is not told
 */
public record Placing(
        Placed<String> piece,
        Optional<Integer> copy,
        Placed<String> cloth,
        Point at,
        Lies lies,
        boolean isTurnedOver,
        boolean isSpoilt,
        Optional<List<Alteration>> altered) {
    /** A name with the number of a copy behind it, as a cutting plan names copies. */
    private static final Pattern NUMBERED = Pattern.compile("(.*?\\S) (\\d{1,3})( and \\d{1,3})?");

    /** Copies the alterations. */
    public Placing {
        altered = altered.map(List::copyOf);
    }

    /** Whether it is the mirror image as it lies; told of every one that is worked with. */
    public boolean isMirrored() {
        return lies.isFaceDown().orElse(false);
    }

    /** Whether it serves as the mirror image. */
    public boolean servesMirrored() {
        return isMirrored() != isTurnedOver;
    }

    /** Its name as the cutting plan has it. */
    public String words() {
        String two = lies.layer() == Lies.Layer.BOTH ? " and " + (copy.orElse(1) + 1) : "";
        return piece.value() + copy.map(number -> " " + number + two).orElse("");
    }

    /**
     * The same, its name parted into that of the piece and the number of the copy.
     *
     * @param pieces the names of the pieces there are; one that ends in a number itself is that
     */
    public Placing namedBy(Collection<String> pieces) {
        Matcher numbered = NUMBERED.matcher(piece.value());
        if (pieces.contains(piece.value())
                || !numbered.matches()
                || !pieces.contains(numbered.group(1))) {
            return this;
        }
        return new Placing(
                new Placed<>(numbered.group(1), piece.place()),
                Optional.of(Integer.parseInt(numbered.group(2))),
                cloth,
                at,
                lies,
                isTurnedOver,
                isSpoilt,
                altered);
    }

    /** The same copy with these alterations; nothing if they are not known. */
    Placing altered(Optional<List<Alteration>> had) {
        return new Placing(piece, copy, cloth, at, lies, isTurnedOver, isSpoilt, had);
    }

    /** The same copy lying otherwise. */
    public Placing lying(Lies other, Optional<Integer> ofCopy) {
        return new Placing(piece, ofCopy, cloth, at, other, isTurnedOver, isSpoilt, altered);
    }
}
