package secondbolt.work.kind;

/**
 * A part of the sewing, by the name of its step.
 *
 * <p>That each seam is pressed before another crosses it: K. H. Watson, Textiles and Clothing,
 * 1907. That small pieces are made up while the large ones are flat: common practice, no source.
 */
enum Part {
    /** Tacked by hand, to be tried on. */
    BASTE(
            "baste",
            "Baste the seams by hand on their lines, with long stitches that come out again."),
    /** Tried on. */
    FIT_ON(
            "fit on",
            "Try it on over what is worn beneath, closed as it will be, standing, sitting and with the"
                    + " arms raised; pin what is too wide or too long, and mark both sides alike."),
    /** A unit. */
    POCKETS("pockets", "Make up the pockets and sew them on while the piece they lie on is flat."),
    /** A unit: the slit of a sleeve. */
    SLITS("slits", "Finish the slits on the flat, before the long seam."),
    /** A unit. */
    COLLAR("collar", "Make up the collar, trim and turn it, and press its edge."),
    /** A unit. */
    CUFFS("cuffs", "Make up the cuffs and press them."),
    /** Bands and facings of an opening. */
    OPENING_EDGES("opening edges", "Finish the edges of the opening with their bands or facings."),
    /** Widths of an apron or a curtain. */
    WIDTHS("widths", "Join the widths; a French seam leaves no raw edge."),
    /** Gores of a skirt. */
    GORES("gores", "Join the gores or breadths, all from the same end."),
    /** Down the middle of the back. */
    CENTRE_BACK("centre back", "Sew the centre back seam."),
    /** From neck to shoulder. */
    SHOULDERS("shoulders", "Sew the shoulder seams."),
    /** The neck edge. */
    NECKLINE("neckline", "Set on the collar, or finish the neck edge with its facing or band."),
    /** A lining by itself. */
    LINING("lining", "Sew the lining by itself."),
    /** Where lining and outside meet. */
    LINING_IN("set in lining", "Sew lining and outside together."),
    /** Through an opening left in a seam. */
    TURN("turn", "Turn it through the opening left in a side or a shoulder, and press its edges."),
    /** Sleeves to armholes. */
    SLEEVES("sleeves", "Sew the sleeves to the armholes."),
    /** Down the trunk. */
    SIDE_SEAMS("side seams", "Sew the side seams."),
    /** Under the arm. */
    SLEEVE_SEAMS("sleeve seams", "Sew the sleeve seams."),
    /** Cuffs to sleeves. */
    WRISTS("wrists", "Sew the cuffs on, or finish the wrists."),
    /** Down the outside of a leg. */
    OUTSIDE_LEGS("outside legs", "Sew the outside leg seams."),
    /** Down the inside of a leg. */
    INSIDE_LEGS("inside legs", "Sew the inside leg seams."),
    /** Between the legs. */
    SEAT("seat seam", "Sew the seat seam in one run, twice where it is strained."),
    /** The fullness that goes into a band. */
    GATHER("gather", "Gather with two rows of long stitches, and spread the fullness evenly."),
    /** At the waist. */
    BAND("band", "Sew on the waistband, or join at the waist."),
    /** Of an apron. */
    BIB("bib", "Make up the bib and set it to the band."),
    /** Of an apron or a bag. */
    STRAPS("straps", "Make up the straps or handles and sew them on."),
    /** Whatever seam is left. */
    ASSEMBLE("assemble", "Sew what seams are left; press each before another crosses it.");

    private final String word;
    private final String does;

    Part(String word, String does) {
        this.word = word;
        this.does = does;
    }

    /** The name of its step. */
    String word() {
        return word;
    }

    /** What to do, in a sentence or two. */
    String does() {
        return does;
    }

    /** Whether it is done by itself, whatever seams the pattern tells of. */
    boolean isAlways() {
        return this == BASTE || this == FIT_ON || this == ASSEMBLE;
    }
}
