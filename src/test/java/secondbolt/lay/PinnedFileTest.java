package secondbolt.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The plan is hers: pinned again, all she wrote in it stays, however she wrote it. */
class PinnedFileTest {
    private static final String BIB =
            """
            title: Lätzchen
            units: cm
            cloth: {Laken: {size: [100, 60], prewash: done}}
            lay: {effort: quick}
            pattern:
              seam allowance: {of: 1, included: false}
              pieces:
                Lätzchen: {cut: 1, lines: {body: 10}, rectangle: [20, 30]}
                Band: {cut: 2, rectangle: [5, 40]}
            """;

    /** The second piece cannot stay: it is pinned beyond the edge. */
    private static final String PLAN =
            """
            # mine
            units: cm  # as the tape
            altered: none  # so far
            # above
            pieces:  # three
              - piece: Lätzchen  # soft side
                cloth: Laken
                at: [0, 0]  # in the corner
                lies: top up
                cut: yes  # on Sunday

              # between
            # at the edge
              - piece: Band 1  # with the stripe
                cloth: Laken
                at: [90, 50]  # 90 cm, 50 cm
            # amid
                # within
                lies: pattern face up, top up
                cut: no  # iron it
              # behind
              - piece: Band 2
                cloth: Laken
                at: [40, 0]
            # in the last
                lies: pattern face up, top up
                cut: no
            # the end
            """;

    private static final List<String> REMARKS =
            List.of(
                    "# mine",
                    "# as the tape",
                    "none  # so far",
                    "# above",
                    ":  # three",
                    "# soft side",
                    "# in the corner",
                    "cut: yes  # on Sunday",
                    "# between",
                    "# at the edge",
                    "# with the stripe",
                    "# amid",
                    "# within",
                    "# iron it",
                    "# behind",
                    "# in the last",
                    "# the end");

    static Stream<UnaryOperator<String>> hands() {
        return Stream.of(
                plan -> plan,
                plan -> plan.replace("\n", "\r\n"),
                plan -> plan.replace("\n", "\r"),
                plan -> plan.replaceFirst("\n", "\r\n"),
                plan -> plan.stripTrailing(),
                plan -> plan.replaceAll("(?m)^  ", ""),
                plan -> plan.replaceAll("(?m)^  ", "    "),
                plan -> plan.replaceAll("(?m)^    ", "      ").replace("- p", "-   p"),
                plan -> plan.replaceAll("(?m)^", "  "),
                plan -> plan.replaceAll("(?m)^(units|altered|pieces):", "\"$1\" :"),
                plan ->
                        plan.replaceFirst(
                                "(?s)(# mine.*)(pieces: .*)# the end\n", "$2$1# the end\n"));
    }

    @ParameterizedTest
    @MethodSource("hands")
    void everyRemarkStaysHoweverTheFileIsWritten(UnaryOperator<String> hand) {
        String plan = hand.apply(PLAN);
        PinnedWork work = PinnedWork.of(BIB, plan);
        assertEquals(List.of("pin-let-go"), work.codes(), plan);
        String written = work.written();
        for (String remark : REMARKS) {
            assertTrue(written.contains(remark), remark + "\n" + written);
        }
        PinnedWork again = PinnedWork.of(BIB, written);
        assertEquals(List.of(), again.told(), written);
        assertEquals(written, again.written());
        String anew = work.anew(BIB);
        REMARKS.forEach(remark -> assertTrue(anew.contains(remark), remark + "\n" + anew));
        assertEquals(anew, PinnedWork.of(BIB, anew).written());
    }

    @ParameterizedTest
    @MethodSource("hands")
    void whatStillHoldsStaysLetterForLetter(UnaryOperator<String> hand) {
        String plan = hand.apply(PLAN.replace("[90, 50]", "[30, 0]"));
        assertEquals(plan, PinnedWork.of(BIB, plan).written());
        String longer = BIB + "alterations: [{lengthen: body, by: 1}]\n";
        String written = PinnedWork.of(longer, plan).written();
        assertTrue(written.contains("altered: [{lengthen: body, by: 1}]  # so far"), written);
        assertTrue(written.contains("altered: none"), "the bib was cut before: " + written);
        assertEquals(written, PinnedWork.of(longer, written).written());
        for (String remark : REMARKS) {
            assertTrue(written.contains(remark.replace("none  #", "#")), remark + "\n" + written);
        }
    }

    @Test
    void piecesInBracesAreTickedAndAlteredInTheirLine() {
        String plan =
                """
                units: cm
                altered: none
                pieces:
                  - {piece: Lätzchen, cloth: Laken, at: [0, 0], cut: yes}  # {done}
                  - {piece: Band 1, cloth: Laken, at: [400, 0]}  # where?
                """;
        String longer = BIB + "alterations: [{lengthen: body, by: 1}]\n";
        String written = PinnedWork.of(longer, plan).written();
        assertTrue(written.contains("cut: yes, altered: none}  # {done}\n"), written);
        assertTrue(written.contains("    # where?\n"), written);
        assertEquals(written, PinnedWork.of(longer, written).written());
    }

