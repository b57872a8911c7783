package secondbolt.dye.plan;

import java.util.List;
import java.util.Optional;
import secondbolt.file.value.LeftOpen;
import secondbolt.file.value.Placed;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;
import secondbolt.measure.Volume;

/**
 * One colour, as the maker wrote it.
 *
 * @param cloth the cloths that get it, by her names; none if she does not know
 * @param dye what is to colour them
 * @param packet what one packet is for, if told
 * @param bath what it is done in
 * @param when it is done, if told
 * @param leaflet her packet's own figures
 * @param mass what goes into the bath weighs dry, if she weighed it
 * @param over the colour the cloth has now, if told
 * @param open what she wrote {@code unknown} for
 */
public record DyePlan(
        List<Placed<String>> cloth,
        Dye dye,
        Optional<Packet> packet,
        Bath bath,
        Optional<When> when,
        Leaflet leaflet,
        Optional<Mass> mass,
        Optional<String> over,
        List<LeftOpen> open) {
    /** Copies the lists. */
    public DyePlan {
        cloth = List.copyOf(cloth);
        open = List.copyOf(open);
    }

    /**
     * What is to colour them.
     *
     * @param colour in her words
     * @param kind the class of the dye
     * @param depth how deep
     * @param shade how much dye for the fibre, if she chose it
     */
    public record Dye(
            Optional<String> colour,
            Optional<DyeClass> kind,
            Optional<Depth> depth,
            Optional<Placed<Share>> shade) {}

    /**
     * A packet of dye.
     *
     * @param dyes so much dry cloth
     * @param isForMachine whether its leaflet is for a washing machine
     */
    public record Packet(Mass dyes, boolean isForMachine) {}

    /**
     * What it is done in.
     *
     * @param ratio how many times the dry cloth's mass the bath has
     * @param vessel how much bath it takes with room to stir; of a top loader how much water
     * @param machine which washing machine, if it is done in one
     */
    public record Bath(
            Optional<Share> ratio, Optional<Placed<Volume>> vessel, Optional<Machine> machine) {
        /** No vessel at home takes more. */
        public static final Volume LARGEST = Volume.LITRE.times(Share.ofRatio(500, 1));
    }

    /** A washing machine. */
    public enum Machine {
        /** Little water, as the machine wills. */
        FRONT_LOADER("front loader"),
        /** A tub of water. */
        TOP_LOADER("top loader");

        private final String word;

        Machine(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /** When it is done. */
    public enum When {
        /** Whole cloths. */
        BEFORE_CUTTING("before cutting"),
        /** Pieces that are cut and not sewn yet. */
        AFTER_CUTTING("after cutting"),
        /** The whole garment. */
        AFTER_SEWING("after sewing");

        private final String word;

        When(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /** When it is done, before cutting if not told. */
    public When whenOrBefore() {
        return when.orElse(When.BEFORE_CUTTING);
    }

    /** The names of its cloths. */
    public List<String> names() {
        return cloth.stream().map(Placed::value).toList();
    }

    /** Whether she wrote that she does not know this. */
    public boolean isOpen(String key) {
        return open.stream().anyMatch(one -> one.what().equals(key));
    }

    /** What the colour is called: hers, or else by its cloths. */
    public String name() {
        return dye.colour().orElseGet(() -> cloth.isEmpty() ? "dye" : String.join(", ", names()));
    }
}
