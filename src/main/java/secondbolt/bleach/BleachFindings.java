package secondbolt.bleach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.bleach.plan.Agent;
import secondbolt.bleach.plan.LabelDose;
import secondbolt.bleach.recipe.Bearing;
import secondbolt.bleach.recipe.Sources;
import secondbolt.bleach.recipe.Treatment;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.measure.Volume;
import secondbolt.textile.Textile;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/**
 * What to look twice at before a cloth is treated that may be.
 *
 * @param treatment of the cloth, decided and not refused
 * @param tape to print with
 */
record BleachFindings(Treatment treatment, Tape tape) {
    /**
     * The strongest figure that was found for a household: two tablespoons to a quart.
     *
     * <p>Source: household text on mildew, probably from a US government leaflet.
     */
    private static final LabelDose STRONGEST =
            new LabelDose(
                    Volume.ofMillilitres("29.5735295625"), Volume.ofMillilitres("946.352946"), 15);

    List<Finding> all() {
        List<Finding> findings = new ArrayList<>();
        guessed().ifPresent(findings::add);
        tender().ifPresent(findings::add);
        if (treatment.agent().orElseThrow().isBleach()) {
            colour().ifPresent(findings::add);
            strong().ifPresent(findings::add);
        } else {
            findings.addAll(new RemoverFindings(treatment, tape).all());
        }
        pull().ifPresent(findings::add);
        return findings;
    }

    private Optional<Finding> guessed() {
        return treatment.knownBy().equals(Optional.of(Textile.KnownBy.GUESS))
                ? Optional.of(
                        finding(
                                "bleach-fibre-guessed",
                                Level.WARNING,
                                "What "
                                        + treatment.name()
                                        + " is made of is a guess, and a guess is not enough for "
                                        + with()
                                        + ".",
                                "Put a scrap through the whole of it first. A label settles it: `known"
                                        + " by: label`."))
                : Optional.empty();
    }

    private Optional<Finding> tender() {
        List<Bearing> tender =
                treatment.bearings(treatment.agent().orElseThrow()).stream()
                        .filter(b -> b.grade() == Bearing.Grade.WITH_CARE)
                        .toList();
        return tender.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        finding(
                                        "bleach-tender-fibre",
                                        Level.CAUTION,
                                        "In "
                                                + treatment.name()
                                                + ", "
                                                + tender.stream()
                                                        .map(b -> b.fibre().word() + " " + b.why())
                                                        .collect(Collectors.joining("; "))
                                                + ".",
                                        "Put a scrap through the whole of it first, and pull it when"
                                                + " it is dry.")
                                .citing(tender.stream().map(Bearing::source).distinct().toList()));
    }

    private Optional<Finding> colour() {
        boolean stays = treatment.plan().evidence().colourStays().equals(Optional.of(true));
        if (stays || BleachWork.hasNoColour(treatment)) {
            return Optional.empty();
        }
        return Optional.of(treatment.colour().isEmpty() ? untold() : takesColour());
    }

    private Finding untold() {
        return finding(
                "bleach-colour-untold",
                Level.WARNING,
                "Whether "
                        + treatment.name()
                        + " has a colour to lose is not told, and "
                        + with()
                        + " takes colours.",
                "Under `bleach` write `colour: white`, `colour: natural`, `colour: dyed` or `colour:"
                        + " patterned`.");
    }

    private Finding takesColour() {
        boolean went = treatment.plan().evidence().colourStays().equals(Optional.of(false));
        return finding(
                        "bleach-takes-colour",
                        Level.WARNING,
                        treatment.name()
                                + " is dyed, and "
                                + with()
                                + (went ? " took its colour in the test" : " may take its colour")
                                + ": it goes in patches, first in folds and thin places, and dye later"
                                + " shows them.",
                        (went
                                        ? ""
                                        : BleachWork.dropTest(treatment)
                                                + " If nothing moves, write `colour test: stays` under"
                                                + " `bleach`. ")
                                + "Where the colour is meant to go, a remover is evener: `with: colour"
                                + " remover` under `bleach`.")
                .citing(List.of(Sources.BEECH + ": over-bleached places take too much colour"));
    }

    private Optional<Finding> strong() {
        Optional<LabelDose> label =
                treatment
                        .plan()
                        .bath()
                        .label()
                        .filter(l -> l.strength().compareTo(STRONGEST.strength()) > 0);
        return treatment.isWith(Agent.CHLORINE) ? label.map(this::strong) : Optional.empty();
    }

    private Finding strong(LabelDose label) {
        Share times = label.strength().dividedBy(STRONGEST.strength());
        return finding(
                        "bleach-dose-strong",
                        Level.WARNING,
                        "For "
                                + treatment.name()
                                + " your label's dose is "
                                + times.percent(0)
                                + " of the strongest household figure found.",
                        "Read the bottle again, and correct `label` under `bleach`; weak and twice"
                                + " beats strong once.")
                .citing(
                        List.of(
                                Sources.HOUSEHOLD
                                        + ": two tablespoons to a quart, 31 ml to a litre",
                                Sources.STUDY + ": weak beats strong"));
    }

    private Optional<Finding> pull() {
        return treatment.plan().evidence().held().isPresent()
                ? Optional.empty()
                : Optional.of(
                        finding(
                                "bleach-pull-test",
                                Level.CAUTION,
                                "How strong "
                                        + treatment.name()
                                        + " still is is not told; worn cloth loses more of its"
                                        + " strength in "
                                        + with()
                                        + ".",
                                "Pull its thinnest place firmly between both thumbs, and write `pull"
                                        + " test: held` or `pull test: tore` under `bleach`."));
    }

    private String with() {
        return treatment.agent().orElseThrow().word();
    }

    private Finding finding(String code, Level level, String text, String remedy) {
        return new Finding(code, new Subject.Cloth(treatment.name()), level, text, remedy);
    }
}
