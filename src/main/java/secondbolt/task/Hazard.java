package secondbolt.task;

/**
 * Where work can hurt; a sheet tells each once, where the hand is.
 *
 * <p>This is the one place of all cautions. They are plain and usual, and give way to the maker's
 * own leaflet, to the label on the product, to local rules and to licensed practice ({@link
 * #LEAFLET_FIRST}). No recipe and no strength of a product belongs in them.
 */
public enum Hazard {
    /** What comes before every other caution. */
    LEAFLET_FIRST(
            "The label and leaflet of your product come first, then local rules; what a sheet says"
                    + " gives way to both. Leave what needs a licence, such as solvents, pest control"
                    + " or wiring, to those who hold it.",
            Sources.COMMON),
    /** Dye as a powder. */
    DYE_POWDER(
            "Dye powder: some dyes, reactive ones above all, can make you allergic, and then tiny"
                    + " amounts bring on asthma. Raise no dust: wet the powder under water or wear a"
                    + " dust mask; gloves on, nothing eaten or drunk meanwhile, and its vessels and"
                    + " spoons never serve food again. Off the skin with soap and water, never with"
                    + " bleach.",
            "Health and Safety Executive (UK), Dyes and dyeing, and Reactive dyes, sheet TIS 5;"
                    + " National Society for Education in Art and Design (UK), dyes"),
    /** Sodium carbonate. */
    SODA_ASH(
            "Soda ash seriously irritates the eyes: goggles and gloves. If it gets into an eye, rinse"
                    + " at once with much water and seek care. Add it slowly to water, never water to"
                    + " the powder.",
            "safety data sheet of soda ash (eye irritation, category 2A); gloves and the order of"
                    + " adding from memory"),
    /** A bath that scalds. */
    HOT_BATH(
            "Hot baths scald. A serious one takes water of 48.9 °C (120 °F) over 5 minutes, of 54.4 °C"
                    + " (130 °F) 30 seconds, of 60 °C (140 °F) under 5 seconds, of 65.6 °C (150 °F)"
                    + " 1.5 seconds; a baby at 60 °C 1 second. Lift cloth with a tool, lid away from"
                    + " you; cool a burn under running water and seek care.",
            "Children's of Alabama, scald prevention; the Burn Foundation, as quoted by a pharmacy;"
                    + " babies: an article on scalds; cooling from memory"),
    /** A full vessel. */
    HEAVY_BATH(
            "A full bath is heavy: 20 litres of it with their cloth weigh 21 kg. Do not carry it:"
                    + " ladle it out, and lift wet cloth in parts.",
            "derived: a kilogram of cloth in twenty times its weight of water"),
    /** A vessel on a cooker. */
    COOKER(
            "Cooker: the vessel on one ring, no larger than it and never over two, its handle turned"
                    + " in, no cloth hanging near a flame, sleeves short or close-fitting; never left"
                    + " alone, the room aired.",
            "sleeves: American Burn Association and US Fire Administration, older adults; the rest"
                    + " common practice, no source"),
    /** Sodium hypochlorite. */
    BLEACH(
            "Bleach: never mixed with any other product. With vinegar, citric acid or a toilet or"
                    + " drain cleaner it gives off chlorine gas, with ammonia chloramine gas. Windows"
                    + " open, gloves and eye protection as its label says, in its own bottle, out of"
                    + " children's reach. If the air bites, leave it for fresh air and call for"
                    + " help.",
            "Centers for Disease Control and Prevention, Cleaning and Disinfecting with Bleach; The"
                    + " Poison Control Center, Children's Hospital of Philadelphia, Household"
                    + " Cleaners; leaving for fresh air from memory"),
    /** Peroxide and the powders that set it free. */
    OXYGEN_BLEACH(
            "Oxygen bleach irritates eyes and skin and raises dust as a powder: gloves, eye protection"
                    + " as its label says; never in a closed bottle once it is wet, for it gives off"
                    + " gas; never with chlorine bleach or a colour remover.",
            "from memory; the label comes first"),
    /** Dithionite or thiourea dioxide. */
    COLOUR_REMOVER(
            "Colour remover: a reducing powder that heats itself in large amounts once it gets damp."
                    + " Keep it dry and closed, away from acids and bleaches; add it slowly to water,"
                    + " never tipped in at once, and never into a vessel that held bleach: the two"
                    + " react violently. Windows open, gloves on, and do not lean over the bath.",
            "Health and Safety Executive (UK), Dyes and dyeing; International Chemical Safety Card"
                    + " 1717, sodium dithionite, 2008; airing and gloves common practice, no"
                    + " source"),
    /** Vinegar and citric acid. */
    ACID(
            "Vinegar and citric acid sting eyes and broken skin: gloves, and do not lean over a hot"
                    + " bath of either. Never in one vessel, sink or drain with bleach: that gives"
                    + " off chlorine gas.",
            "The Poison Control Center, Children's Hospital of Philadelphia, Household Cleaners;"
                    + " gloves common practice, no source"),
    /** A rotary blade, shears, a seam ripper. */
    BLADE(
            "Blades: close the guard after every cut, cut away from the hand, shoes on, never when"
                    + " tired; shears and ripper out of children's reach.",
            "quilting teachers on rotary cutters; the rest common practice, no source"),
    /** Needles of hand and machine. */
    NEEDLE(
            "Needles and pins: count the pins, none in the mouth and none left in the cloth; a broken"
                    + " needle goes into a jar with a lid. Machine off before the needle is changed.",
            Sources.COMMON),
    /** An iron, steam, a press. */
    IRON(
            "Iron: never left flat or alone, its cord out of reach of children and pets, unplugged"
                    + " after; steam burns too. Begin at the lowest heat, on a scrap; keep glue off"
                    + " the plate.",
            Sources.COMMON),
    /** Mould on cloth. */
    MILDEW_SPORES(
            "Mildew: breathing its dust can bring on asthma. Dry the cloth first, not in an oven or"
                    + " microwave, and brush it outdoors, masked; with asthma or weak defences let"
                    + " another do it.",
            "Smithsonian Museum Conservation Institute, Mold and mildew on textiles; University of"
                    + " Illinois Extension, mildew; asthma and mask from memory"),
    /** Who should not be in the room. */
    CHILDREN_AND_PETS(
            "Children and pets stay out of the room while powders are open and baths are hot; all of"
                    + " it is stored locked, in its own containers.",
            "containers: Township police, Poison Prevention Week 2023; the rest common practice, no"
                    + " source"),
    /** Who should leave it to another. */
    ASTHMA_OR_PREGNANCY(
            "With asthma or an allergy, or when pregnant, let another handle powders, bleach and hot"
                    + " baths, and ask your doctor or pharmacist first.",
            Sources.COMMON),
    /** What is left over. */
    WASTE(
            "What is left over: read the label. A spent bath goes down the household drain with much"
                    + " water where local rules allow it, one kind at a time, never into a storm"
                    + " drain; with a septic tank ask first. Left-over powders, and dye packets so"
                    + " old that nobody knows what is in them, go unopened to the household hazardous"
                    + " waste point.",
            "St. Louis household hazardous waste tips; Spokane aquifer water utilities, Dubuque and"
                    + " Klickitat County; old packets: Health and Safety Executive (UK), Dyes and"
                    + " dyeing"),
    /** A washing machine. */
    ELECTRIC(
            "Washing machine and plugs: never with wet hands, never with a damaged hose or cord; run"
                    + " it once empty after dye or bleach.",
            "a theatre costume dyer's answer (empty run); the rest common practice, no source"),
    /** Where to ask for help. */
    POISON_HELP(
            "If someone swallows, breathes in or gets something into the eyes: call your local poison"
                    + " centre, in the USA 1-800-222-1222, or the emergency number, with the label in"
                    + " your hand.",
            "The Poison Control Center, Children's Hospital of Philadelphia; Township police, Poison"
                    + " Prevention Week 2023; the emergency number common practice, no source");

    private final String words;
    private final String source;

    Hazard(String words, String source) {
        this.words = words;
        this.source = source;
    }

    /** The caution, as a sheet tells it. */
    public String words() {
        return words;
    }

    /** Where it comes from. */
    public String source() {
        return source;
    }

    /** An enum's constants cannot use a constant of its own that is declared after them. */
    private static final class Sources {
        static final String COMMON = "common practice, no source";

        private Sources() {}
    }
}
