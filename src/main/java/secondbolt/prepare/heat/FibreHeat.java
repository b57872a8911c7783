package secondbolt.prepare.heat;

import secondbolt.textile.fibre.FibreKind;

/**
 * What a fibre bears as a rule.
 *
 * @param iron at most
 * @param wash at most
 */
record FibreHeat(IronHeat iron, Temperature wash) {
    /** What is borne by a fibre that nobody knows: the least of all. */
    static final FibreHeat LEAST = of(IronHeat.LOW, 30);

    /**
     * What fibres of a family bear.
     *
     * <p>Sources: for the iron a consumer ironing chart and an iron temperature guide, brought down
     * to the next ceiling of ISO 3758:2012, and for regenerated cellulose one dot lower than both,
     * as its labels usually have it (common practice, no source). For the wash common practice, no
     * source: what such garments are usually labelled with.
     */
    static FibreHeat of(FibreKind.Family family) {
        return switch (family) {
            case PLANT -> of(IronHeat.HIGH, 60);
            case REGENERATED -> of(IronHeat.MEDIUM, 40);
            case HAIR, SILK -> of(IronHeat.MEDIUM, 30);
            case POLYESTER -> of(IronHeat.MEDIUM, 40);
            case POLYAMIDE, ELASTANE, POLYPROPYLENE -> of(IronHeat.LOW, 40);
            case ACETATE, ACRYLIC -> of(IronHeat.LOW, 30);
            case OTHER -> LEAST;
        };
    }

    private static FibreHeat of(IronHeat iron, int wash) {
        return new FibreHeat(iron, new Temperature(wash));
    }
}
