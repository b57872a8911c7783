package secondbolt.lay.design;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import secondbolt.lay.kept.LayStore;
import secondbolt.lay.kept.StoreKey;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.stock.SpreadCloth;
import secondbolt.lay.stock.StockLay;
import secondbolt.shape.Box;
import secondbolt.shape.ClearRectangles;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;
import secondbolt.shape.Region;

/**
 * A cache of remnants: works them out, or takes them from the store. The key is a hash of the sound
 * cloth and of what is laid on it, every coordinate to its last bit, so that a stored remnant is
 * what would be worked out. One that does not lie on free cloth is not taken; that it is the
 * largest is for the store to see to, which gives back only what was kept in it.
 */
public final class RemnantCache {
    /** Changed whenever another remnant may be found beside the same pieces. */
    private static final String WORK = "remnant 1";

    /** The last word of a remnant that was written to its end. */
    private static final String END = "end";

    /** Four numbers and a word are shorter, however they are written. */
    private static final int LONGEST = 200;

    /** How far a remnant may reach over the edge of what is free, for its sides are rounded. */
    private static final double ROUNDED_MM = 1e-4;

    private final LayStore store;

    /** An empty cache before a store. */
    public RemnantCache(LayStore store) {
        this.store = store;
    }

    /** What stays over of the cloths of all these stocks. */
    public Remnants of(List<StockLay> stocks) {
        Map<String, Box> remnants = new LinkedHashMap<>();
        for (StockLay stock : stocks) {
            for (int i = 0; i < stock.spreads().size(); i++) {
                SpreadCloth spread = stock.spreads().get(i);
                of(stock, i).ifPresent(box -> remnants.put(spread.name(), box));
            }
        }
        return new Remnants(remnants);
    }

    /** Of a search that was stopped nothing is stored: its lay is not either. */
    private Optional<Box> of(StockLay stock, int cloth) {
        Region sound = stock.spreads().get(cloth).sound();
        List<Outline> laid =
                stock.laid().stream()
                        .filter(piece -> piece.cloth() == cloth)
                        .map(LaidPiece::outline)
                        .toList();
        Region free = sound.minus(Region.union(laid.stream().map(Region::of).toList()));
        String key = key(sound, laid);
        Optional<Box> stored =
                store.find(key).flatMap(RemnantCache::read).filter(box -> isFree(box, free));
        if (stored.isPresent()) {
            return stored;
        }
        Optional<Box> found = ClearRectangles.largest(free).filter(box -> box.areaMm2() > 0);
        if (stock.isFinished()) {
            found.ifPresent(box -> store.keep(key, write(box)));
        }
        return found;
    }

    /** Nothing is overlaid that lies far off. */
    private static boolean isFree(Box box, Region free) {
        boolean isWide = Math.min(box.widthMm(), box.heightMm()) > 2 * ROUNDED_MM;
        return isWide
                && !free.isEmpty()
                && free.box().contains(box, ROUNDED_MM)
                && free.contains(box, ROUNDED_MM);
    }

    private static String key(Region sound, List<Outline> laid) {
        StringBuilder all = new StringBuilder(WORK);
        sound.outlines().forEach(outline -> append(all.append("\nsound"), outline));
        laid.forEach(outline -> append(all.append("\nlaid"), outline));
        return StoreKey.of(all.toString());
    }

    private static void append(StringBuilder all, Outline outline) {
        for (Point corner : outline.corners()) {
            all.append(' ').append(corner.xMm()).append(',').append(corner.yMm());
        }
    }

    private static String write(Box box) {
        return box.leftMm()
                + " "
                + box.topMm()
                + " "
                + box.widthMm()
                + " "
                + box.heightMm()
                + " "
                + END
                + "\n";
    }

    /** Nothing if the text is not whole. */
    private static Optional<Box> read(String text) {
        List<String> words = text.length() > LONGEST ? List.of() : List.of(text.split("[ \n]", -1));
        if (words.size() != 6 || !words.get(4).equals(END)) {
            return Optional.empty();
        }
        try {
            double[] mm =
                    IntStream.range(0, 4)
                            .mapToDouble(i -> Double.parseDouble(words.get(i)))
                            .toArray();
            boolean isBox =
                    DoubleStream.of(mm).allMatch(Double::isFinite) && mm[2] > 0 && mm[3] > 0;
            return isBox ? Optional.of(new Box(mm[0], mm[1], mm[2], mm[3])) : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
