package secondbolt.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.file.value.Answer;
import secondbolt.textile.Textile;
import secondbolt.textile.fibre.Fibre;
import secondbolt.textile.fibre.FibreKind;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Subject;

/**
 * What the maker should know of a cloth for what it is made of.
 *
 * @param about the cloth
 */
record FibreFindings(Subject about) {

    List<Finding> of(Textile textile) {
        Optional<Fibre> fibre = textile.fibre().flatMap(Answer::toOptional);
        boolean known = fibre.isPresent();
        List<Finding> findings = new ArrayList<>();
        if (!known) {
            findings.add(
                    caution(
                            "cloth-fibre-unknown",
                            "Its fibre is not known, and the iron's heat, the wash and any dye wait"
                                    + " for it.",
                            "Look for a label, ask a fabric shop, or burn a single thread."));
        } else if (isKnownBy(textile, Textile.KnownBy.GUESS)) {
            findings.add(
                    caution(
                            "cloth-fibre-guessed",
                            "Its fibre is a guess.",
                            "Try the iron, the wash and any dye on a scrap first."));
        }
        if (known && isKnownBy(textile, Textile.KnownBy.BURN_TEST)) {
            findings.add(
                    new Finding(
                            "cloth-fibre-by-burn-test",
                            about,
                            Finding.Level.NOTE,
                            "Its fibre is known by a burn test, which cannot tell a blend.",
                            "Try the iron and the wash on a scrap first."));
        }
        if (!known) {
            findings.add(
                    caution(
                            "cloth-burn-test",
                            "A burn test is done with one thread held in tweezers over a metal"
                                    + " tray, with water at hand and nothing else near; some fibres"
                                    + " drip and burn on. It is not for children, and it cannot"
                                    + " tell a blend.",
                            "If in doubt leave it, and ask."));
        }
        fibre.flatMap(this::tender).ifPresent(findings::add);
        return findings;
    }

    private static boolean isKnownBy(Textile textile, Textile.KnownBy by) {
        return textile.knownBy().equals(Optional.of(by));
    }

    private Optional<Finding> tender(Fibre fibre) {
        String remedy = "Follow its care label before any advice here.";
        if (fibre.hasAny(kind -> kind.family() == FibreKind.Family.HAIR)) {
            return Optional.of(
                    caution(
                            "cloth-has-wool",
                            "It has wool in it: heat and rubbing felt it for good.",
                            remedy));
        }
        if (fibre.isBlend()) {
            return Optional.of(
                    caution(
                            "cloth-is-a-blend",
                            "It is a blend: the more tender fibre decides how hot it may be washed"
                                    + " and ironed.",
                            remedy));
        }
        return Optional.empty();
    }

    private Finding caution(String code, String text, String remedy) {
        return new Finding(code, about, Finding.Level.CAUTION, text, remedy);
    }
}
