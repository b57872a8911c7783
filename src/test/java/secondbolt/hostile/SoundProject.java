package secondbolt.hostile;

/** Small projects with nothing wrong. */
final class SoundProject {
    private SoundProject() {}

    /** A closure alone. */
    static final String BAND =
            """
            title: Band
            units: cm
            closures:
              band: {length: 65, extension: 1.8, buttons: 7, first: 1.5, last: 11, holes: upright,
                button: {across: 11 mm, thick: 2.5 mm}, laps: left over right}
            """;

    /** A piece that is drawn in a file of its own. */
    static final String DRAWN =
            """
            title: Bag
            units: cm
            cloth: {Laken: {size: [120, 90], prewash: done, flaws: none}}
            pattern:
              seam allowance: {of: 1, included: false}
              pieces:
                bag: {cut: 1, svg: bag.svg}
            """;
}
