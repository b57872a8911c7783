package secondbolt.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.cloth.ClothResult;
import secondbolt.garment.Role;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.plan.Design;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/** Makes the page of the lay ready. */
final class LayPage {
    private final LayResult result;
    private final Tape tape;
    private final LayWords words;

    private LayPage(LayResult result, Tape tape) {
        this.result = result;
        this.tape = tape;
        this.words = new LayWords(tape);
    }

    static LayView view(LayResult result, Tape tape) {
        LayPage page = new LayPage(result, tape);
        return new LayView(
                page.verdict(),
                page.facts(),
                page.cloths(),
                page.leftOver(),
                page.remedies(),
                page.designs(),
                result.plan().rules().newCloth().isEmpty()
                        ? ""
                        : result.plan().rules().newCloth().flatMap(c -> c.price()).isPresent()
                                ? "Cost saved"
                                : "New cloth instead",
                page.bolts());
    }

    /** The name of a cloth's picture. */
    static String picture(Role role, int cloth) {
        return role + "-" + (cloth + 1);
    }

    private String verdict() {
        DesignLay made = result.made();
        if (made.stocks().isEmpty()) {
            return "There is no sound cloth to lay the pieces on yet.";
        }
        String all = made.design().isPresent() ? "All pieces of " + made.name() : "All pieces";
        return made.fits()
                ? all + " have their place on the cloth."
                : "Not all pieces of " + made.name() + " have their place. Do not cut yet.";
    }

    private List<LayView.Fact> facts() {
        List<LayView.Fact> facts = new ArrayList<>();
        for (StockLay stock : result.made().stocks()) {
            String of = result.made().stocks().size() > 1 ? ", " + stock.role() : "";
            facts.add(
                    new LayView.Fact(
                            "Pieces laid" + of, Integer.toString(stock.laid().size()), ""));
            facts.add(
                    new LayView.Fact(
                            "Sound cloth used" + of,
                            LayWords.percent(share(stock)),
                            tape.print(stock.used()) + " of " + tape.print(stock.sound())));
        }
        if (result.others().isEmpty()) {
            words.newCloth(result.made(), result.plan()).map(this::newCloth).ifPresent(facts::add);
        }
        return facts;
    }

    private LayView.Fact newCloth(String cloth) {
        String saved =
                words.saved(result.made(), result.plan()).map(price -> "saves " + price).orElse("");
        return new LayView.Fact("New cloth instead", cloth, saved);
    }

    static double share(StockLay stock) {
        double sound = stock.sound().squareMillimetres();
        return sound > 0 ? stock.used().squareMillimetres() / sound : 0;
    }

    private List<LayView.OneCloth> cloths() {
        List<LayView.OneCloth> cloths = new ArrayList<>();
        for (StockLay stock : result.made().stocks()) {
            for (int i = 0; i < stock.cloths().size(); i++) {
                cloths.add(
                        new LayView.OneCloth(
                                stock.cloths().get(i).name(),
                                picture(stock.role(), i),
                                LayDrawing.caption(stock, i),
                                words.over(stock, i),
                                NumberedPiece.on(stock, i).stream().map(this::row).toList()));
            }
        }
        return cloths;
    }

    private LayView.PieceRow row(NumberedPiece numbered) {
        LaidPiece laid = numbered.laid();
        return new LayView.PieceRow(
                Integer.toString(numbered.number()),
                laid.piece().words(),
                LayWords.lies(laid),
                words.length(laid.box().leftMm()) + ", " + words.length(laid.box().topMm()),
                laid.pins().stream()
                        .map(
                                pin ->
                                        new LayView.Pin(
                                                pin.where(),
                                                words.length(pin.at().xMm()),
                                                words.length(pin.at().yMm())))
                        .toList());
    }

    private List<String> leftOver() {
        return result.made().stocks().stream()
                .flatMap(stock -> LayWords.counted(stock.leftOver()).stream())
                .toList();
    }

    private List<LayView.Fact> remedies() {
        return result.remedies().stream()
                .map(
                        r ->
                                new LayView.Fact(
                                        r.words(),
                                        r.leftOver().isEmpty()
                                                ? "everything fits"
                                                : "left out: " + String.join(", ", r.leftOver()),
                                        ""))
                .toList();
    }

    private List<LayView.DesignRow> designs() {
        if (result.others().isEmpty()) {
            return List.of();
        }
        List<LayView.DesignRow> rows = new ArrayList<>();
        result.designs().forEach(design -> rows.add(design(design)));
        result.together().forEach(both -> rows.add(both(both)));
        return rows;
    }

    private LayView.DesignRow design(DesignLay design) {
        List<ClothResult> cloths = new ArrayList<>();
        design.stocks().stream()
                .filter(stock -> !stock.role().isBetween())
                .forEach(stock -> cloths.addAll(stock.cloths()));
        String saved =
                words.saved(design, result.plan())
                        .or(() -> words.newCloth(design, result.plan()))
                        .orElse("");
        return row(
                design.name(),
                design.stocks(),
                design.crossed(),
                words.suits(design.design(), cloths),
                saved);
    }

    private LayView.DesignRow both(LayResult.DesignPair both) {
        String name = both.first() + " and " + both.second();
        return both.stocks().isEmpty()
                ? new LayView.DesignRow(name, "no: more than all sound cloth", "", "", "", "")
                : row(name, both.stocks(), List.of(), "", "");
    }

    private LayView.DesignRow row(
            String name, List<StockLay> stocks, List<String> crossed, String suits, String saved) {
        List<String> used = new ArrayList<>();
        List<String> over = new ArrayList<>();
        for (StockLay stock : stocks) {
            String of = stocks.size() > 1 ? stock.role() + " " : "";
            used.add(of + LayWords.percent(share(stock)));
            over.add(of + stock.largestRemnant().map(words::size).orElse("nothing"));
        }
        List<LayPiece> out = stocks.stream().flatMap(s -> s.leftOver().stream()).toList();
        List<String> missing = new ArrayList<>(crossed);
        missing.addAll(LayWords.counted(out));
        return new LayView.DesignRow(
                name,
                missing.isEmpty() ? "yes" : "no: " + String.join(", ", missing),
                String.join(", ", used),
                String.join(", ", over),
                suits,
                saved);
    }

    private List<LayView.Bolt> bolts() {
        List<LayView.Bolt> bolts = new ArrayList<>();
        for (DesignLay design : result.designs()) {
            Map<Role, List<LayView.BoltRow>> byRole = new LinkedHashMap<>();
            for (BoltLength bolt : design.bolts()) {
                byRole.computeIfAbsent(bolt.role(), role -> new ArrayList<>())
                        .add(row(bolt, design.design()));
            }
            byRole.forEach(
                    (role, rows) -> bolts.add(new LayView.Bolt(design.name() + ", " + role, rows)));
        }
        return bolts;
    }

    private LayView.BoltRow row(BoltLength bolt, Optional<Design> design) {
        Optional<Length> printed =
                bolt.role() == Role.MAIN
                        ? design.map(d -> d.printedNeed().get(bolt.width()))
                        : Optional.empty();
        return new LayView.BoltRow(
                tape.print(bolt.width()),
                bolt.length().map(tape::print).orElse("too narrow"),
                bolt.toBuy().map(tape::printShop).orElse("too narrow"),
                printed.map(tape::printShop).orElse(""));
    }
}
