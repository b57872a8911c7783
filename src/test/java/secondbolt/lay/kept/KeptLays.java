package secondbolt.lay.kept;

import java.util.List;
import secondbolt.lay.placement.Container;
import secondbolt.lay.placement.Lay;
import secondbolt.lay.placement.PackingItem;

/** Lays written and read back. */
public final class KeptLays {
    private KeptLays() {}

    /** Whether a lay that was kept would be taken. */
    public static boolean isTaken(
            List<PackingItem> items, List<Container> containers, double gapMm, Lay lay) {
        LayProof proof = new LayProof(items, containers, gapMm);
        return WrittenLay.read(WrittenLay.of(lay), items.size()).filter(proof::holds).isPresent();
    }
}
