package secondbolt.trim.gathered;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.file.value.Answer;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.trim.plan.Elastic;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.Passage;
import secondbolt.wearer.Wearer;

/** Elastics and their casings. */
class ElasticCalculationTest {
    private static final Wearer WEARER =
            new Wearer(
                    Optional.empty(),
                    Map.of(
                            BodyMeasure.WAIST, Answer.known(cm(76)),
                            BodyMeasure.HIP, Answer.known(cm(100)),
                            BodyMeasure.HEAD, Answer.known(cm(56))));

    private static Length cm(long centimetres) {
        return Length.ofMillimetres(10 * centimetres);
    }

    private static ElasticResult of(Elastic.Fit fit, Passage over, Optional<Share> stretched) {
        Elastic elastic =
                new Elastic(
                        Length.ofMillimetres(25),
                        Optional.of(BodyMeasure.WAIST),
                        Optional.of(over),
                        Optional.empty(),
                        fit,
                        stretched,
                        Elastic.Casing.FOLDED);
        return new ElasticCalculation(
                        Optional.of(WEARER),
                        Optional.empty(),
                        Optional.empty(),
                        Map.of(),
                        Tape.CENTIMETRE)
                .of("waist", elastic);
    }

    /** Derived: waist 76 less 5, overlap 2.5, is cut 73.5, 71 round; hip 100 ÷ 71 = 1.408. */
    @Test
    void cutsAWaistAndTestsItOverTheHips() {
        Elastic.Fit fit = new Elastic.Fit(Optional.empty(), Optional.of(cm(5)), Optional.empty());
        ElasticResult result = of(fit, Passage.HIPS, Optional.of(Share.ofRatio(141, 100)));
        assertEquals(Length.ofMillimetres(735), result.cut().orElseThrow());
        assertEquals(cm(71), result.loop().orElseThrow());
        assertEquals(1.408, result.mustReach(result.loop()).orElseThrow().fraction(), 0.0005);
        assertTrue(result.isPassing().orElseThrow());
        assertEquals(
                Optional.of(false),
                of(fit, Passage.HIPS, Optional.of(Share.ofRatio(140, 100))).isPassing());
    }

    /** Derived: a head of 56 over a loop of 50 cm is 12 %. */
    @Test
    void testsALoopOverTheHead() {
        Elastic.Fit fit = new Elastic.Fit(Optional.of(cm(50)), Optional.empty(), Optional.empty());
        ElasticResult result = of(fit, Passage.HEAD, Optional.empty());
        assertEquals(1.12, result.mustReach(result.loop()).orElseThrow().fraction(), 1e-9);
        assertEquals(Optional.empty(), result.isPassing());
    }

    /** Three pages that disagree, and two rules from memory: none is chosen, none averaged. */
    @Test
    void showsEverySideAndCutsByNone() {
        Elastic.Fit fit = new Elastic.Fit(Optional.empty(), Optional.empty(), Optional.empty());
        ElasticResult result = of(fit, Passage.HIPS, Optional.empty());
        assertEquals(Optional.empty(), result.cut());
        assertEquals(5, result.sides().size());
        assertEquals(cm(71), result.sides().get(0).longest());
        assertEquals(cm(66), result.sides().get(2).shortest());
    }

    /** Derived: 25 mm with ⅛ in or ¼ in of ease, and ¼ in of turn: 28.2, 31.4, 37.7 mm. */
    @Test
    void foldsDownACasing() {
        Casing casing = new Casing(Length.ofMillimetres(25), Elastic.Casing.FOLDED);
        assertEquals(28.2, casing.narrow().millimetres(), 0.05);
        assertEquals(31.4, casing.wide().millimetres(), 0.05);
        assertEquals(37.7, casing.wideFoldDown().millimetres(), 0.05);
        assertEquals(50.4, casing.stripWidth().millimetres(), 0.05);
    }
}
