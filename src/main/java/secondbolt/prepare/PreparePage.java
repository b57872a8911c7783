package secondbolt.prepare;

import java.util.ArrayList;
import java.util.List;
import secondbolt.block.Block;
import secondbolt.measure.Tape;
import secondbolt.prepare.due.Preparation;
import secondbolt.prepare.due.PreparedCloth;

/**
 * What the page says of preparing the cloths.
 *
 * @param all the cloths
 * @param tape to print with
 */
record PreparePage(Preparation all, Tape tape) {
    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(verdict());
        blocks.addAll(new Evidence(all).blocks());
        if (all.hasAny(c -> c.fibre().isEmpty())) {
            blocks.addAll(BurnTest.blocks());
        }
        WashWords words = new WashWords(all, tape);
        all.those(c -> c.washes().isPresent()).forEach(c -> blocks.addAll(words.square(c)));
        if (all.hasAny(PreparedCloth::isWetDue)) {
            blocks.addAll(words.howToWash());
        }
        return blocks;
    }

    private Block verdict() {
        List<String> due = all.due();
        if (!due.isEmpty()) {
            return new Block.Verdict(
                    "Before anything is cut: " + String.join("; ", due) + ".", false);
        }
        return all.hasAny(PreparedCloth::isWashUntold)
                ? new Block.Verdict(
                        "It is not told whether it was washed before it was measured: "
                                + all.names(PreparedCloth::isWashUntold)
                                + ".",
                        false)
                : new Block.Verdict(
                        "Nothing is left to be done to the cloth before it is laid but to press"
                                + " it.",
                        true);
    }
}