    @Test
    void anEmptyPlanKeepsItsRemarks() {
        String plan = "# mine\nunits: cm\n\npieces: []  # none yet\n# the end\n";
        String written = PinnedWork.of(BIB, plan).written();
        assertTrue(written.startsWith("# mine\nunits: cm\n\naltered: none\npieces:  # none yet\n"));
        assertTrue(written.endsWith("    cut: no\n# the end\n"), written);
        assertEquals(written, PinnedWork.of(BIB, written).written());
    }

    /** The plan has a tape of its own: its numbers are written on that, whatever hers is now. */
    @ParameterizedTest
    @MethodSource("tapes")
    void aPlanIsWrittenOnItsOwnTape(String hers, String its) {
        String text =
                BIB.replace("units: cm", "units: " + hers).replaceAll("(\\d)([,\\]}])", "$1 cm$2");
        String longer =
                text.replace("cut: 1 cm", "cut: 1").replace("cut: 2 cm", "cut: 2")
                        + "alterations: [{lengthen: body, by: 5/8 in}]\n";
        PinnedWork work = PinnedWork.of(longer, "units: " + its + "\npieces: []\n");
        String written = work.written();
        PinnedWork again = PinnedWork.of(longer, written);
        assertEquals(work.places(), again.places(), written);
        assertEquals(List.of(), again.told(), written);
        assertEquals(written, again.written());
    }

    static Stream<Arguments> tapes() {
        return Stream.of("cm", "in")
                .flatMap(hers -> Stream.of("cm", "in").map(its -> Arguments.of(hers, its)));
    }

    /** A third of an inch is no decimal of a millimetre, and no mark of a tape. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1/3 in",
                "1 2/3 in",
                "5/8 in",
                "1 1/128 in",
                "3/7 cm",
                "1.0001 mm",
                "12 1/3 in"
            })
    void whatAPieceIsAlteredByIsWrittenExactly(String by) {
        for (String tape : List.of("cm", "in")) {
            String text =
                    BIB.replace("units: cm", "units: " + tape)
                            + "alterations: [{lengthen: body, by: "
                            + by
                            + "}]\n";
            String written = PinnedWork.of(text).written().replaceFirst("cut: no", "cut: yes");
            PinnedWork again = PinnedWork.of(text, written);
            assertEquals(List.of(), again.told(), written);
            assertEquals(written, again.written());
        }
    }

    @Test
    void whatNamesNothingIsTakenOutAndNotPinnedTwice() {
        for (String wrong : List.of("Band 1\n    cloth: Lacken", "Bund 1\n    cloth: Laken")) {
            String plan = PLAN.replace("Band 1  # with the stripe\n    cloth: Laken", wrong);
            PinnedWork work = PinnedWork.of(BIB, plan);
            assertEquals(List.of("pin-names-nothing"), work.codes());
            String written = work.written();
            assertEquals(1, written.split("piece: Band 1", -1).length - 1, written);
            assertEquals(List.of(), PinnedWork.of(BIB, written).told());
        }
    }

    @Test
    void aPlanWithoutAPatternIsToldWhereItStands() {
        String told =
                PinnedWork.mistakes(
                                "title: Try\nunits: cm\n",
                                "units: cm\npieces:\n  - {piece: Band, cloth: Laken, at: [0, 0]}\n")
                        .get(0);
        assertTrue(told.startsWith("plan.yaml:3:13: mistake: found a lay without a pattern"), told);
    }

    /** Where its edges lie in its box is not known, so that none can lie along a feature. */
    @Test
    void aPieceThatIsKnownByTapeKeepsNoFeature() {
        String text =
                """
                title: Try
                units: cm
                cloth:
                  Laken:
                    size: [90, 80]
                    prewash: done
                    features: [{what: old hem, at: [45, 78.75], size: [86, 2.5], keep: Band.top}]
                pattern:
                  seam allowance: {of: 1, included: false}
                  pieces: {Band: {cut: pair, box: [20, 30], edges: {top: 20}}}
                """;
        List<String> told =
                PinnedWork.mistakes(
                        text, "units: cm\npieces:\n  - {piece: Band, cloth: Laken, at: [0, 0]}\n");
        assertEquals(1, told.size());
        assertTrue(told.get(0).contains("`Band.top` of a piece that is known by tape only"));
    }

    @Test
    void aPlanOfWhichNothingIsLeftIsStillAPlan() {
        String small = BIB.replace("size: [100, 60]", "size: [5, 5]");
        String plan =
                "units: cm\naltered: none\npieces:\n  # one\n  - piece: nix\n    cloth: Laken\n    at: [0, 0]\n";
        String written = PinnedWork.of(small, plan).written();
        assertEquals("units: cm\naltered: none\npieces: []\n  # one\n", written);
        assertEquals(written, PinnedWork.of(small, written).written());
    }
}
